import type { ForBoth } from '../people/household.ts'

/**
 * A figure to look at: `lib/words` writes it, `lib/drawing` draws it, the same for the screen and for paper. Numbers only
 * set places and lengths; what is read are the ready-made texts.
 */
export type Figure = BarsFigure | StepsFigure

/** What the numbers count: minor units of a currency, or millionths of an hour. */
export type FigureUnit = { readonly kind: 'money'; readonly currency: string } | { readonly kind: 'hours' }

/** Bars on one axis, each parted between the households. */
export type BarsFigure = {
  readonly kind: 'bars'
  readonly unit: FigureUnit
  readonly names: ForBoth<string>
  readonly groups: readonly BarGroup[]
}

export type BarGroup = { readonly title: string; readonly bars: readonly FigureBar[] }

/** `thin` bars stand below the one that they are held against. */
export type FigureBar = { readonly parts: ForBoth<number>; readonly text: string; readonly thin?: boolean }

/** Sums over time as steps, one household's on the other's, against a line that they are held against. */
export type StepsFigure = {
  readonly kind: 'steps'
  readonly unit: FigureUnit
  /** Days in ISO 8601, in order, each with the sums from then on; none twice. */
  readonly steps: readonly { readonly on: string; readonly parts: ForBoth<number> }[]
  readonly against: number
  /** Days that are marked under the axis: `met` ones are filled. */
  readonly dues: readonly { readonly on: string; readonly met: boolean }[]
  /** The last day to show, where the steps end before it. */
  readonly until?: string
  readonly texts: ForBoth<string> & {
    readonly both: string
    readonly against: string
    readonly due: string
    readonly met: string
  }
}
