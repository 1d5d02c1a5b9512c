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
  readonly fence: string
  /** A gate's short name on the drawing, from its place in the list. */
  readonly gateKey: (index: number) => string
  /** One line of the key, under the drawing. */
  readonly sectionLine: (index: number) => string
  readonly gateLine: (index: number) => string
  readonly leftOut: (count: number) => string
  readonly post: string
  readonly nothing: string
}
