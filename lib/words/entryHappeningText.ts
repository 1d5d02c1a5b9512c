import type { Contribution, ContributionKind } from '../core/agreement/notebook.ts'
import { statedAmount } from '../core/ledger/contributed.ts'
import type { Household } from '../core/people/household.ts'
import { moneyWords } from './money.ts'

/** What can be done with an entry of the book. */
export const entrySteps = ['entered', 'taken back'] as const
export type EntryStep = (typeof entrySteps)[number]

/** What the record says of one entry of the book, as it was when it was entered or taken back. */
export type EntryDetail = Readonly<Record<string, string>>

/**
 * What goes on record of an entry.
 *
 * @param by the household that entered it or takes it back
 * @param giver what the household that the entry is of is called
 */
export function entryDetail(
  step: EntryStep,
  entry: Contribution,
  said: {
    readonly index: number
    readonly by: Household
    readonly giver: string
    readonly currency: string
    readonly digits: number
    readonly why?: string
  },
): EntryDetail {
  const { kind, hours, rate, task, note, means, shop, lines } = entry
  const what = [task, note, lines.map((line) => line.what).join(', '), shop].find((one) => one.trim() !== '')
  const worthless = kind === 'hours' && rate.trim() === ''
  return {
    books: step,
    entry: kind,
    index: String(said.index),
    what: what?.trim() ?? '',
    amount: worthless ? '' : moneyWords(statedAmount(entry, said.digits), said.currency),
    ...(kind === 'hours' ? { hours } : {}),
    ...(kind === 'transfer' ? { means: means.trim(), waits: entry.waits ? 'yes' : '' } : {}),
    ...(entry.household === said.by ? {} : { giver: said.giver }),
    ...(said.why === undefined ? {} : { why: said.why }),
  }
}

/** Whether an entry of the record is about an entry of the book. */
export function isEntryHappening(detail: Readonly<Record<string, unknown>>): boolean {
  return entrySteps.some((step) => step === detail.books)
}

const entryNames: Readonly<Record<ContributionKind, string>> = {
  cash: 'a receipt',
  material: 'material given',
  hours: 'hours worked',
  transfer: 'a payment to the other household',
  refund: 'money received back',
}

/** "Entered a receipt: pipe, $259.00." */
export function entryHappening(detail: Readonly<Record<string, unknown>>): string {
  const said = (key: string) => (typeof detail[key] === 'string' ? detail[key] : '')
  const kind = said('entry')
  const name = Object.hasOwn(entryNames, kind) ? entryNames[kind as ContributionKind] : 'an entry'
  const giver = said('giver') === '' ? '' : ` of ${said('giver')}`
  const hours = said('hours') === '' ? '' : `${said('hours')} h`
  const facts = [said('what'), hours, said('amount'), said('means')].filter((one) => one !== '')
  const entry = `${name}${giver}${facts.length === 0 ? '' : `: ${facts.join(', ')}`}.`
  if (said('books') === 'taken back')
    return `Took back ${entry}${said('why') === '' ? '' : ` “${said('why')}”`}`
  return `Entered ${entry}${said('waits') === '' ? '' : ' It counts once it is confirmed.'}`
}
