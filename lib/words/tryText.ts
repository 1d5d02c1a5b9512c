import type { Notebook } from '../core/agreement/notebook.ts'
import { never } from '../core/assert.ts'
import type { Influence } from '../core/trying/influences.ts'
import type { TriedEdit, TriedMoves } from '../core/trying/tried.ts'
import type { ShareAmount, SharePot } from '../core/trying/triedShare.ts'
import { moneyWords } from './money.ts'
import { capitalised } from './summary/names.ts'
import { titleOfItem } from './titleOfItem.ts'

export const tryWords = {
  lead: 'Move heights, lengths, prices, hours, rates and what a share is held against, and see what each household would be asked for. Nothing here touches the plan; what you try stays in this browser until you propose it or put it back.',
  planned: (text: string) => `planned: ${text || 'nothing'}`,
  putBack: 'Put back',
  putAllBack: 'Put everything back as planned',
  follows:
    'What came from the take-off follows it. What was typed by hand moves in proportion: by area with length and height, all else and the hours with the length.',
  heightMovesNothing:
    'Nothing here follows the height yet: no line came from the take-off, and none goes by area. Take the quantities over from its build-up first, or move the quantities themselves.',
  nothing: 'Nothing is tried yet: these are the figures of the plan.',
  gone: 'What you had tried here was of an older plan. What the plan no longer has was left out.',
  propose: 'Keep it as a proposal',
  proposeHint:
    'The other household then sees these items as you tried them, beside the plan. The plan changes only when it accepts.',
  proposeWhy: 'Why, in a few words',
  onlyItems: 'A proposal is made of items: what you tried changes these.',
} as const

/** Why no proposal is made of what was tried. */
export const tryRefusals = {
  unreadable: 'What was tried could not be read. Load the page again; it is still in this browser.',
} as const

/** What is wrong with a tried text, and what would be right. */
export const triedFaultWords: Readonly<Record<TriedEdit['field'], string>> = {
  height: 'A length with its unit, such as 5 ft 6 in or 1.8 m. Until then the planned height is taken.',
  from: 'A length with its unit, such as 24 ft. Until then the planned station is taken.',
  to: 'A length with its unit, such as 56 ft. Until then the planned station is taken.',
  opening: 'A length with its unit, such as 4 ft. Until then the planned opening is taken.',
  quantity: 'A number such as 12 or 0.5, without a unit. Until then the planned quantity is taken.',
  unitPrice: 'A number such as 18.50, without a sign. Until then the planned price is taken.',
  hours: 'A number such as 7.5. Until then the planned hours are taken.',
  rate: 'A number such as 28. Until then the planned rate is taken.',
  basic: 'An amount such as 450.00, without a sign. Until then the planned basic fence is taken.',
  upgrade: 'An amount such as 120.00, without a sign. Until then the planned upgrade is taken.',
  aloneA: 'An amount such as 900.00, without a sign. Until then the planned figure is taken.',
  aloneB: 'An amount such as 900.00, without a sign. Until then the planned figure is taken.',
  buildUp: 'One of the build-ups in the list.',
}

export const moveFaultWords = 'A percentage such as 20 or -10; nothing can fall by more than 100.'

export const moveLabels: Readonly<Record<keyof TriedMoves, string>> = {
  prices: 'All prices',
  hours: 'All hours',
  rates: 'All rates',
}

const fieldNames: Readonly<Record<TriedEdit['field'], string>> = {
  height: 'height',
  from: 'beginning',
  to: 'length',
  opening: 'opening',
  quantity: 'quantity',
  unitPrice: 'price',
  hours: 'hours',
  rate: 'rate',
  basic: 'cost of the basic fence',
  upgrade: 'cost of an upgrade',
  aloneA: 'building alone',
  aloneB: 'building alone',
  buildUp: 'build-up',
}

/** What an input is called: "Along the gardens: price of steel strip". */
export function inputName(notebook: Notebook, input: TriedEdit): string {
  const title = titleOfItem(notebook, input.item)
  if (!('line' in input) || 'pot' in input) return `${title}: ${fieldNames[input.field]}`
  const item = [...notebook.sections, ...notebook.gates, ...notebook.common].find(
    ({ id }) => id === input.item,
  )
  const ofCost = input.field === 'quantity' || input.field === 'unitPrice'
  const line = ofCost ? item?.materials[input.line]?.what : item?.labour[input.line]?.task
  return `${title}: ${fieldNames[input.field]} of ${line || `line ${input.line + 1}`}`
}

/** What an amount of a share is called where it is tried: "“one foot more height”, asked of no. 14". */
export function shareAmountName(
  { field, what, household }: ShareAmount,
  names: { readonly a: string; readonly b: string },
): string {
  switch (field) {
    case 'basic':
      return 'Cost of the basic fence'
    case 'aloneA':
      return `${capitalised(names.a)} building alone`
    case 'aloneB':
      return `${capitalised(names.b)} building alone`
    case 'upgrade': {
      const name = what.trim() === '' ? 'An upgrade without a name' : `“${what.trim()}”`
      return household === undefined ? name : `${name}, asked of ${names[household]}`
    }
    default:
      return never(field)
  }
}

/** Over the amounts of one pot's share. */
export const sharePotWords: Readonly<Record<SharePot, string>> = {
  materials: 'How the materials are shared',
  labour: 'How the work is shared',
  together: 'How it is shared',
}

/** What ten percent of an input do to a share: "10 percent more asks $31.20 more, 10 percent less $31.20 less". */
export function influenceWords({ more, less, beforeCaps }: Influence, currency: string): string {
  const side = (percent: string, amount: bigint) =>
    amount === 0n
      ? `10 percent ${percent} changes nothing`
      : `10 percent ${percent} asks ${moneyWords(amount < 0n ? -amount : amount, currency)} ${amount > 0n ? 'more' : 'less'}`
  const words = `${side('more', more)}; ${side('less', less)}.`
  if (more === beforeCaps.more && less === beforeCaps.less) return words
  return `${words} Before caps: ${side('more', beforeCaps.more)}; ${side('less', beforeCaps.less)}.`
}

/** A change of an amount: "+$12.00", "−$3.10", "no change". */
export function changeWords(before: bigint, after: bigint, currency: string): string {
  if (before === after) return 'no change'
  return `${after > before ? '+' : ''}${moneyWords(after - before, currency)}`
}

/** What an item comes to as it is tried: "$913.19, as planned" or "$950.00 (+$36.81)". */
export function triedItemWords(
  before: bigint | undefined,
  after: bigint | undefined,
  currency: string,
): string {
  if (after === undefined) return 'can’t be shared so'
  const now = moneyWords(after, currency)
  if (before === undefined || before === after) return `${now}, as planned`
  return `${now} (${changeWords(before, after, currency)})`
}
