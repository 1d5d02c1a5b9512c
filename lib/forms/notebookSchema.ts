import { z } from 'zod'
import {
  capacities,
  evidenceKinds,
  measuredFromKinds,
  skills,
  spreads,
  upkeepIntervals,
} from '../core/agreement/notebook.ts'
import { percentSum } from '../core/shares/percent.ts'
import { booksSchemas } from './booksSchema.ts'
import { buildUpSchemas } from './buildUpSchema.ts'
import {
  choice,
  date,
  faultIssue,
  length,
  money,
  neededChoice,
  neededPercent,
  neededText,
  number,
  taxPercent,
  text,
  yesOrNo,
} from './leaf.ts'

/** `keep` passes unknown keys on; `find` reports them as `unrecognized_keys` issues. */
export type UnknownKeys = 'keep' | 'find'

/**
 * The notebook file as a zod schema, for one currency. Its output is a `Notebook` with every default filled in; the
 * rules that need more than one place in the file (ids, pots) stand in `readNotebook.ts` and in the core.
 */
export function notebookSchema(currency: string, digits: number, unknownKeys: UnknownKeys): NotebookSchema {
  const name = `${currency} ${digits} ${unknownKeys}`
  const kept = built.get(name) ?? buildSchema(currency, digits, unknownKeys)
  // A file can claim any currency: only a handful of schemas is kept.
  if (built.size > 20) built.clear()
  built.set(name, kept)
  return kept
}

type NotebookSchema = ReturnType<typeof buildSchema>

/** Building a schema costs more than reading a small file with it. */
const built = new Map<string, NotebookSchema>()

function buildSchema(currency: string, digits: number, unknownKeys: UnknownKeys) {
  const object: typeof z.looseObject = unknownKeys === 'keep' ? z.looseObject : (z.strictObject as never)
  const list = <Entry extends z.ZodType>(entry: Entry) => z.array(entry).default([])
  const house = neededChoice(['a', 'b'])
  const keeper = choice(['both', 'a', 'b'])
  const amount = money(currency, digits, 'needed')

  const simplePrinciples = (onGate: boolean) =>
    [
      object({ principle: z.literal('equal') }),
      object({ principle: z.literal('percent'), a: neededPercent, b: neededPercent }).superRefine(
        (pair, context) => {
          const sum = percentSum(pair)
          if (sum !== 1_000_000n)
            context.addIssue(
              faultIssue({ kind: 'percent-pair', a: pair.a, b: pair.b, sum: percentText(sum) }, ['b']),
            )
        },
      ),
      object({ principle: z.literal('one'), household: house }),
      object({ principle: z.literal('length'), a: length('needed'), b: length('needed') }),
      object({ principle: z.literal('use') }).superRefine((_, context) => {
        if (!onGate) context.addIssue(faultIssue({ kind: 'use-off-gate' }, ['principle']))
      }),
      object({ principle: z.literal('benefit'), a: number('needed'), b: number('needed') }),
      object({
        principle: z.literal('saving'),
        aloneA: amount,
        aloneB: amount,
        sourceA: text,
        sourceB: text,
      }),
    ] as const
  const principle = (onGate: boolean) => {
    const simple = z.discriminatedUnion('principle', simplePrinciples(onGate))
    const difference = object({
      principle: z.literal('difference'),
      basic: amount,
      basicShare: simple,
      upgradeShare: simple,
      upgrades: list(object({ what: text, amount, household: house })),
    })
    return z.discriminatedUnion('principle', [...simplePrinciples(onGate), difference])
  }
  const share = (onGate: boolean) => {
    const one = principle(onGate)
    return object({
      materials: one.optional(),
      labour: one.optional(),
      together: one.optional(),
    }).superRefine(({ materials, labour, together }, context) => {
      if (together !== undefined) {
        if (materials !== undefined || labour !== undefined)
          context.addIssue(faultIssue({ kind: 'share-both-forms' }))
        return
      }
      if (materials === undefined)
        context.addIssue(faultIssue({ kind: 'needed', what: 'object' }, ['materials']))
      if (labour === undefined) context.addIssue(faultIssue({ kind: 'needed', what: 'object' }, ['labour']))
    })
  }

  const costLine = object({
    what: text,
    quantity: number('needed'),
    unit: text,
    unitPrice: number('may be missing', 6, 'may be missing'),
    taxPercent,
    suppliedBy: neededChoice(['bought', 'a', 'b']),
    credit: yesOrNo(false),
    from: text,
    changed: yesOrNo(false),
  })
  const labourLine = object({
    task: text,
    hours: number('needed'),
    rate: number('may be missing', 6, 'may be missing'),
    by: neededChoice(['a', 'b', 'hired']),
    counts: yesOrNo(true),
    skill: choice(skills),
    ceiling: number('may be missing', 6, 'may be missing'),
  }).superRefine((line, context) => {
    if (!line.counts && line.by === 'hired') context.addIssue(faultIssue({ kind: 'gift-hired' }, ['counts']))
  })
  const priced = (onGate: boolean) => ({
    id: neededText,
    name: text,
    materials: list(costLine),
    labour: list(labourLine),
    share: share(onGate),
    notes: text,
  })

  const takeOff = buildUpSchemas(object)
  const every = choice(upkeepIntervals)

  const party = object({ name: text, capacity: choice(capacities), address: text, parcel: text })
  const household = object({ name: text, parties: list(party) })
  const station = object({
    at: length('may be missing'),
    setback: object({ side: choice(['a', 'b']), distance: length('may be missing') }).optional(),
    gradeA: length('may be missing', true),
    gradeB: length('may be missing', true),
    gradeFence: length('may be missing', true),
    angle: object({
      degrees: number('may be missing', 6, 'may be missing'),
      toward: choice(['a', 'b']),
    }).optional(),
  })
  const line = object({
    start: text,
    end: text,
    evidence: choice(evidenceKinds),
    stations: list(station),
    error: length('may be missing'),
    limits: list(takeOff.heightLimit),
    site: takeOff.site.prefault({}),
  })
  const section = object({
    ...priced(false),
    from: length('may be missing'),
    to: length('may be missing'),
    owner: keeper,
    upkeep: keeper,
    height: object({
      agreed: length('may be missing'),
      measuredFrom: choice(measuredFromKinds),
    }).prefault({}),
    face: text,
    infill: text,
    drainage: text,
    buildUp: takeOff.buildUp.optional(),
    measured: list(takeOff.measuredPost),
    basicFence: object({
      height: length('may be missing'),
      infill: text,
      notes: text,
      buildUp: takeOff.buildUp.optional(),
      materials: list(costLine),
      labour: list(labourLine),
    }).optional(),
    meets: list(object({ household: house, need: neededText })),
  })
  const passages = number('may be missing', 6, 'may be missing')
  const gate = object({
    ...priced(true),
    at: length('may be missing'),
    opening: length('may be missing'),
    stands: choice(['line', 'a', 'b']),
    uses: object({ a: passages, b: passages }).prefault({}),
    passages: object({
      a: object({ a: number('needed'), b: number('needed') }).optional(),
      b: object({ a: number('needed'), b: number('needed') }).optional(),
      takes: object({ a: choice(['a', 'b']), b: choice(['a', 'b']) }).prefault({}),
    }).optional(),
    opens: text,
    latch: text,
    keys: text,
    owner: keeper,
    upkeep: keeper,
    buildUp: takeOff.gateBuildUp.optional(),
  })
  const books = booksSchemas(object, currency, digits)

  return object({
    format: z.literal('mearing-notebook'),
    version: z.literal(1),
    title: text,
    currency: z.string(),
    units: choice(['ft-in', 'metric']).transform((units) => units || ('ft-in' as const)),
    households: object({ a: household, b: household }),
    line: line.prefault({}),
    sections: list(section),
    gates: list(gate),
    common: list(object({ ...priced(false), spread: choice(spreads) })),
    caps: object({ a: amount.optional(), b: amount.optional() }).prefault({}),
    arrangements: books.arrangements.optional(),
    contributions: list(books.contribution),
    terms: list(object({ topic: text, text })),
    checks: list(
      object({
        what: text,
        who: choice(['a', 'b']),
        on: date(true),
        answer: text,
        reference: text,
        done: yesOrNo(false),
      }),
    ),
    decisions: list(object({ on: date(true), text })),
    closing: object({
      on: date(false),
      asBuilt: list(object({ what: text, measured: text })),
      upkeep: list(object({ what: text, household: keeper, every })),
      notes: text,
    }).optional(),
    dates: list(
      object({
        what: text,
        on: date(true),
        household: keeper,
        every,
        notes: text,
        done: yesOrNo(false),
      }),
    ),
    buildUps: list(takeOff.savedBuildUp),
    inventory: list(takeOff.inventoryPiece),
    letter: books.letter.optional(),
    books: books.books.prefault({}),
  })
}

/** Ten-thousandths of a percent, without idle zeros: 999999n is "99.9999". */
function percentText(tenThousandths: bigint): string {
  const figures = tenThousandths.toString().padStart(5, '0')
  return `${figures.slice(0, -4)}.${figures.slice(-4)}`.replace(/\.?0+$/, '')
}
