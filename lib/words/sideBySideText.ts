import { never } from '../core/assert.ts'
import { principleOfWay, type Way } from '../core/shares/shareUnder.ts'
import type { ItemWay, Range, UnusableWay } from '../core/shares/sideBySide.ts'
import { faultText } from './faultText.ts'
import { principleMeaning, principleWords } from './labels.ts'
import { moneyWords } from './money.ts'
import { halvesMeanwhile } from './passageText.ts'
import type { ShareNames } from './shareText.ts'
import { waysRestWords } from './spreadText.ts'

/** What a way to share is called. */
export function wayWords(way: Way, names: ShareNames): string {
  const words = principleWords[principleOfWay(way)]
  return way === 'one-a' ? `${words}: ${names.a}` : way === 'one-b' ? `${words}: ${names.b}` : words
}

export function wayMeaning(way: Way): string {
  return principleMeaning[principleOfWay(way)]
}

/** What a way leaves as it is; undefined where it shares the whole item. */
export function staysWords({ stays }: Pick<ItemWay, 'stays'>): string | undefined {
  return (
    stays &&
    (stays === 'labour' ? 'The work stays shared as chosen now.' : 'The materials stay shared as chosen now.')
  )
}

/** What stands in for the figures of a way; undefined where they stand. */
export function apartWords(way: Way, names: ShareNames): string | undefined {
  return way === 'use' && names.uses?.apart ? halvesMeanwhile : undefined
}

/** Why a way can't be used on this item, and what would make it usable. */
export function unusableWords(unusable: UnusableWay): string {
  switch (unusable.because) {
    case 'no gate':
      return 'Only a gate has passages to count.'
    case 'no passages':
      return 'No passages were counted at this gate yet. Count them on the gate’s page.'
    case 'no figures':
      return `No ${figuresOf(unusable.way)} stand in this item yet. Enter them on the item’s page.`
    case 'faults':
      return unusable.faults.map(faultText).join(' ')
    default:
      return never(unusable)
  }
}

function figuresOf(way: Way): string {
  switch (way) {
    case 'percent':
      return 'percentages'
    case 'length':
      return 'lengths for the two households'
    case 'benefit':
      return 'points'
    case 'saving':
      return 'prices for building alone'
    case 'difference':
      return 'costs of a basic fence'
    default:
      return 'figures'
  }
}

/** How far apart the ways are, and the middle. Undefined where they all ask for the same. */
export function rangeSentences({ low, high, middle }: Range, names: ShareNames): readonly string[] {
  const money = (minor: bigint) => moneyWords(minor, names.currency)
  if (low.a === high.a)
    return [
      `All ways that share between both ask for the same: ${money(low.a)} of ${names.a} and ${money(low.b)} of ${names.b}.`,
    ]
  return [
    `They ask ${names.a} for ${money(low.a)} to ${money(high.a)}, and ${names.b} for ${money(high.b)} to ${money(low.b)}.`,
    `The two ends are ${money(high.a - low.a)} apart.`,
    `The middle is ${money(middle.a)} for ${names.a} and ${money(middle.b)} for ${names.b}.`,
    ...(middle.odd ? [`The odd ${money(1n)} goes to ${names[middle.odd.to]}.`] : []),
  ]
}

export const rangeNote = 'One household alone is all or nothing. It counts as an end only where it is chosen.'

/** How many items follow a way over the whole fence. */
export function followWords(follow: number, items: number): string {
  return follow === items ? 'all' : `${follow} of ${items}`
}

/** What a way would ask without caps, below its bar. */
export function beforeCapsWords(
  a: string,
  b: string,
  names: { readonly a: string; readonly b: string },
): string {
  return `Without caps: ${names.a} ${a}, ${names.b} ${b}.`
}

/** Why an item is not shared by the way that was pressed. */
export const wayRefusals = {
  changed:
    'This item was changed since you opened the page. Load the page again, and look at the figures as they are now.',
  notUsable: 'This way can’t be used for this item as it stands. Load the page again to see what it lacks.',
  /** A common cost that is laid on the others. */
  laid: waysRestWords,
} as const
