import { canonicalText } from '../agreement/canonicalText.ts'
import type { Notebook, Share, Spread } from '../agreement/notebook.ts'
import type { Minor } from '../amounts/money.ts'
import { ratio } from '../amounts/ratio.ts'
import { type Split, splitExactly } from '../amounts/split.ts'
import type { Fault } from '../faults.ts'
import type { ForBoth } from '../people/household.ts'
import { held, type Result } from '../result.ts'
import {
  type AskedSoFar,
  type ItemShares,
  nothingAsked,
  placesOf,
  shareItem,
  spreadOf,
} from './itemShares.ts'
import { sharesByWay } from './sharesByWay.ts'
import { type NoShare, type StandingPot, shareUnder, type Way, wayNames } from './shareUnder.ts'
import { digitsOf, layingIn, type Statement, shareItems, statementOf } from './statement.ts'

/** A way that can't be used, and why: figures that nobody gave, or figures that don't hold for this pot. */
export type UnusableWay = { readonly way: Way } & (
  | { readonly because: NoShare }
  | { readonly because: 'faults'; readonly faults: readonly Fault[] }
)

/** The least and the most that household a is asked for, what b is then asked for, and the middle of the two. */
export type Range = { readonly low: ForBoth<Minor>; readonly high: ForBoth<Minor>; readonly middle: Split }

/** What one way asks for on an item. */
export type ItemWay = {
  readonly way: Way
  readonly shares: ItemShares
  /** The item is shared so now. */
  readonly chosen: boolean
  readonly stays: StandingPot | undefined
}

export type ItemSideBySide = {
  readonly total: Minor
  readonly ways: readonly ItemWay[]
  readonly unusable: readonly UnusableWay[]
  /** As the item is shared now; or why that can't be worked out yet. */
  readonly chosen: Result<ItemShares>
  readonly range: Range | undefined
  readonly askedBefore: AskedSoFar
  /** It is laid on the sections and gates, each of which shares its part its own way: no way is chosen here. */
  readonly laid: Spread | undefined
}

/**
 * What each way of sharing asks of each household on one item, from the item's own figures, beside the way that is
 * chosen; undefined where there is no such item. All amounts are `shareItem`'s, with what the items before this one
 * asked for.
 */
export function itemSideBySide(notebook: Notebook, id: string): ItemSideBySide | undefined {
  const places = placesOf(notebook)
  const at = places.findIndex((place) => place.item.id === id)
  const place = places[at]
  if (place === undefined) return undefined
  const digits = digitsOf(notebook)
  const askedBefore = askedBeforeItem(notebook, id)
  const laid = spreadOf(place.item)
  if (laid !== undefined) {
    const chosen = shareItem(place, digits, askedBefore, layingIn(notebook))
    const total = chosen.ok ? chosen.value.total : 0n
    return { total, ways: [], unusable: [], chosen, range: undefined, askedBefore, laid }
  }
  const shareAs = (share: Share) =>
    shareItem({ ...place, item: { ...place.item, share } }, digits, askedBefore)
  const ways: ItemWay[] = []
  const unusable: UnusableWay[] = []
  for (const way of wayNames) {
    const under = shareUnder(place.item, way)
    if ('missing' in under) {
      unusable.push({ way, because: under.missing })
      continue
    }
    const shared = shareAs(under.share)
    if (shared.ok) {
      const chosen = canonicalText(under.share) === canonicalText(place.item.share)
      ways.push({ way, shares: shared.value, chosen, stays: under.stays })
    } else unusable.push({ way, because: 'faults', faults: shared.faults })
  }
  const chosen = shareItem(place, digits, askedBefore)
  const ranged = [
    ...ways.filter(({ way, chosen }) => chosen || dividesBoth(way)).map(({ shares }) => shares),
    ...(chosen.ok ? [chosen.value] : []),
  ]
  const total = chosen.ok ? chosen.value.total : (ways[0]?.shares.total ?? 0n)
  return { total, ways, unusable, chosen, range: rangeOf(ranged, askedBefore.money), askedBefore, laid }
}

/** What one way asks for over the whole fence, after caps. */
export type WholeWay = {
  readonly way: Way
  readonly asked: ForBoth<Minor>
  readonly beforeCaps: ForBoth<Minor>
  /** Items that follow the way, of all that can choose one; the others stay as they are chosen. */
  readonly follow: number
  /** Every item follows it as it stands. */
  readonly chosen: boolean
}

export type WholeSideBySide = {
  readonly total: Minor
  /** Items that can choose a way: a common cost that is laid on the others follows them. */
  readonly items: number
  readonly ways: readonly WholeWay[]
  /** Ways that no item can follow. */
  readonly unusable: readonly Way[]
  readonly chosen: Statement
  readonly range: Range | undefined
}

/**
 * What the whole fence asks of each household when every item that can follows one way and the others stay as they are
 * chosen, after caps. Refused where the fence can't be shared as it stands.
 */
export function wholeSideBySide(notebook: Notebook): Result<WholeSideBySide> {
  const chosen = statementOf(notebook)
  if (!chosen.ok) return chosen
  const places = placesOf(notebook).filter(({ item }) => spreadOf(item) === undefined)
  const now = canonicalText(places.map(({ item }) => item.share))
  const ways: WholeWay[] = []
  const unusable: Way[] = []
  for (const way of wayNames) {
    const shares = sharesByWay(notebook, way)
    const follow = shares.size
    const turned = withShares(notebook, (item) => ({ ...item, share: shares.get(item.id) ?? item.share }))
    const statement = follow === 0 ? undefined : statementOf(turned)
    if (statement?.ok) {
      const turnedNow = placesOf(turned).filter(({ item }) => spreadOf(item) === undefined)
      const same = canonicalText(turnedNow.map(({ item }) => item.share)) === now
      const { asked, beforeCaps } = statement.value
      const chosen = same && follow === places.length
      ways.push({ way, asked: { a: asked.a, b: asked.b }, beforeCaps, follow, chosen })
    } else unusable.push(way)
  }
  const { asked, total } = chosen.value
  const ranged = ways.filter(({ way, chosen: now }) => now || dividesBoth(way)).map((one) => one.asked)
  const range = rangeOf([...ranged, asked], { a: 0n, b: 0n })
  return held({ total, items: places.length, ways, unusable, chosen: chosen.value, range })
}

/** One household bears all or nothing: as an end of a range it would say nothing about how far apart two views are. */
function dividesBoth(way: Way): boolean {
  return way !== 'one-a' && way !== 'one-b'
}

/** The middle lies halfway between the ends; an odd unit falls as in any split (rule 2 of the file format). */
function rangeOf(amounts: readonly ForBoth<Minor>[], askedSoFar: ForBoth<Minor>): Range | undefined {
  const [first] = amounts
  if (first === undefined) return undefined
  const low = amounts.reduce((least, one) => (one.a < least.a ? one : least), first)
  const high = amounts.reduce((most, one) => (one.a > most.a ? one : most), first)
  const middle = splitExactly(first.a + first.b, ratio(low.a + high.a, 2n), askedSoFar)
  return { low: { a: low.a, b: low.b }, high: { a: high.a, b: high.b }, middle }
}

/** What both households are asked for by the items before this one: it decides an odd unit on a tie. */
export function askedBeforeItem(notebook: Notebook, id: string): AskedSoFar {
  const places = placesOf(notebook)
  const at = places.findIndex((place) => place.item.id === id)
  const before = new Set(places.slice(0, Math.max(0, at)).map(({ path }) => path))
  const items = shareItems(notebook).items.filter(({ path }) => before.has(path))
  return items.reduce<AskedSoFar>(
    ({ money, hours }, item) => ({
      money: { a: money.a + item.a, b: money.b + item.b },
      hours: { a: hours.a + item.hours.a, b: hours.b + item.hours.b },
    }),
    nothingAsked,
  )
}

/** The notebook with every item as `turn` gives it back. */
function withShares(
  notebook: Notebook,
  turn: <Item extends ReturnType<typeof placesOf>[number]['item']>(item: Item) => Item,
): Notebook {
  return {
    ...notebook,
    sections: notebook.sections.map(turn),
    gates: notebook.gates.map(turn),
    common: notebook.common.map(turn),
  }
}
