import type { Minor } from '../core/amounts/money.ts'
import type { InstalmentStanding, PartStanding } from '../core/ledger/instalmentStanding.ts'
import { dayWords } from './day.ts'
import { moneyWords } from './money.ts'
import type { ShareNames } from './shareText.ts'
import { capitalised } from './summary/names.ts'

type Names = Pick<ShareNames, 'a' | 'b'>

export const instalmentWords = {
  /** Beside signing, where the plan falls short. */
  open: 'Open: the payment plan falls short',
  bars: 'This bars nobody from signing. What the plan lacks is asked for all the same.',
  change: 'Change the payment plan',
  heading: 'The payment plan',
  columns: { on: 'Due on', amount: 'Amount', paid: 'Paid', state: 'Where it stands' },
  foot: 'In all',
} as const

/** "paid on 3 May 2027", "overdue: $50.00 is missing". */
export function partStandingWords({ state, paidOn, rest, amount }: PartStanding, currency: string): string {
  const left = moneyWords(rest, currency)
  const toPay = `${left} ${rest < amount ? 'still to pay' : 'to pay'}`
  switch (state) {
    case 'met':
      return 'met otherwise'
    case 'paid':
      return paidOn === undefined ? 'nothing to pay' : `paid on ${dayWords(paidOn)}`
    case 'overdue':
      return `overdue: ${rest < amount ? `${left} is still missing` : toPay}`
    case 'due today':
      return `due today: ${toPay}`
    case 'later':
      return `not due yet: ${toPay}`
  }
}

/** The plan as a whole, in sentences. */
export function instalmentSentences(
  { from, to, total, paid, met, rest, short, overdue, above }: InstalmentStanding,
  names: Names,
  currency: string,
): readonly string[] {
  const money = (minor: Minor) => moneyWords(minor, currency)
  const payer = capitalised(names[from])
  const elsewhere = met > 0n ? `, ${money(met)} is met otherwise` : ''
  const left =
    rest > 0n
      ? `${money(paid)} is paid${elsewhere}, and ${money(rest)} is left.`
      : met > 0n
        ? `${money(paid)} is paid${elsewhere}, and nothing of the plan is left to pay.`
        : 'All of it is paid.'
  return [
    `${payer} pays ${money(total)} to ${names[to]} in instalments. ${left}`,
    ...(met > 0n
      ? [
          `Met otherwise: ${names[from]} has ${rest > 0n ? `only ${money(rest)}` : 'nothing'} left to bring in money, since what it gave in other ways counts too (to a supplier, in goods, in hours), or the fence asks for less of it now. The earliest instalments that are not paid are met first.`,
        ]
      : []),
    ...planShortSentences({ from, rest, short }, names, currency),
    ...(overdue > 0n ? [`${money(overdue)} of the plan is overdue.`] : []),
    ...(above > 0n ? [`${payer} has paid ${money(above)} more than the plan has.`] : []),
    'Payments count here in the order of their days, once the household that received them has confirmed them.',
  ]
}

/** By how much the plan falls short, on the page of money and beside signing; nothing where it does not. */
export function planShortSentences(
  { from, rest, short }: Pick<InstalmentStanding, 'from' | 'rest' | 'short'>,
  names: Names,
  currency: string,
): readonly string[] {
  if (short === 0n) return []
  const money = (minor: Minor) => moneyWords(minor, currency)
  return [
    `The plan falls short by ${money(short)}: ${names[from]} is still to bring ${money(rest + short)} in money, and the plan has ${rest === 0n ? 'nothing' : money(rest)} left.`,
  ]
}

/** An instalment as an event of a calendar. */
export function instalmentEventWords(rest: Minor, names: Names, from: 'a' | 'b', currency: string): string {
  return `Instalment of ${names[from]} for the fence: ${moneyWords(rest, currency)}`
}
