import type { Minor } from '../../core/amounts/money.ts'
import { type CostByItem, costByItem } from '../../core/figures/costByItem.ts'
import type { BarsFigure } from '../../core/figures/figure.ts'
import type { ForBoth } from '../../core/people/household.ts'
import type { ItemShares } from '../../core/shares/itemShares.ts'
import { moneyWords } from '../money.ts'
import { type DescribedFigure, lengthsOf } from './figureWords.ts'

/** As many items as are read on one page; the cheaper ones are added up. */
const mostItems = 20

type Names = ForBoth<string> & { readonly currency: string }

/**
 * Cost by item: what is planned, parted as it is asked of each, and below it what was spent so far. Undefined where one
 * bar alone, or none, would stand there.
 *
 * @param spent by item (`spentByItem`); empty where nothing of the books is to be shown
 */
export function costBars(
  shares: readonly ItemShares[],
  spent: ReadonlyMap<string, ForBoth<Minor>>,
  names: Names,
  titleOf: (item: ItemShares) => string,
): DescribedFigure<BarsFigure> | undefined {
  const costs = costByItem(shares, spent, mostItems)
  if (shares.length < 2 || !hasAnything(costs)) return undefined
  const bars = (asked: ForBoth<Minor> | undefined, given: ForBoth<Minor> | undefined) => [
    ...(asked ? [{ parts: lengthsOf(asked), text: `${moneyOf(asked, names)} planned` }] : []),
    // An empty bar for each item that is still to come would say nothing.
    ...(given && (given.a !== 0n || given.b !== 0n)
      ? [{ parts: lengthsOf(given), text: `${moneyOf(given, names)} spent`, thin: true }]
      : []),
  ]
  const { items, others, onNothing, inAll } = costs
  return {
    caption: inAll.spent ? 'Cost by item: planned, and spent so far' : 'Cost by item, as planned',
    description: descriptionOf(costs, names, titleOf),
    figure: {
      kind: 'bars',
      unit: { kind: 'money', currency: names.currency },
      names,
      groups: [
        ...items.map(({ item, asked, spent: given }) => ({ title: titleOf(item), bars: bars(asked, given) })),
        ...(others ? [{ title: othersWords(others.count), bars: bars(others.asked, others.spent) }] : []),
        ...(onNothing ? [{ title: 'For the whole fence', bars: bars(undefined, onNothing) }] : []),
      ],
    },
  }
}

function hasAnything({ inAll: { asked, spent } }: CostByItem): boolean {
  return asked.a + asked.b !== 0n || (spent !== undefined && (spent.a !== 0n || spent.b !== 0n))
}

function othersWords(count: number): string {
  return count === 1 ? 'One more item' : `${count} more items together`
}

function moneyOf({ a, b }: ForBoth<Minor>, { currency }: Names): string {
  return moneyWords(a + b, currency)
}

function descriptionOf(
  { items, others, inAll }: CostByItem,
  names: Names,
  titleOf: (item: ItemShares) => string,
): string {
  const money = (minor: Minor) => moneyWords(minor, names.currency)
  const { asked, spent } = inAll
  const count = items.length + (others?.count ?? 0)
  const dearest = items.reduce<CostByItem['items'][number] | undefined>(
    (most, one) => (most === undefined || one.item.total > most.item.total ? one : most),
    undefined,
  )
  return [
    `Bars of ${count} items. Planned in all: ${moneyOf(asked, names)}, of it ${money(asked.a)} asked of ${names.a} and ${money(asked.b)} of ${names.b}.`,
    dearest ? `The dearest is ${titleOf(dearest.item)}, at ${money(dearest.item.total)}.` : '',
    spent
      ? `Spent so far: ${moneyOf(spent, names)}, of it ${money(spent.a)} by ${names.a} and ${money(spent.b)} by ${names.b}.`
      : '',
    'The table has every figure.',
  ]
    .filter(Boolean)
    .join(' ')
}
