import type { Contribution, Conversion, LabourLine, Notebook } from '../core/agreement/notebook.ts'
import type { Minor } from '../core/amounts/money.ts'
import { plainNumber } from '../core/amounts/typedNumber.ts'
import { conversionAmount } from '../core/hours/conversions.ts'
import type { RowKind } from '../core/hours/hoursByTask.ts'
import { type ExactHours, exactHours } from '../core/hours/ownHours.ts'
import { type ForBoth, households } from '../core/people/household.ts'
import { digitsOf } from '../core/shares/statement.ts'
import { householdName } from './labels.ts'
import { moneyWords, typedMoneyWords } from './money.ts'
import { capitalised } from './summary/names.ts'

/** Exact hours for a table: at least two digits after the point, "8.25", "−3.00", "0.333". */
export function hoursFigure(hours: ExactHours): string {
  const [whole, fraction = ''] = plainNumber(hours < 0n ? -hours : hours, 6).split('.')
  return `${hours < 0n ? '−' : ''}${whole}.${fraction.padEnd(2, '0')}`
}

/** Exact hours in a sentence: "8.25 h", "9 h". */
export function hoursWords(hours: ExactHours): string {
  return `${hours < 0n ? '−' : ''}${plainNumber(hours < 0n ? -hours : hours, 6)} h`
}

/** What a row of hours is, where it is not plain work. */
export const rowKindWords: Readonly<Record<RowKind, string>> = {
  work: '',
  hired: 'hired',
  gift: 'a gift',
  'no line': 'no line for it',
}

/** An hours entry: "6 h at $28.00 an hour, 2 h of them the worker’s own, beyond the ceiling". */
export function entryHoursWords(
  entry: Pick<Contribution, 'hours' | 'rate' | 'own'>,
  currency: string,
): string {
  const own = exactHours(entry.own)
  const beyond = own === 0n ? '' : `, ${hoursWords(own)} of them the worker’s own, beyond the ceiling`
  const rate = entry.rate === '' ? 'no rate' : `${typedMoneyWords(entry.rate, currency)} an hour`
  return `${entry.hours} h at ${rate}${beyond}`
}

/** Asked where hours lie beyond a ceiling. */
function beyondWords(
  task: string,
  hours: ExactHours,
  own: ExactHours,
  ceiling: ExactHours,
  counted: ExactHours,
): string {
  return `Of these ${hoursWords(hours)}, ${hoursWords(own)} lie beyond the ceiling: for “${task}” no more than ${hoursWords(ceiling)} count, and ${hoursWords(counted)} were counted before. Tick that they are yours, enter fewer hours, or let both mark a higher ceiling first.`
}

/** What a conversion says: "no. 14 gives $210.00 in the place of 7.5 h on Lane to the gardens, at $28.00 an hour". */
export function conversionWords(notebook: Notebook, conversion: Conversion, item: string): string {
  const name = householdName(notebook, conversion.household)
  const amount = moneyWords(conversionAmount(conversion, digitsOf(notebook)), notebook.currency)
  const hours = hoursWords(exactHours(conversion.hours))
  const rate = typedMoneyWords(conversion.rate, notebook.currency)
  return conversion.to === 'money'
    ? `${name} gives ${amount} in the place of ${hours} on ${item}, at ${rate} an hour`
    : `${name} gives ${hours} on ${item} in the place of ${amount}, at ${rate} an hour`
}

/** Why hours can’t be turned into money: there are not so many still to give. */
function tooManyHoursWords(name: string, item: string, still: ExactHours, waiting: ExactHours): string {
  const left = still > waiting ? still - waiting : 0n
  const taken = waiting === 0n ? '' : ` (${hoursWords(waiting)} more wait for a mark already)`
  return `More than are still to give: on ${item}, ${name} has ${hoursWords(left)} still to give${taken}.`
}

/** Why money can’t be turned into hours: they would be worth more than what is still to give. */
function tooMuchMoneyWords(name: string, worth: string, still: string): string {
  return `More than is still to give: these hours come to ${worth}, and ${name} has ${still} still to give.`
}

export const giftHint = 'Planned as a gift: thanked, and in no sum. Leave the rate empty.'

/** Beside the rate of hours: where it comes from, and what they are worth without one. */
export function rateHint(
  agreed: { readonly skilled: string; readonly plain: string } | undefined,
  currency: string,
  task: { readonly rate: string } | undefined,
): string {
  const nothing = 'Without a rate the hours are worth nothing in money.'
  if (task !== undefined)
    return task.rate === ''
      ? `The task has no rate in the plan. ${nothing}`
      : `The task is planned at ${typedMoneyWords(task.rate, currency)} an hour.`
  const { plain = '', skilled = '' } = agreed ?? {}
  if (plain === '' && skilled === '') return `No rate is agreed on. ${nothing}`
  const rates = [
    ...(plain === '' ? [] : [`${typedMoneyWords(plain, currency)} an hour for plain work`]),
    ...(skilled === '' ? [] : [`${typedMoneyWords(skilled, currency)} for skilled work`]),
  ]
  return `Agreed: ${rates.join(', ')}.`
}

/** Beside the tick about hours beyond a ceiling. */
export function ceilingHint({
  hours,
  counted,
}: {
  readonly hours: string
  readonly counted: string
}): string {
  return `No more than ${hours} h count for this task; ${counted} h were counted so far.`
}

/** Hours of a household's share that it has not given: it works them, or brings them in money. */
export const leftLabel = 'Left'

/** Hours that both marked as given in money instead (with a minus), or as worked in the place of money. */
export const swappedLabel = 'Swapped with money'

/** Hours worked beyond a task’s ceiling: the worker’s own, worth nothing. */
export const beyondLabel = 'Beyond the ceiling'

/** What hours asked are, wherever they stand beside money. */
export const hoursAskedWords =
  'Hours asked of a household are its share of the planned work, and a part of the money asked of it, not more on top of it. It pays money for those that it does not work.'

/** What the hours are held against. */
export function hoursStanding(signed: number | undefined): readonly string[] {
  return [
    signed === undefined
      ? 'Nothing is signed yet: hours are held against the draft.'
      : `Hours are held against revision ${signed}, as all have signed it.`,
    `${hoursAskedWords} Hired work is asked for too, and met in money. A minus means that more was given than asked. Hours beyond a ceiling are the worker’s own; they and gifts count as nothing. Of the hours swapped with money, those given in money have a minus.`,
  ]
}

export const turnedRowWords = 'Turned into hours, or (with a minus) into money'

/** What each household brings more, or less, in money for the hours that were turned. Nothing where nothing was. */
export function turnedMoneySentences(notebook: Notebook, turned: ForBoth<Minor>): readonly string[] {
  return households
    .filter((household) => turned[household] !== 0n)
    .map((household) => {
      const amount = turned[household]
      const words = moneyWords(amount < 0n ? -amount : amount, notebook.currency)
      return `${capitalised(householdName(notebook, household))} brings ${words} ${amount < 0n ? 'less in money, and works for it' : 'more in money, in the place of work'}.`
    })
}

/** What is said of a labour line beside its task: which kind of work, and its ceiling. */
export function labourNotes({ skill, ceiling }: Pick<LabourLine, 'skill' | 'ceiling'>): readonly string[] {
  return [
    ...(skill === '' ? [] : [`${skill} work`]),
    ...(ceiling === '' ? [] : [`at most ${ceiling} ${ceiling === '1' ? 'hour counts' : 'hours count'}`]),
  ]
}

/** Why hours are not entered, at their field. */
export const hoursRefusals = {
  noSuchTask:
    'This item has no work line with this task any more. Choose another one, or say that it is for none of them.',
  giftWithRate: 'This work is planned as a gift, and a gift is in no sum: leave the rate empty.',
  beyondCeiling: beyondWords,
} as const

/** Why hours are not exchanged for money, or money for hours. */
export const conversionRefusals = {
  noHours: 'Needed: more than no hours.',
  notWorkedOut: 'What this item asks for can’t be worked out yet. Choose another item, or mend that first.',
  noSuchItem: 'Needed: choose the section, gate or common cost that the hours are on.',
  tooManyHours: tooManyHoursWords,
  tooMuchMoney: tooMuchMoneyWords,
  gone: 'This was marked, taken back or changed in the meantime, or it is not yours to press. Load the page again.',
} as const
