import type { Notebook } from '../../../lib/core/agreement/notebook.ts'
import { placesOf, spreadOf } from '../../../lib/core/shares/itemShares.ts'
import { sharesByWay } from '../../../lib/core/shares/sharesByWay.ts'
import { principleOfWay, shareUnder, type Way, wayNames } from '../../../lib/core/shares/shareUnder.ts'
import { saysTheSame } from '../../../lib/forms/mergeDrafts.ts'
import { startingPrinciple } from '../../../lib/forms/startingPrinciple.ts'

/** A way of an address; undefined where it names none. */
export function askedWay(asked: unknown): Way | undefined {
  return wayNames.find((way) => way === asked)
}

/** The address of a new proposal that begins with a way to share, for one item or for all that can follow it. */
export function proposeWayHref(notebookId: string, way: Way, itemId?: string): string {
  const item = itemId === undefined ? '' : `&item=${encodeURIComponent(itemId)}`
  return `/notebook/${notebookId}/proposals/new?way=${way}${item}`
}

/**
 * Shares that a proposal of a way begins with, by the ids of their items: for one item, with its figures still to be typed
 * where none stand in it; else for all that can follow the way and are not shared so now.
 */
export function wayShares(
  notebook: Notebook,
  way: Way,
  itemId: string | undefined,
): ReadonlyMap<string, unknown> {
  const places = placesOf(notebook)
  if (itemId === undefined) {
    const now = new Map(places.map(({ item }) => [item.id, item.share]))
    return new Map(
      [...sharesByWay(notebook, way)].filter(([id, share]) => !saysTheSame('share', share, now.get(id))),
    )
  }
  const item = places.find((place) => place.item.id === itemId)?.item
  if (item === undefined || spreadOf(item) !== undefined) return new Map()
  const under = shareUnder(item, way)
  if ('share' in under) return new Map([[itemId, under.share]])
  if (under.missing !== 'no figures') return new Map()
  const principle = principleOfWay(way)
  const blank = { principle, ...startingPrinciple[principle] }
  return new Map([
    [itemId, 'together' in item.share ? { together: blank } : { materials: blank, labour: blank }],
  ])
}
