import type { Millimetres } from '../core/amounts/length.ts'
import type { Household } from '../core/people/household.ts'

/** Every text on a drawing; `lib/words/summary/drawingWords.ts` has them, since drawing may not enter that room. */
export type DrawingWords = {
  readonly length: (length: Millimetres) => string
  /** A length as typed, joined so that it does not break. */
  readonly typed: (text: string) => string
  readonly landOf: (household: Household) => string
  readonly plan: string
  readonly elevation: string
  readonly boundaryLine: string
  readonly setbacksDrawnWider: (times: number) => string
  readonly heightsDrawnHigher: (times: number) => string
  readonly groundOf: (household: Household) => string
  readonly unnamed: string
  readonly nothing: string
}
