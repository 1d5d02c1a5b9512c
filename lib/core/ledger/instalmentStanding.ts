import type { Instalments } from '../agreement/notebook.ts'
import { lesser, type Minor, minorUnits } from '../amounts/money.ts'
import { type Household, otherHousehold } from '../people/household.ts'
import type { Transfer } from './transfers.ts'

/** One instalment against what was paid. Money in minor units. */
export type PartStanding = {
  readonly on: string
  readonly amount: Minor
  readonly paid: Minor
  readonly rest: Minor
  readonly state: 'paid' | 'overdue' | 'due today' | 'later'
  /** The day of the payment that completed it. */
  readonly paidOn?: string
}

export type InstalmentStanding = {
  readonly from: Household
  readonly to: Household
  readonly total: Minor
  /** What was paid of the total, never more than it. */
  readonly paid: Minor
  readonly rest: Minor
  /** What was to be paid before today and was not. */
  readonly overdue: Minor
  /** What was paid above the total. */
  readonly above: Minor
  readonly parts: readonly PartStanding[]
}

/**
 * A payment plan against the payments of its household that count: each pays the earliest instalment that is not paid yet,
 * in the order of their days, and what is left of it the next one.
 *
 * @param transfers by their days, of both households: those of the other one pay nothing here
 * @param today ISO 8601; an instalment is overdue from the day after its own
 */
export function instalmentStanding(
  { from, total: typedTotal, parts }: Instalments,
  transfers: readonly Transfer[],
  today: string,
  digits: number,
): InstalmentStanding {
  const total = minorUnits(typedTotal, digits)
  const payments = transfers.filter((transfer) => transfer.from === from)
  const given = payments.reduce((sum, { amount }) => sum + amount, 0n)
  let before = 0n
  const stood = parts.map(({ on, amount: typed }): PartStanding => {
    const amount = minorUnits(typed, digits)
    const left = given - before
    const paid = lesser(left < 0n ? 0n : left, amount)
    before += amount
    const rest = amount - paid
    if (rest > 0n)
      return { on, amount, paid, rest, state: on < today ? 'overdue' : on === today ? 'due today' : 'later' }
    const paidOn = dayOf(payments, before)
    return { on, amount, paid, rest, state: 'paid', ...(paidOn === undefined ? {} : { paidOn }) }
  })
  const paid = lesser(given, total)
  return {
    from,
    to: otherHousehold(from),
    total,
    paid,
    rest: total - paid,
    overdue: stood.reduce((sum, { state, rest }) => (state === 'overdue' ? sum + rest : sum), 0n),
    above: given - paid,
    parts: stood,
  }
}

/** The day on which the payments together reached an amount. */
function dayOf(payments: readonly Transfer[], amount: Minor): string | undefined {
  let sum = 0n
  return payments.find((payment) => {
    sum += payment.amount
    return sum >= amount
  })?.date
}
