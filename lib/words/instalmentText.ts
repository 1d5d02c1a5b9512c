import type { Minor } from '../core/amounts/money.ts'
import type { InstalmentStanding, PartStanding } from '../core/ledger/instalmentStanding.ts'
import { dayWords } from './day.ts'
import { moneyWords } from './money.ts'
import type { ShareNames } from './shareText.ts'

type Names = Pick<ShareNames, 'a' | 'b'>

export const instalmentWords = {
  heading: 'The payment plan',
  columns: { on: 'Due on', amount: 'Amount', paid: 'Paid', state: 'Where it stands' },
  foot: 'In all',
} as const

/** "paid on 3 May 2027", "overdue: $50.00 is missing". */
export function partStandingWords({ state, paidOn, rest, paid }: PartStanding, currency: string): string {
  const missing = `${moneyWords(rest, currency)} ${paid > 0n ? 'is still missing' : 'to pay'}`
  switch (state) {
    case 'paid':
      return paidOn === undefined ? 'nothing to pay' : `paid on ${dayWords(paidOn)}`
    case 'overdue':
      return `overdue: ${missing}`
    case 'due today':
      return `due today: ${missing}`
    case 'later':
      return `not due yet: ${missing}`
  }
}

/** The plan as a whole, in sentences. */
export function instalmentSentences(
  { from, to, total, paid, rest, overdue, above }: InstalmentStanding,
  names: Names,
  currency: string,
): readonly string[] {
  const money = (minor: Minor) => moneyWords(minor, currency)
  const first = `${names[from]} pays ${money(total)} to ${names[to]} in instalments. ${
    rest === 0n ? 'All of it is paid.' : `${money(paid)} is paid; ${money(rest)} is left.`
  }`
  return [
    first,
    ...(overdue > 0n ? [`${money(overdue)} of that is overdue.`] : []),
    ...(above > 0n ? [`${names[from]} has paid ${money(above)} more than the plan has.`] : []),
    'Payments count here in the order of their days, once the household that received them has confirmed them.',
  ]
}

/** An instalment as an event of a calendar. */
export function instalmentEventWords(rest: Minor, names: Names, from: 'a' | 'b', currency: string): string {
  return `Instalment of ${names[from]} for the fence: ${moneyWords(rest, currency)}`
}
