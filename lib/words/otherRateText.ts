import type { Notebook } from '../core/agreement/notebook.ts'
import type { OtherRate } from '../core/hours/otherRates.ts'
import { agreedRates } from '../core/hours/rates.ts'
import { dayWords } from './day.ts'
import { householdName } from './labels.ts'
import { typedMoneyWords } from './money.ts'
import { capitalised, spokenList } from './summary/names.ts'

/** Said before the entries; they count all the same. */
export const otherRatesLead =
  'These hours were entered at another rate than the agreed one. They count at the rate that was entered. If that was not meant, whoever wrote the entry takes it back and enters it anew.'

/** "No. 12, 13 March 2027, Lane to the gardens: 21 h at $28.00 an hour; agreed are $34.00 for skilled and $22.00 for plain work." */
export function otherRateWords(notebook: Notebook, { entry, ofTask }: OtherRate, item: string): string {
  const money = (rate: string) => typedMoneyWords(rate, notebook.currency)
  const { skilled, plain } = agreedRates(notebook.arrangements)
  const agreed = [
    ...(skilled === '' ? [] : [`${money(skilled)} for skilled`]),
    ...(plain === '' ? [] : [`${money(plain)} for plain`]),
  ]
  const held =
    ofTask.length > 0
      ? `the task “${entry.task.trim()}” is planned at ${spokenList(ofTask.map(money))}`
      : `agreed ${agreed.length === 1 ? 'is' : 'are'} ${spokenList(agreed)} work`
  const where = [householdName(notebook, entry.household), dayWords(entry.date), item]
  return `${capitalised(where.filter((part) => part !== '').join(', '))}: ${entry.hours} h at ${money(entry.rate)} an hour; ${held}.`
}
