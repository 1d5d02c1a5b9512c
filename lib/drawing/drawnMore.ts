import type { Notebook, Station } from '../core/agreement/notebook.ts'
import { inMillimetres, lengthOf } from '../core/amounts/length.ts'
import type { HeightLimit } from '../core/takeoff/buildUp.ts'
import { statedError } from '../core/takeoff/setbacks.ts'
import type { BuiltFence } from './builtFence.ts'
import type { DrawnStandings } from './statusRails.ts'

/** What is drawn besides the line, its sections and gates. */
export type DrawnMore = {
  readonly fence?: BuiltFence
  /** Millimetres to either side; 0: none is stated. */
  readonly error: number
  readonly limits: readonly DrawnLimit[]
  readonly stations: readonly Station[]
  /** A larger drawing of one item: with holes from above, bay by bay, with each hole's depth. */
  readonly detail: boolean
  /** In a larger drawing of a section: posts have their numbers in it. */
  readonly section?: number
  /** In a larger drawing of a gate: the sections beside it are cut anywhere, so their ends are no ends. */
  readonly cutSections?: boolean
  /** How sections and gates stand between the households, where that is to be seen. */
  readonly standings?: DrawnStandings
}

export type DrawnLimit = {
  readonly index: number
  readonly from: number | undefined
  readonly to: number | undefined
  readonly height: number
  readonly measuredFrom: HeightLimit['measuredFrom']
}

export function drawnMore(notebook: Notebook, fence: BuiltFence | undefined, detail: boolean): DrawnMore {
  const place = (typed: string) => (typed === '' ? undefined : inMillimetres(lengthOf(typed)))
  return {
    ...(fence ? { fence } : {}),
    error: inMillimetres(statedError(notebook)),
    limits: notebook.line.limits.flatMap(({ from, to, limit, measuredFrom }, index) => {
      const height = place(limit)
      return height === undefined ? [] : [{ index, from: place(from), to: place(to), height, measuredFrom }]
    }),
    stations: notebook.line.stations,
    detail,
  }
}

/** Half a hole, or half a post where there is none: how far a post reaches to either side. */
export function reachOf({ hole, width }: { readonly hole: number; readonly width: number }): number {
  return Math.max(hole, width) / 2
}
