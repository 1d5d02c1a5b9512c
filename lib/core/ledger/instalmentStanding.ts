import type { Instalments } from '../agreement/notebook.ts'
import { lesser, type Minor, minorUnits } from '../amounts/money.ts'
import { type Household, otherHousehold } from '../people/household.ts'
import type { Transfer } from './transfers.ts'

/** One instalment against what was paid. Money in minor units. */
export type PartStanding = {
  readonly on: string
  readonly amount: Minor
  readonly paid: Minor
  /** What the balance asks for no more, and so nobody misses. */
  readonly met: Minor
  /** What is still to pay. */
  readonly rest: Minor
  readonly state: 'paid' | 'met' | 'overdue' | 'due today' | 'later'
  /** The day of the payment that completed it. */
  readonly paidOn?: string
}

export type InstalmentStanding = {
  readonly from: Household
  readonly to: Household
  readonly total: Minor
  /** What was paid of the total, never more than it. */
  readonly paid: Minor
  /** What the plan has beyond what the household is still to bring in money: it is not missing. */
  readonly met: Minor
  /** What is still to pay of the plan. */
  readonly rest: Minor
  /** By how much the plan falls short of what the household is still to bring in money. */
  readonly short: Minor
  /** What was to be paid before today and was not. */
  readonly overdue: Minor
  /** What was paid above the total. */
  readonly above: Minor
  readonly parts: readonly PartStanding[]
}

/**
 * A payment plan against the payments of its household that count: each pays the earliest instalment that is not paid yet,
 * in the order of their days, and what is left of it the next one. An instalment is missing only as far as the balance asks
 * for it: what was met in other ways (receipts, goods, hours, or a fence that came cheaper) settles the earliest first.
 *
 * @param transfers by their days, of both households: those of the other one pay nothing here
 * @param today ISO 8601; an instalment is overdue from the day after its own
 * @param still what its household is still to bring in money (`stillInMoney`); undefined where the shares can't be worked
 * out, and then the plan is held against the payments alone
 */
export function instalmentStanding(
  { from, total: typedTotal, parts }: Instalments,
  transfers: readonly Transfer[],
  today: string,
  digits: number,
  still?: Minor,
): InstalmentStanding {
  const total = minorUnits(typedTotal, digits)
  const payments = transfers.filter((transfer) => transfer.from === from)
  const given = payments.reduce((sum, { amount }) => sum + amount, 0n)
  const paid = lesser(given, total)
  const unpaid = total - paid
  const due = still === undefined ? unpaid : atLeastZero(still)
  const met = atLeastZero(unpaid - due)
  let before = 0n
  let metLeft = met
  const stood = parts.map(({ on, amount: typed }): PartStanding => {
    const amount = minorUnits(typed, digits)
    const paidOfIt = lesser(atLeastZero(given - before), amount)
    before += amount
    const metOfIt = lesser(metLeft, amount - paidOfIt)
    metLeft -= metOfIt
    const rest = amount - paidOfIt - metOfIt
    const one = { on, amount, paid: paidOfIt, met: metOfIt, rest }
    if (rest > 0n) return { ...one, state: on < today ? 'overdue' : on === today ? 'due today' : 'later' }
    if (metOfIt > 0n) return { ...one, state: 'met' }
    const paidOn = dayOf(payments, before)
    return { ...one, state: 'paid', ...(paidOn === undefined ? {} : { paidOn }) }
  })
  return {
    from,
    to: otherHousehold(from),
    total,
    paid,
    met,
    rest: unpaid - met,
    short: atLeastZero(due - unpaid),
    overdue: stood.reduce((sum, { state, rest }) => (state === 'overdue' ? sum + rest : sum), 0n),
    above: given - paid,
    parts: stood,
  }
}

function atLeastZero(amount: Minor): Minor {
  return amount > 0n ? amount : 0n
}

/** The day on which the payments together reached an amount. */
function dayOf(payments: readonly Transfer[], amount: Minor): string | undefined {
  let sum = 0n
  return payments.find((payment) => {
    sum += payment.amount
    return sum >= amount
  })?.date
}
