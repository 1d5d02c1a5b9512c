import type {
  Contribution,
  CostLine,
  LabourLine,
  Notebook,
  SpentOn,
  Thing,
  ThingState,
} from '../agreement/notebook.ts'
import { currencyDigits } from '../amounts/currency.ts'
import { moneyText } from '../amounts/money.ts'
import { isNumber } from '../amounts/typedNumber.ts'
import { percentInRange } from '../shares/percent.ts'
import { beyondTolerance } from './tolerance.ts'

type Json = { readonly [key: string]: unknown }

/**
 * What the items of a document come to that are beyond the tolerance which the document itself agrees on, by id, in money
 * as the file writes it. What both mark is taken from the document, so this is too; defaults are those of the format, and
 * a figure that is none counts as nothing: where a file is read, it is refused.
 */
export function beyondInDocument(document: Json): ReadonlyMap<string, string> {
  const tolerance = text(objectIn(document.arrangements).tolerance)
  const digits = currencyDigits(text(document.currency))
  const bought = objectsIn(objectIn(document.books).bought)
  // Most notebooks are looked at again and again before anything is bought.
  if (digits === undefined || bought.length === 0 || !isPercent(tolerance)) return new Map()
  const notebook = booksOf(document, digits) as unknown as Notebook
  return new Map(
    beyondTolerance(notebook, digits, { tolerance }).map(({ id, actual }) => [id, moneyText(actual, digits)]),
  )
}

function isPercent(typed: string): boolean {
  return isNumber(typed, 4) && percentInRange(typed)
}

/** As much of a notebook as planned and actual figures are worked out from. */
type Books = Pick<Notebook, 'currency' | 'contributions' | 'books'> & {
  readonly [List in 'sections' | 'gates' | 'common']: readonly {
    readonly id: string
    readonly name: string
    readonly materials: readonly CostLine[]
    readonly labour: readonly LabourLine[]
  }[]
}

function booksOf(document: Json, digits: number): Books {
  const items = (list: unknown) =>
    objectsIn(list).map((item) => ({
      id: text(item.id),
      name: text(item.name),
      materials: objectsIn(item.materials).map(costLine),
      labour: objectsIn(item.labour).map(labourLine),
    }))
  const books = objectIn(document.books)
  const money = (value: unknown) => figure(value, digits, '0')
  return {
    currency: text(document.currency),
    sections: items(document.sections),
    gates: items(document.gates),
    common: items(document.common),
    contributions: objectsIn(document.contributions).map((entry) => contribution(entry, digits)),
    books: {
      bought: objectsIn(books.bought).map((line) => ({
        ...lineOf(line),
        amount: money(line.amount),
        marks: objectIn(line.marks),
      })),
      things: objectsIn(books.things).map((thing) => thingIn(thing, digits)),
      conversions: [],
    },
  }
}

function thingIn({ agreed, off, ...thing }: Json, digits: number): Thing {
  const state = (one: Json): ThingState => ({
    ...(one as unknown as ThingState),
    what: text(one.what),
    item: text(one.item),
    household: household(one.household) ?? '',
    value: figure(one.value, digits, ''),
    marks: objectIn(one.marks),
  })
  return {
    ...(thing as unknown as Thing),
    ...state(thing),
    ...(isMissing(agreed) ? {} : { agreed: state(objectIn(agreed)) }),
    ...(isMissing(off) ? {} : { off: objectIn(off) as unknown as NonNullable<Thing['off']> }),
  }
}

function costLine(line: Json): CostLine {
  return {
    what: text(line.what),
    quantity: figure(line.quantity, 6, '0'),
    unit: text(line.unit),
    unitPrice: figure(line.unitPrice, 6, ''),
    taxPercent: figure(line.taxPercent, 4, '0'),
    suppliedBy: household(line.suppliedBy) ?? 'bought',
    credit: line.credit === true,
    from: '',
    changed: false,
  }
}

function labourLine(line: Json): LabourLine {
  return {
    task: text(line.task),
    hours: figure(line.hours, 6, '0'),
    rate: figure(line.rate, 6, ''),
    by: household(line.by) ?? 'hired',
    counts: line.counts !== false,
    skill: '',
    ceiling: '',
  }
}

function contribution(entry: Json, digits: number): Contribution {
  const valuation = objectIn(entry.valuation)
  return {
    ...(entry as unknown as Contribution),
    household: household(entry.household) ?? 'a',
    amount: figure(entry.amount, digits, '0'),
    hours: figure(entry.hours, 6, '0'),
    rate: figure(entry.rate, 6, ''),
    own: figure(entry.own, 6, ''),
    for: text(entry.for),
    task: text(entry.task),
    waits: entry.waits === true,
    lines: objectsIn(entry.lines).map(
      (line): SpentOn => ({
        ...lineOf(line),
        quantity: text(line.quantity),
        amount: figure(line.amount, digits, '0'),
      }),
    ),
    ...(isMissing(entry.valuation)
      ? { valuation: undefined }
      : {
          valuation: {
            documented: figure(valuation.documented, digits, ''),
            weight: figure(valuation.weight, 6, ''),
            unit: '',
            yardPrice: figure(valuation.yardPrice, 6, ''),
            saidBy: '',
            marks: objectIn(valuation.marks),
          },
        }),
  } as Contribution
}

function lineOf(line: Json) {
  const pot = line.pot === 'labour' ? ('labour' as const) : ('materials' as const)
  return { item: text(line.item), pot, what: text(line.what), place: text(line.place) }
}

function household(value: unknown): 'a' | 'b' | undefined {
  return value === 'a' || value === 'b' ? value : undefined
}

/** A number of the file; `none` where it is missing, or no number that the file can hold. */
function figure(value: unknown, fractionDigits: number, none: string): string {
  return typeof value === 'string' && isNumber(value, fractionDigits) ? value : none
}

function isMissing(value: unknown): boolean {
  return value === undefined || value === null
}

function text(value: unknown): string {
  return typeof value === 'string' ? value : ''
}

function objectIn(value: unknown): Json {
  return value !== null && typeof value === 'object' && !Array.isArray(value) ? (value as Json) : {}
}

function objectsIn(list: unknown): readonly Json[] {
  return Array.isArray(list) ? list.map(objectIn) : []
}
