import type { Notebook, Share } from '../agreement/notebook.ts'
import { nothingAsked, placesOf, shareItem, spreadOf } from './itemShares.ts'
import { shareUnder, type Way } from './shareUnder.ts'
import { digitsOf } from './statement.ts'

/**
 * How every item that can follow a way would then be shared, by its id, from figures that stand in it. A common cost that
 * is laid on the sections and gates follows none.
 */
export function sharesByWay(notebook: Notebook, way: Way): ReadonlyMap<string, Share> {
  const digits = digitsOf(notebook)
  return new Map(
    placesOf(notebook).flatMap((place) => {
      if (spreadOf(place.item) !== undefined) return []
      const under = shareUnder(place.item, way)
      if ('missing' in under) return []
      const tried = { ...place, item: { ...place.item, share: under.share } }
      return shareItem(tried, digits, nothingAsked).ok ? [[place.item.id, under.share] as const] : []
    }),
  )
}
