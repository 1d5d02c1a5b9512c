import type { StatusLook } from '../core/agreement/itemStatus.ts'
import type { Millimetres } from '../core/amounts/length.ts'
import type { Household } from '../core/people/household.ts'
import type { PostKind } from '../core/takeoff/runEdges.ts'
import type { DrawnPost } from './builtFence.ts'

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
  readonly standing: Readonly<Record<StatusLook, string>>
  readonly postKind: (kind: PostKind) => string
  readonly hole: string
  readonly braceBay: string
  /** The stated error of the line, as typed. */
  readonly statedError: (typed: string) => string
  readonly limitKey: (index: number) => string
  /** One line of the key: the limit, where it holds, and who said so. */
  readonly limitLine: (index: number) => string
  readonly heightLimit: string
  /** The height of a basic fence, from what was typed. */
  readonly basicKey: (typed: string) => string
  readonly basicHeight: string
  /** Alike bays beside one another: "5 × 7 ft 10 in". */
  readonly alike: (count: number, text: string) => string
  readonly clear: (opening: Millimetres) => string
  readonly offLine: (setback: Millimetres) => string
  readonly acrossDrawnWider: (times: number) => string
  readonly depthRule: string
  readonly postsTooClose: (count: number) => string
  readonly turns: string
  readonly turn: (degrees: string, at: string) => string
  readonly sectionKey: (index: number) => string
  /** The head of one sheet of a larger drawing. */
  readonly sheet: (title: string, number: number, of: number) => string
  readonly sheetReach: (from: Millimetres, to: Millimetres) => string
  readonly acrossTitle: string
  /** What the drawing of one post across the line shows, a line each. */
  readonly acrossLines: (post: DrawnPost, number: number | undefined) => readonly string[]
  /** Names for whoever hears the drawing. */
  readonly sectionName: (index: number) => string
  readonly gateName: (index: number) => string
  readonly stationName: (index: number) => string
  readonly postName: (
    post: DrawnPost,
    place: { readonly section: number; readonly number: number } | undefined,
  ) => string
}
