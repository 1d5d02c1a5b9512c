import type { Millimetres } from '../amounts/length.ts'
import type { Household } from '../people/household.ts'
import type { HalfOfSite } from './siteFigures.ts'

/**
 * What the take-off found to clash, to lack, or to exceed a limit: a path to the field and the facts, worded in
 * `lib/words/takeoff/findingText.ts`. A finding stops nothing: the shares never look at it.
 */
export type Finding = { readonly path: string } & FindingFacts

export type FindingFacts =
  // places along the line
  | ({ readonly kind: 'sections-overlap' | 'gates-overlap' } & Clash)
  | { readonly kind: 'section-backwards'; readonly from: Millimetres; readonly to: Millimetres }
  | ({ readonly kind: 'section-past-the-end' | 'gate-past-the-end' } & Stretched & {
        readonly end: Millimetres
      })
  | ({ readonly kind: 'gate-partly-outside' } & Clash)
  | { readonly kind: 'angle-in-gate'; readonly at: Millimetres; readonly gate: number }
  | { readonly kind: 'angle-too-large'; readonly degrees: string }
  // what is not said, or is zero
  | { readonly kind: 'missing' }
  | { readonly kind: 'zero'; readonly typed: string }
  /** One half of what only counts together: a wind speed without the exposure. */
  | { readonly kind: 'half-said'; readonly lacks: HalfOfSite; readonly said: string }
  // posts
  | { readonly kind: 'posts-too-close'; readonly apart: Millimetres; readonly post: Millimetres }
  | { readonly kind: 'brace-does-not-fit'; readonly run: Millimetres; readonly braces: Millimetres }
  | { readonly kind: 'measured-unknown'; readonly post: string; readonly posts: number }
  | { readonly kind: 'measured-twice'; readonly post: string; readonly at: Millimetres }
  | {
      readonly kind: 'measured-out-of-order'
      readonly post: string
      readonly at: Millimetres
      readonly before: Millimetres
      readonly after: Millimetres
    }
  | { readonly kind: 'opening-narrowed'; readonly opening: Millimetres; readonly left: Millimetres }
  | {
      readonly kind: 'bay-too-wide'
      readonly bay: Millimetres
      readonly spacing: Millimetres
      readonly at: Millimetres
    }
  | { readonly kind: 'hole-narrower'; readonly hole: Millimetres; readonly post: Millimetres }
  | { readonly kind: 'gravel-fills-hole'; readonly depth: Millimetres; readonly gravel: Millimetres }
  | { readonly kind: 'wall-too-thick'; readonly wall: Millimetres; readonly outside: Millimetres }
  | {
      readonly kind: 'deduction-outside'
      readonly deduction: Millimetres
      readonly least: Millimetres
      readonly most: Millimetres
    }
  | { readonly kind: 'post-too-short'; readonly at: Millimetres }
  | {
      readonly kind: 'post-longer-than-stock'
      readonly piece: Millimetres
      readonly stock: Millimetres
      readonly posts: number
    }
  // rails and infill
  | {
      readonly kind: 'rail-longer-than-stock'
      readonly rail: Millimetres
      readonly stock: Millimetres
      readonly bays: number
    }
  | {
      readonly kind: 'panel-on-a-slope'
      readonly rise: Millimetres
      readonly bay: Millimetres
      readonly bays: number
    }
  | { readonly kind: 'lap-longer-than-roll'; readonly lap: Millimetres; readonly roll: Millimetres }
  | { readonly kind: 'strip-wider-than-coil'; readonly strip: Millimetres; readonly coil: Millimetres }
  | { readonly kind: 'layer-without-height'; readonly agreed: Millimetres; readonly ground: Millimetres }
  // gates
  | { readonly kind: 'leaf-nothing-left'; readonly opening: Millimetres; readonly clearances: Millimetres }
  | { readonly kind: 'header-below-leaf'; readonly clear: Millimetres; readonly leaf: Millimetres }
  | {
      readonly kind: 'swings-uphill'
      readonly household: Household
      readonly rise: Millimetres
      readonly clearance: Millimetres
    }
  // wind and frost: an orientation, never an approval
  | { readonly kind: 'shallower-than-wind-asks'; readonly depth: Millimetres; readonly needed: Millimetres }
  | {
      readonly kind: 'shallower-than-frost'
      readonly depth: Millimetres
      readonly frost: Millimetres
      readonly saidBy: string
    }
  | {
      readonly kind: 'catches-wind'
      readonly layer: 'board' | 'strip'
      /** How many times the force without it; undefined where that can't be told. */
      readonly times: number | undefined
    }
  // limits on height
  | {
      readonly kind: 'over-limit'
      readonly at: Millimetres
      /** Whose ground it is seen from. */
      readonly from: Household | 'higher' | 'lower'
      readonly height: Millimetres
      readonly limit: Millimetres
      readonly saidBy: string
    }

type Stretched = { readonly from: Millimetres; readonly to: Millimetres }
type Clash = Stretched & {
  readonly other: number
  readonly otherFrom: Millimetres
  readonly otherTo: Millimetres
}

/** Collects findings while the take-off goes on. */
export type Found = (path: string, facts: FindingFacts) => void
