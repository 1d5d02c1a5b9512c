import type { AgreedRate, Arrangements, LabourLine, Notebook } from '../core/agreement/notebook.ts'
import type { Minor } from '../core/amounts/money.ts'
import type { Ratio } from '../core/amounts/ratio.ts'
import { roundHalfUp } from '../core/amounts/round.ts'
import { againstQuote, departsFrom } from '../core/hours/rates.ts'
import type { Household } from '../core/people/household.ts'
import { dayWords } from './day.ts'
import { householdName } from './labels.ts'
import { moneyWords, typedMoneyWords } from './money.ts'

/** What an agreed rate is for. */
export const skillWords = { skilled: 'Skilled work', plain: 'Plain work' } as const

/** What is called here what is agreed about money and hours beside the shares. */
export const arrangementsTitle = 'Rates, tolerance and instalments'

/**
 * A rate beside its local quote: "19 percent below it". To a tenth of a percent, and said where that is rounded.
 * `undefined` where there is nothing to compare.
 */
export function comparedWords(rate: Pick<AgreedRate, 'rate' | 'quote'>): string | undefined {
  const above = againstQuote(rate)
  if (above === undefined) return undefined
  if (above.over === 0n) return 'the same as the quote'
  return `${percentWords(above)} percent ${above.over < 0n ? 'below' : 'above'} the quote`
}

/** The size of a percentage to a tenth: "19", "about 19.1"; a trace of a percent is "less than 0.1". */
function percentWords({ over, under }: Ratio): string {
  const size = over < 0n ? -over : over
  const tenths = roundHalfUp(size * 10n, under)
  if (tenths === 0n) return 'less than 0.1'
  const figure = tenths % 10n === 0n ? `${tenths / 10n}` : `${tenths / 10n}.${tenths % 10n}`
  return size * 10n === tenths * under ? figure : `about ${figure}`
}

/** Heads a column of rates, which are money for an hour of work. */
export const rateTitle = 'Rate an hour'

/** Where a quote comes from: "$42.00, from a welding shop, asked by phone, 20 January 2027". */
export function quoteWords({ quote, quoteFrom, on }: AgreedRate, currency: string): string {
  if (quote === '') return 'no local quote was entered'
  const source = quoteFrom.trim() === '' ? 'from nobody that is named' : `from ${quoteFrom.trim()}`
  return `${typedMoneyWords(quote, currency)}, ${source}${on === '' ? '' : `, ${dayWords(on)}`}`
}

/** The agreed rates as forms are given them, as arrangements that hold nothing else. */
export function ratesAlone(rates: Readonly<Record<'skilled' | 'plain', string>>): Arrangements {
  const one = (rate: string) => ({ rate, quote: '', quoteFrom: '', on: '' })
  return { tolerance: '', rates: { skilled: one(rates.skilled), plain: one(rates.plain) }, notes: '' }
}

/** Said beside a rate that is not the agreed one: it is no fault, the line's own rate counts. */
export function departsWords(
  line: Pick<LabourLine, 'skill' | 'rate'>,
  arrangements: Arrangements | undefined,
  currency: string,
): string | undefined {
  const agreed = departsFrom(line, arrangements)
  if (agreed === undefined || line.skill === '') return undefined
  return `not the agreed ${typedMoneyWords(agreed, currency)} for ${skillWords[line.skill].toLowerCase()}`
}

/** What the tolerance means. */
export function toleranceWords(percent: string): string {
  return percent === ''
    ? 'No tolerance is agreed.'
    : `An item may come up to ${percent} percent dearer than planned before both households look at it again.`
}

/** Asked about a payment plan whose total is not what the household brings in money as planned. */
export function totalQuestion(notebook: Notebook, from: Household, planned: Minor, total: Minor): string {
  const money = (minor: Minor) => moneyWords(minor, notebook.currency)
  const name = householdName(notebook, from)
  const apart = planned > total ? planned - total : total - planned
  const brings =
    planned < 0n
      ? `As planned, ${name} brings nothing in money: it is due to get ${money(-planned)} back`
      : `As planned, ${name} brings ${money(planned)} in money`
  return `${brings}, ${money(apart)} ${planned > total ? 'more' : 'less'} than this total of ${money(total)}. Change the total, or tick that it is meant.`
}

export const arrangementRefusals = {
  quoteSource: 'Needed: who gave this quote, such as “a welding shop in town, by phone”.',
  /** A quote that is dated in the future. */
  quoteDay: (on: string, today: string) =>
    `${dayWords(on)} is yet to come: today is ${dayWords(today)}. Enter the day on which the quote was given.`,
  total: totalQuestion,
} as const

/** Offered where the payment plan falls short of what its household is still to bring in money. */
export const moreInstalmentWords = {
  /** The link that leads to the form. */
  link: (amount: string) => `Write ${amount} as one more instalment`,
  short: (amount: string) => `The plan that all have signed falls short by ${amount}.`,
  /** The press in the form: it adds the part, and the amount to the total. */
  add: (amount: string) => `Add ${amount} as one more instalment`,
  inDraft: 'The draft has an instalment for that. It holds once both have marked it and all have signed.',
} as const
