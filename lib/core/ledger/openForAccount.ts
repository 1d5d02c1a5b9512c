import type { Notebook, Thing } from '../agreement/notebook.ts'
import { type Minor, minorUnits } from '../amounts/money.ts'
import type { Fault } from '../faults.ts'
import { countsAlready } from '../hours/conversions.ts'
import type { Result } from '../result.ts'
import type { Statement } from '../shares/statement.ts'
import type { Evening } from './evening.ts'
import { type ItemStanding, plannedAgainstActual } from './plannedAgainstActual.ts'
import { mayHaveValue, standingOfThing } from './things.ts'
import type { BeyondTolerance } from './tolerance.ts'
import { type Transfer, waitingTransfers } from './transfers.ts'
import { twoValues } from './valuation.ts'
import { type MovedLine, movedLines } from './waitingMarks.ts'

/** One thing that has to be settled before the last account can be drawn up. Money in minor units. */
export type OpenForAccount =
  | { readonly kind: 'nothing signed' }
  | { readonly kind: 'shares'; readonly fault: Fault }
  /** Lines of an item that neither were bought, or worked, with both marks, nor marked as not needed. */
  | { readonly kind: 'lines'; readonly item: ItemStanding; readonly lines: readonly string[] }
  /** What both marked counts, and the line has come to something else since. */
  | { readonly kind: 'line moved'; readonly moved: MovedLine }
  | { readonly kind: 'payment waits'; readonly transfer: Transfer }
  | {
      readonly kind: 'thing'
      readonly what: string
      readonly why: ThingOpen
    }
  | { readonly kind: 'value half marked'; readonly note: string }
  | { readonly kind: 'conversion waits'; readonly item: string }
  | { readonly kind: 'beyond tolerance'; readonly item: BeyondTolerance }
  /** Above zero: not given yet by anyone. Below: given beyond what counts. */
  | { readonly kind: 'outstanding'; readonly amount: Minor }
  | { readonly kind: 'owed'; readonly evening: Evening }

export type ThingOpen =
  | 'not brought back'
  | 'nobody keeps it'
  | 'not marked by both'
  /** Both marked it as something else, and that counts until both mark this. */
  | 'changed since both marked it'
  | 'taken off by one'

/**
 * All that is left open before the final account, in the order in which it is best settled. Nothing is left where every
 * line has its two marks, everybody has spoken, and neither household owes the other anything.
 *
 * @param notebook what all have signed, with the books as they are; a draft while nothing is signed
 * @param known.statement of that notebook, with its actual figures
 * @param known.beyond items beyond the tolerance that not both have marked anew
 */
export function openForAccount(
  notebook: Notebook,
  digits: number,
  known: {
    readonly signed: boolean
    readonly statement: Result<Statement>
    readonly beyond: readonly BeyondTolerance[]
  },
): readonly OpenForAccount[] {
  const { signed, statement, beyond } = known
  return [
    ...(signed ? [] : [{ kind: 'nothing signed' as const }]),
    ...(statement.ok ? [] : statement.faults.map((fault) => ({ kind: 'shares' as const, fault }))),
    ...openLines(notebook, digits),
    ...movedLines(notebook, digits).map((moved) => ({ kind: 'line moved' as const, moved })),
    ...beyond.map((item) => ({ kind: 'beyond tolerance' as const, item })),
    ...openThings(notebook),
    ...halfMarkedValues(notebook, digits),
    ...notebook.books.conversions
      .filter((one) => !countsAlready(one))
      .map(({ item }) => ({ kind: 'conversion waits' as const, item })),
    ...waitingTransfers(notebook, digits).map((transfer) => ({ kind: 'payment waits' as const, transfer })),
    ...(statement.ok ? openSums(statement.value) : []),
  ]
}

/** A line at which nothing was planned and nothing spent has nothing to settle. */
function openLines(notebook: Notebook, digits: number): OpenForAccount[] {
  return plannedAgainstActual(notebook, digits).items.flatMap((item) => {
    const lines = item.lines
      .filter(({ bought, planned, entries }) => !bought && (planned !== 0n || entries.length > 0))
      .map(({ line }) => line.what)
    return lines.length === 0 ? [] : [{ kind: 'lines' as const, item, lines }]
  })
}

function openThings(notebook: Notebook): OpenForAccount[] {
  return notebook.books.things.flatMap((thing) => {
    const why = openThing(thing)
    return why === undefined ? [] : [{ kind: 'thing' as const, what: thing.what, why }]
  })
}

function openThing(thing: Thing): ThingOpen | undefined {
  const standing = standingOfThing(thing)
  if (standing === 'gone') return undefined
  if (standing === 'going') return 'taken off by one'
  if (standing === 'changed') return 'changed since both marked it'
  if (!mayHaveValue(thing.kind)) return thing.returned === '' ? 'not brought back' : undefined
  if (thing.household === '') return 'nobody keeps it'
  return thing.value !== '' && standing !== 'agreed' ? 'not marked by both' : undefined
}

/** Goods of which one household marked the whole amount, and the other has not said anything. */
function halfMarkedValues(notebook: Notebook, digits: number): OpenForAccount[] {
  return notebook.contributions.flatMap(({ kind, struck, amount, valuation, note }) => {
    if (kind !== 'material' || struck !== undefined || valuation === undefined) return []
    const { marks } = valuation
    const half = (marks.a === undefined) !== (marks.b === undefined)
    const { lower } = twoValues(valuation, digits)
    const matters = lower !== undefined && lower < minorUnits(amount, digits)
    return half && matters ? [{ kind: 'value half marked' as const, note }] : []
  })
}

function openSums({ outstanding, transfer }: Statement): OpenForAccount[] {
  return [
    ...(outstanding === 0n ? [] : [{ kind: 'outstanding' as const, amount: outstanding }]),
    ...(transfer === undefined ? [] : [{ kind: 'owed' as const, evening: transfer }]),
  ]
}
