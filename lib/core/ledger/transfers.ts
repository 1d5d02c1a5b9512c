import type { Contribution, Notebook } from '../agreement/notebook.ts'
import type { Minor } from '../amounts/money.ts'
import { type Household, otherHousehold } from '../people/household.ts'
import { statedAmount, waitsForReceiver } from './contributed.ts'

/** A payment between the households. */
export type Transfer = {
  /** Its place in the book. */
  readonly index: number
  readonly from: Household
  readonly to: Household
  /** Minor units. */
  readonly amount: Minor
  readonly date: string
  readonly means: string
}

/** Payments that count: those that were not taken back and do not wait, by their day; of one day, in the order of the book. */
export function transfersThatCount(notebook: Notebook, digits: number): readonly Transfer[] {
  return transfersOf(
    notebook,
    digits,
    (entry) => entry.struck === undefined && !waitsForReceiver(entry),
  ).toSorted((one, other) =>
    one.date < other.date ? -1 : one.date > other.date ? 1 : one.index - other.index,
  )
}

/** Payments that are said to be made and wait for the word of the household that received them, in the order of the book. */
export function waitingTransfers(notebook: Notebook, digits: number): readonly Transfer[] {
  return transfersOf(notebook, digits, waitsForReceiver)
}

function transfersOf(notebook: Notebook, digits: number, is: (entry: Contribution) => boolean): Transfer[] {
  return notebook.contributions.flatMap((entry, index) => {
    if (entry.kind !== 'transfer' || !is(entry)) return []
    const { household: from, date, means } = entry
    return [{ index, from, to: otherHousehold(from), amount: statedAmount(entry, digits), date, means }]
  })
}

/** Why a payment can't be confirmed. */
export type ConfirmingRefusal = 'not a payment' | 'taken back' | 'confirmed already' | 'not the receiver'

/** Whether a household can confirm that it received a payment: only the receiver, and only once. */
export function confirmingRefusal(entry: Contribution, by: Household): ConfirmingRefusal | undefined {
  if (entry.kind !== 'transfer') return 'not a payment'
  if (entry.household === by) return 'not the receiver'
  if (entry.struck !== undefined) return 'taken back'
  return entry.confirmed !== undefined || !entry.waits ? 'confirmed already' : undefined
}
