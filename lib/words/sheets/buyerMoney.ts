import { paymentPlanStanding } from '../../core/ledger/paymentPlan.ts'
import type { Statement } from '../../core/shares/statement.ts'
import { dayWords } from '../day.ts'
import { moneyWords } from '../money.ts'
import type { SummaryInput } from '../summary/summaryInput.ts'
import { unbroken } from '../summary/unbroken.ts'
import { keeperName } from '../upkeepText.ts'

/** The newest final account; `signedOn` once all parties have signed it, the moment of the last signature. */
export type AccountOnSheet = { readonly number: number; readonly signedOn?: Date }

/**
 * What was agreed; whether anything is owed on what has been given so far, what of the plan is still to come, and whether a
 * final account closes it. Where one was signed and sums are open all the same, the books were changed afterwards.
 */
export function buyerMoney(input: SummaryInput, account: AccountOnSheet | undefined): string {
  const { notebook, statement } = input
  if (!statement.ok) return 'What it costs each household can’t be worked out from this notebook.'
  const actual = input.actual ?? statement
  const { asked, total } = statement.value
  const money = (minor: bigint) => moneyWords(minor, notebook.currency)
  const name = (household: 'a' | 'b') => keeperName(notebook, household)
  return [
    `What was agreed: the fence was planned at ${money(total)}, of which ${name('a')} was asked for ${money(asked.a)} and ${name('b')} for ${money(asked.b)}.`,
    ...(actual.ok ? [givenSoFar(input, actual.value), ...stillToCome(input, actual.value)] : []),
    accountSentence(account, actual.ok ? isOpen(actual.value) : true),
  ].join(' ')
}

function isOpen({ transfer, outstanding }: Statement): boolean {
  return transfer !== undefined || outstanding !== 0n
}

/** The balance of what was given, and no more than that: what is still planned may well be owed one day. */
function givenSoFar({ notebook, booksAsOf }: SummaryInput, { transfer, contributed, balance }: Statement) {
  const money = (minor: bigint) => moneyWords(minor, notebook.currency)
  const name = (household: 'a' | 'b') => keeperName(notebook, household)
  const day = booksAsOf === undefined ? '' : ` as of ${unbroken(dayWords(booksAsOf))}`
  if (contributed.a === 0n && contributed.b === 0n && transfer === undefined)
    return `Nothing has been given${day}.`
  if (transfer)
    return `Money is open${day}: ${name(transfer.from)} owes ${money(transfer.amount)} to ${name(transfer.to)} on what has been given so far.`
  const given = `Given${day}: ${money(contributed.a)} by ${name('a')} and ${money(contributed.b)} by ${name('b')}.`
  return balance.a === 0n && balance.b === 0n
    ? `${given} That is all that was asked for.`
    : `${given} On that alone no payment between the two is due.`
}

/** What nobody has given yet of the whole, and of the payment plan. */
function stillToCome({ notebook, booksAsOf }: SummaryInput, statement: Statement): string[] {
  const { outstanding } = statement
  const money = (minor: bigint) => moneyWords(minor, notebook.currency)
  // Only what is left of the plan is told here, which is the same on every day.
  const plan = paymentPlanStanding(notebook, { ok: true, value: statement }, booksAsOf ?? '')
  return [
    ...(outstanding > 0n
      ? [`Still to be given of what was planned: ${money(outstanding)}.`]
      : outstanding < 0n
        ? [`${money(-outstanding)} more has been given than was asked for.`]
        : []),
    ...(plan !== undefined && plan.rest > 0n
      ? [
          `By the payment plan ${keeperName(notebook, plan.from)} has still to pay ${money(plan.rest)} to ${keeperName(notebook, plan.to)}.`,
        ]
      : []),
  ]
}

function accountSentence(account: AccountOnSheet | undefined, open: boolean): string {
  if (account === undefined)
    return 'No final account is signed, so nobody has said yet that nothing is owed any more.'
  const { number, signedOn } = account
  if (signedOn === undefined)
    return `Final account ${number} is drawn up but not signed by all, so it is not said yet that nothing is owed any more.`
  const signed = `All have signed final account ${number}, last on ${unbroken(dayWords(signedOn.toISOString().slice(0, 10)))}`
  return open
    ? `${signed}; the books were changed since.`
    : `${signed}: nothing is owed between the households for this fence.`
}
