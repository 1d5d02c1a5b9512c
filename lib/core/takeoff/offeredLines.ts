import { multiplyRatios, type Ratio, ratio } from '../amounts/ratio.ts'
import { numberOf, subtractRatios, thousandthsText } from './exact.ts'
import type { ItemAt } from './postLayout.ts'
import { fromNumber, type Quantity, type QuantityName } from './quantity.ts'
import type { SharedPost } from './sharedPosts.ts'
import type { TakeOff } from './takeOff.ts'

/** A worked-out quantity as it is offered for an item's materials, to be priced. */
export type OfferedLine = {
  readonly item: ItemAt
  /** What the cost line will carry as its `from`: "takeoff: posts". */
  readonly from: string
  readonly name: QuantityName
  readonly quantity: string
  readonly unit: string
}

const mark = 'takeoff: '

/**
 * One cost line for each quantity, in the order of the take-off. Of a post that two items share, and of its cap and the
 * fill of its hole, the other item is offered one half and the item that it is counted with keeps the rest, so that the
 * two add to the take-off's own quantity, which stays whole.
 */
export function offeredLines({
  quantities,
  sharedPosts,
}: Pick<TakeOff, 'quantities' | 'sharedPosts'>): readonly OfferedLine[] {
  const shared = new Map(sharedPosts.map((one) => [one.post, one]))
  const given: OfferedLine[] = []
  const own = quantities.map((quantity): OfferedLine => {
    const { item, part, name, unit } = quantity
    const halves = halvesOf(quantity, shared)
    let left = numberOf(quantity.quantity)
    for (const { other, itemId, half } of halves) {
      left = subtractRatios(left, half)
      const text = thousandthsText(half)
      given.push({ item: other, from: `${mark}${part} shared with ${itemId}`, name, quantity: text, unit })
    }
    return {
      item,
      from: `${mark}${part}`,
      name,
      quantity: halves.length === 0 ? quantity.quantity : thousandthsText(left),
      unit,
    }
  })
  return [...own, ...given]
}

/** What of a quantity falls to each other item: one half of what the posts take that it shares, to a thousandth. */
function halvesOf(
  { quantity, ofPosts = [] }: Quantity,
  shared: ReadonlyMap<number, SharedPost>,
): readonly (Pick<SharedPost, 'other' | 'itemId'> & { readonly half: Ratio })[] {
  const whole = ofPosts.reduce((sum, { amount }) => sum + amount, 0)
  const byOther = new Map<string, { post: SharedPost; count: number; amount: number }>()
  for (const { post: index, amount } of ofPosts) {
    const post = shared.get(index)
    if (post === undefined) continue
    const so = byOther.get(post.otherId) ?? { post, count: 0, amount: 0 }
    byOther.set(post.otherId, { post, count: so.count + 1, amount: so.amount + amount })
  }
  return [...byOther.values()].flatMap(({ post: { other, itemId }, count, amount }) => {
    // By the piece a half is exact; of what fills holes it is the part that these holes take.
    const byPiece = ofPosts.every((one) => one.amount === 1)
    const half = byPiece
      ? ratio(BigInt(count), 2n)
      : numberOf(thousandthsText(multiplyRatios(numberOf(quantity), fromNumber(amount / whole / 2))))
    return half.over === 0n ? [] : [{ other, itemId, half }]
  })
}

/** An offered line with its name in words. */
export type WordedLine = {
  readonly from: string
  readonly what: string
  readonly quantity: string
  readonly unit: string
}

/** A cost line as it stands in a document; keys that no rule reads stay on it. */
export type StandingLine = Readonly<Record<string, unknown>>

/**
 * An item's cost lines with the take-off's quantities in them. A line that a person changed stays as it is; an untouched
 * one takes the new quantity and keeps its words and its price (a price by another unit is no price and goes). What the
 * take-off no longer has is dropped, or kept at zero where it is priced already; what is new comes last, bought and not
 * priced. Merging twice is the same as merging once.
 */
export function mergeOffered(
  materials: readonly StandingLine[],
  offered: readonly WordedLine[],
): readonly StandingLine[] {
  const left = new Map(offered.map((line) => [line.from, line]))
  const standing = materials.flatMap((line): StandingLine[] => {
    if (!fromTakeOff(line)) return [line]
    const now = left.get(String(line.from))
    left.delete(String(line.from))
    if (line.changed === true) return [line]
    if (now === undefined) {
      // A second line of the same part is a person's doing: it stays.
      if (offered.some(({ from }) => from === line.from)) return [line]
      return isPriced(line) ? [{ ...line, quantity: '0' }] : []
    }
    if (now.unit === line.unit) return [{ ...line, quantity: now.quantity }]
    const { unitPrice: _ofOtherUnit, ...rest } = line
    return [{ ...rest, quantity: now.quantity, unit: now.unit }]
  })
  return [
    ...standing,
    ...[...left.values()].map(({ from, what, quantity, unit }) => ({
      what,
      quantity,
      unit,
      suppliedBy: 'bought',
      from,
    })),
  ]
}

/** Marks the lines whose quantity or unit a person changed by hand since `before`: they no longer follow the take-off. */
export function markChanged(
  before: readonly StandingLine[],
  after: readonly StandingLine[],
): readonly StandingLine[] {
  const was = new Map<unknown, StandingLine>()
  for (const line of before) if (fromTakeOff(line) && !was.has(line.from)) was.set(line.from, line)
  return after.map((line) => {
    const old = fromTakeOff(line) ? was.get(line.from) : undefined
    if (old === undefined || line.changed === true) return line
    return old.quantity === line.quantity && old.unit === line.unit ? line : { ...line, changed: true }
  })
}

export function fromTakeOff(line: { readonly from?: unknown }): boolean {
  return typeof line.from === 'string' && line.from.startsWith(mark)
}

function isPriced({ unitPrice }: StandingLine): boolean {
  return typeof unitPrice === 'string' && unitPrice !== ''
}
