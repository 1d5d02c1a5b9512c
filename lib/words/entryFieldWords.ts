import type { Minor } from '../core/amounts/money.ts'
import type { TwoValues } from '../core/ledger/valuation.ts'
import { earlierIsMeantWords } from './entryText.ts'
import { moneyWords } from './money.ts'

/** What the fields of an entry in the book are called. */
export const entryFieldWords = {
  givenByHint:
    'Each household enters what it gave itself. Only a payment between you can be entered by the one who received it.',
  linesAbout: 'cost lines of the plan, and the receipt',
  linesHint:
    'Name the lines of the plan that the amount was spent on, so that planned and actual can be set side by side. What is on no line stays with the item as a whole.',
  addLine: 'Add a line',
  line: 'Line of the plan',
  amount: 'Of the amount',
  quantity: 'Quantity',
  receipt: 'Photo or PDF of the receipt',
  noReceipt: 'none',
  addReceipt: 'Not there yet? Add it below under “Add a photo or PDF of a receipt”. All of them are on',
  filesPage: 'Photos and papers',
  earlierIsMeant: earlierIsMeantWords,
  valuation: {
    label: 'How it was valued',
    about: 'reclaimed stock: by its paper or by weight',
    rule: 'Reclaimed stock counts at what a paper says that it cost, or at its weight times a yard’s price, whichever is lower. A higher amount counts once both households mark it on the page “The books”.',
    documented: 'Documented cost',
    documentedHint: 'What a bill or a receipt for it says. Leave it empty where there is none.',
    weight: 'Weight',
    unit: 'Weighed in',
    yardPrice: 'Yard’s price for one lb or kg',
    saidBy: 'Who said so',
    saidByHint: 'Which yard, by phone or in writing, and on which day.',
  },
} as const

/** The same fields, by what was given. */
export function refundOrPaid(kind: string): { readonly shop: string; readonly lines: string } {
  if (kind === 'refund')
    return { shop: 'Who paid it back, or bought it', lines: 'Which lines it came back from' }
  if (kind === 'material') return { shop: 'Where it comes from', lines: 'Which lines it is for' }
  return { shop: 'Shop', lines: 'Which lines it was for' }
}

/** What of an amount is on no line yet, in minor units; below zero the lines are too much. */
export function linesLeftWords(left: Minor, currency: string, ofItem: boolean): string {
  if (left < 0n) return `The lines are ${moneyWords(-left, currency)} more than the whole amount.`
  if (left === 0n) return 'The whole amount is on these lines.'
  return `${moneyWords(left, currency)} is on no line: it is for ${ofItem ? 'the item' : 'the fence'} as a whole.`
}

/** Both values of goods in kind, and what counts of the amount. Empty where nothing was said. */
export function valuationSentence(values: TwoValues, amount: Minor | undefined, currency: string): string {
  const money = (minor: Minor) => moneyWords(minor, currency)
  const { documented, byWeight, lower } = values
  if (lower === undefined) return ''
  const two =
    documented !== undefined && byWeight !== undefined
      ? `By its paper ${money(documented)}, by weight ${money(byWeight)}: the lower one is ${money(lower)}.`
      : documented !== undefined
        ? `By its paper ${money(documented)}.`
        : `By weight ${money(lower)}.`
  if (amount === undefined || amount <= lower) return two
  return `${two} Of ${money(amount)} only ${money(lower)} counts, until both households mark the whole.`
}
