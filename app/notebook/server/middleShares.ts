import { middleShare } from '../../../lib/core/shares/middleShare.ts'
import type { Proposal } from '../../../lib/store/proposals.ts'
import type { Opened } from './opened.ts'
import { positionsApart, positionsOf } from './positions.ts'

/** For each item that the two positions share otherwise, by its id, agreed parts that ask for the middle. */
export function middleShares(opened: Opened, proposals: readonly Proposal[]): ReadonlyMap<string, unknown> {
  const positions = positionsOf(opened, proposals)
  const apart = positionsApart(opened, positions)?.apart
  const proposed = new Set([...positions.a.items, ...positions.b.items].map(({ found }) => found.id))
  return new Map(
    (apart?.ok ? apart.value.items : []).flatMap((item) => {
      const share = proposed.has(item.id) ? middleShare(item) : undefined
      return share === undefined ? [] : [[item.id, share] as const]
    }),
  )
}
