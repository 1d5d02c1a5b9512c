import type { CommonParts } from '../core/shares/commonParts.ts'
import type { ItemShares } from '../core/shares/itemShares.ts'
import { moneyWords } from './money.ts'
import type { ShareNames } from './shareText.ts'

export const commonPartsTitle = 'Each item with its part of the common costs'

export const commonPartsNote = 'Each part is rounded so that all of them add up to the sums above.'

/** A table: its columns, of which all but the first hold figures, and its rows. */
type PartsTable = {
  readonly columns: readonly string[]
  readonly rows: readonly (readonly string[])[]
  readonly foot: readonly string[]
}

/** What each section and gate comes to with its part of the common costs, and the common costs that are shared by themselves. */
export function commonPartsTable(
  { carried, standing }: CommonParts,
  titleOf: (item: ItemShares) => string,
  names: ShareNames,
): PartsTable {
  const money = (minor: bigint) => moneyWords(minor, names.currency)
  const sums = [...carried.map(({ sum }) => sum), ...standing]
  const total = sums.reduce(
    (so, one) => ({ a: so.a + one.a, b: so.b + one.b, total: so.total + one.total }),
    {
      a: 0n,
      b: 0n,
      total: 0n,
    },
  )
  const own = [...carried.map(({ item }) => item), ...standing].reduce((sum, item) => sum + item.total, 0n)
  return {
    columns: ['Item', 'Its own cost', 'Its part', 'With its part', names.a, names.b],
    rows: [
      ...carried.map(({ item, laid, sum }) => [
        titleOf(item),
        ...[item.total, laid.total, sum.total, sum.a, sum.b].map(money),
      ]),
      ...standing.map((item) => [titleOf(item), ...[item.total, 0n, item.total, item.a, item.b].map(money)]),
    ],
    foot: ['All items', ...[own, total.total - own, total.total, total.a, total.b].map(money)],
  }
}
