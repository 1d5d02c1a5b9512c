import type { Units } from '../agreement/notebook.ts'
import type { Millimetres } from '../amounts/length.ts'
import { multiplyRatios, type Ratio, ratio } from '../amounts/ratio.ts'
import type { FreeLine, Member } from './buildUp.ts'
import { ceilingOf, divideRatios, lowestTerms, thousandthsText } from './exact.ts'
import type { ItemAt } from './postLayout.ts'
import type { Step } from './step.ts'

/** One worked-out quantity of one item: what will be offered as a cost line. */
export type Quantity = {
  readonly item: ItemAt
  /** Key of the part of the build-up that it comes from, the same as long as the build-up keeps its parts: `posts`, `infill 2`. */
  readonly part: string
  readonly name: QuantityName
  /** Whole where it is bought whole, else rounded half up to three digits after the point. */
  readonly quantity: string
  readonly unit: string
  /** Undefined where no weight is known. */
  readonly kilograms: number | undefined
  readonly reclaimed: boolean
  readonly workings: readonly Step[]
  /** Of what is needed post by post: the posts that it is for, and how much of it each takes, in any one measure. */
  readonly ofPosts?: readonly OfPost[]
}

/** `post`: its place in `PostLayout.posts`. */
export type OfPost = { readonly post: number; readonly amount: number }

/** What a quantity is of; worded in `lib/words/takeoff/quantityText.ts`. `what` is as typed and may be empty. */
export type QuantityName =
  | {
      readonly kind: 'posts'
      readonly which: 'posts' | 'endPosts' | 'cornerPosts' | 'gatePosts'
      readonly member: Member
      readonly longest: Millimetres
      readonly alike: boolean
    }
  | { readonly kind: 'rails' | 'frame' | 'header'; readonly member: Member }
  | {
      readonly kind: 'roll' | 'panel' | 'board' | 'strip'
      readonly what: string
      readonly size: Millimetres | undefined
    }
  | { readonly kind: 'ties' | 'finish' | 'hinges' | 'latch'; readonly what: string }
  | { readonly kind: 'concrete' | 'gravel' | 'caps' | 'brace wire' }
  | { readonly kind: 'line'; readonly what: string; readonly basis: FreeLine['basis'] }

/** Units in which the notebook reads quantities. */
export type QuantityUnits = {
  readonly length: 'ft' | 'm'
  readonly area: 'sq ft' | 'sq m'
  readonly volume: 'cu ft' | 'L'
}

export function quantityUnits(units: Units): QuantityUnits {
  return units === 'metric'
    ? { length: 'm', area: 'sq m', volume: 'L' }
    : { length: 'ft', area: 'sq ft', volume: 'cu ft' }
}

const millimetresPer: Readonly<Record<'ft' | 'm', Ratio>> = { ft: ratio(3048n, 10n), m: ratio(1000n, 1n) }

/** A length in feet or metres, exact. */
export function lengthIn(unit: 'ft' | 'm', length: Millimetres): Ratio {
  return lowestTerms(divideRatios(length, millimetresPer[unit]))
}

/** An area in mm² in square feet or square metres, exact. */
export function areaIn(unit: 'sq ft' | 'sq m', squareMillimetres: Ratio): Ratio {
  const side = millimetresPer[unit === 'sq ft' ? 'ft' : 'm']
  return lowestTerms(divideRatios(squareMillimetres, multiplyRatios(side, side)))
}

/** Litres in the notebook's unit of volume. */
export function volumeIn(unit: 'cu ft' | 'L', litres: number): Ratio {
  return fromNumber(unit === 'L' ? litres : litres / 28.316846592)
}

/** A float as a ratio, to the ninth digit after the point. */
export function fromNumber(value: number): Ratio {
  return ratio(BigInt(Math.round(value * 1e9)), 1_000_000_000n)
}

export function measuredQuantity(amount: Ratio): string {
  return thousandthsText(amount)
}

/** Bought whole: the whole number at or above the amount. */
export function wholeQuantity(amount: Ratio): string {
  return String(ceilingOf(amount))
}
