import type { Contribution } from '../core/agreement/notebook.ts'
import type { ConfirmingRefusal, Transfer } from '../core/ledger/transfers.ts'
import { otherHousehold } from '../core/people/household.ts'
import { dayWords } from './day.ts'
import { moneyWords } from './money.ts'
import type { ShareNames } from './shareText.ts'

/** What the fields of a payment between the households are called. */
export const transferFieldWords = {
  means: 'By what means',
  meansHint: 'In words, such as: in cash, by bank, by cheque.',
  rule: 'Entered by whoever paid, it counts once the household that received it has confirmed it. Entered by whoever received it, it counts at once.',
  confirm: 'We received it: confirm',
} as const

/** Where a payment between the households stands; nothing of other entries and of what was taken back. */
export function transferStanding(
  entry: Contribution,
  names: Pick<ShareNames, 'a' | 'b'>,
): { readonly kind: 'agreed' | 'open'; readonly text: string } | undefined {
  if (entry.kind !== 'transfer' || entry.struck !== undefined) return undefined
  const receiver = names[otherHousehold(entry.household)]
  if (entry.waits)
    return {
      kind: 'open',
      text: `Said to be paid, not confirmed: it counts once ${receiver} confirms it`,
    }
  const { confirmed } = entry
  return confirmed === undefined
    ? undefined
    : { kind: 'agreed', text: `${names[confirmed.by]} confirmed it on ${dayWords(confirmed.on)}` }
}

export function meansWords(means: string): string {
  return `Means: ${means.trim()}.`
}

/** "$300.00 is said to be paid by No. 14 to No. 12, by bank on 3 March 2027, and is not confirmed." */
export function waitingTransferWords(transfer: Transfer, names: ShareNames, currency: string): string {
  const { from, to, amount, date, means } = transfer
  const by = means.trim() === '' ? '' : ` ${means.trim()},`
  return `${moneyWords(amount, currency)} is said to be paid by ${names[from]} to ${names[to]},${by} on ${dayWords(date)}. It is not confirmed, and counts once ${names[to]} confirms it.`
}

/** For the strip of open matters of the household that is said to have received it. */
export function waitingForWordWords(count: number): string {
  return count === 1 ? 'A payment waits for your word' : `${count} payments wait for your word`
}

/** Why a payment is not confirmed. */
export function confirmingRefusalText(
  refusal: ConfirmingRefusal,
  entry: Contribution,
  names: ShareNames,
): string {
  switch (refusal) {
    case 'not a payment':
      return 'This entry is no payment between you. Load the page again.'
    case 'taken back':
      return 'This payment was taken back in the meantime, so there is nothing to confirm. Load the page again.'
    case 'not the receiver':
      return `Only ${names[otherHousehold(entry.household)]} can confirm it, since it is said to have received the money.`
    case 'confirmed already':
      return entry.confirmed === undefined
        ? 'This payment counts already. It was not confirmed a second time.'
        : `${names[entry.confirmed.by]} confirmed this payment already, on ${dayWords(entry.confirmed.on)}. It was not confirmed a second time, and counts once.`
  }
}
