import { z } from 'zod'
import { contributionKinds, thingKinds } from '../core/agreement/notebook.ts'
import { instalmentFaults } from '../core/ledger/instalments.ts'
import { linesFault } from '../core/ledger/linesFault.ts'
import {
  choice,
  date,
  faultIssue,
  money,
  neededChoice,
  neededText,
  number,
  percent,
  text,
  yesOrNo,
} from './leaf.ts'

/** What the notebook file may hold of books and of arrangements about money and hours. */
export function booksSchemas(object: typeof z.looseObject, currency: string, digits: number) {
  const list = <Entry extends z.ZodType>(entry: Entry) => z.array(entry).default([])
  const house = neededChoice(['a', 'b'])
  const figure = number('may be missing', 6, 'may be missing')
  const amount = money(currency, digits, 'needed')
  const amountOrNone = money(currency, digits, 'may be missing', 'may be missing')
  const mark = object({ on: date(false) }).optional()
  const marks = object({ a: mark, b: mark }).prefault({})
  const lineOf = {
    item: neededText,
    pot: neededChoice(['materials', 'labour']),
    what: text,
    place: figure,
  }
  const markedOfThing = {
    kind: neededChoice(thingKinds),
    what: text,
    item: text,
    household: choice(['a', 'b']),
    sold: yesOrNo(false),
    value: amountOrNone,
    marks,
  }
  const note = {
    date: date(false),
    for: text,
    note: text,
    enteredBy: choice(['a', 'b']),
    struck: object({ on: date(false), by: house, why: text }).optional(),
    household: house,
    shop: text,
    file: text,
    means: text,
    waits: yesOrNo(false),
    confirmed: object({ on: date(false), by: house }).optional(),
    task: text,
    own: figure,
    lines: list(object({ ...lineOf, quantity: figure, amount })),
    valuation: object({
      documented: amountOrNone,
      weight: figure,
      unit: choice(['lb', 'kg']),
      yardPrice: figure,
      saidBy: text,
      marks,
    }).optional(),
  }
  const ofMoney = contributionKinds.filter((kind) => kind !== 'hours')
  const contribution = z.discriminatedUnion('kind', [
    object({
      ...note,
      kind: z.literal('hours'),
      amount: text,
      hours: number('needed'),
      rate: number('may be missing', 6, 'may be missing'),
    }),
    object({ ...note, kind: z.literal(ofMoney), amount, hours: text, rate: text }).superRefine(
      (entry, context) => {
        const fault = linesFault(entry, digits)
        if (fault) context.addIssue(faultIssue(fault, ['lines']))
      },
    ),
  ])
  const rate = object({ rate: figure, quote: figure, quoteFrom: text, on: date(true) }).optional()
  return {
    contribution,
    books: object({
      bought: list(object({ ...lineOf, amount, marks })),
      things: list(
        object({
          ...markedOfThing,
          from: text,
          on: date(true),
          due: date(true),
          returned: date(true),
          agreed: object(markedOfThing).optional(),
          off: object({ on: date(false), by: house }).optional(),
        }),
      ),
      conversions: list(
        object({
          household: house,
          to: neededChoice(['money', 'hours']),
          item: neededText,
          hours: number('needed'),
          rate: number('needed'),
          on: date(false),
          why: text,
          marks,
        }),
      ),
    }),
    arrangements: object({
      tolerance: percent('may be missing'),
      rates: object({ skilled: rate, plain: rate }).prefault({}),
      instalments: object({
        from: house,
        total: amount,
        parts: list(object({ on: date(false), amount })),
      })
        .superRefine((instalments, context) => {
          for (const { path, ...facts } of instalmentFaults(instalments, digits))
            context.addIssue(faultIssue(facts, path))
        })
        .optional(),
      notes: text,
    }),
    letter: object({
      wrong: text,
      proposed: text,
      workFrom: date(true),
      workTo: date(true),
      noticeDays: figure,
      saidBy: text,
      answerBy: date(true),
      answerTo: text,
      on: date(true),
    }),
  }
}
