import type { Section } from '../core/agreement/notebook.ts'
import { inMillimetres, type Millimetres, parseLength } from '../core/amounts/length.ts'
import type { PlacedGate, PlacedLine, PlacedSection } from '../core/boundary/placedLine.ts'
import { paysDifference } from '../core/shares/basicFence.ts'
import type { Point, Shape, Stroke } from './drawing.ts'
import { fenceRuns } from './fenceRuns.ts'
import type { Ground } from './ground.ts'

/** The top of a section's basic fence along one of its stretches, in millimetres over the datum. */
export type BasicHeight = {
  readonly section: number
  /** As typed. */
  readonly height: string
  readonly points: readonly { readonly at: number; readonly height: number }[]
}

export const basicStroke: Stroke = { ink: 'ink', width: 1.1, dash: [3.5, 3.5] }

/**
 * How high the basic fence would be, where the section's share pays the difference to it: over the ground that the
 * section's own height is measured from, on each stretch between gates. Nothing where no height of it is said.
 */
export function basicHeights(
  sections: readonly PlacedSection[],
  gates: readonly PlacedGate[],
  ground: Ground,
  bends: (from: number, to: number) => readonly number[],
): readonly BasicHeight[] {
  return sections.flatMap((placed): BasicHeight[] => {
    const { basicFence, height } = placed.section
    const high = heldHeight(placed.section)
    if (basicFence === undefined || high === undefined) return []
    return fenceRuns(placed, gates).map(({ from, to }) => ({
      section: placed.index,
      height: basicFence.height,
      points: bends(from, to).map((at) => ({
        at,
        height: ground.measured(height.measuredFrom, at) + inMillimetres(high),
      })),
    }))
  })
}

/** The height of the basic fence that a section's share is held against; `undefined` where there is none to draw. */
function heldHeight({ basicFence, share }: Section): Millimetres | undefined {
  return basicFence && paysDifference(share) ? parseLength(basicFence.height) : undefined
}

export function hasBasicHeight({ sections }: PlacedLine): boolean {
  return sections.some(({ section }) => heldHeight(section) !== undefined)
}

export function basicMarks(
  heights: readonly BasicHeight[],
  point: (at: number, height: number) => Point,
): readonly Shape[] {
  return heights.map(({ points }) => ({
    kind: 'polyline',
    points: points.map(({ at, height }) => point(at, height)),
    stroke: basicStroke,
  }))
}

/** Where each section's basic height has its label: early in its longest stretch, beside the section's own. */
export function basicLabels(
  heights: readonly BasicHeight[],
): readonly { readonly at: number; readonly height: number; readonly typed: string }[] {
  const wide = ({ points }: BasicHeight) => (points.at(-1)?.at ?? 0) - (points[0]?.at ?? 0)
  const longest = new Map<number, BasicHeight>()
  for (const one of heights) {
    const before = longest.get(one.section)
    if (before === undefined || wide(one) > wide(before)) longest.set(one.section, one)
  }
  return [...longest.values()].flatMap((one) => {
    const [first] = one.points
    return first ? [{ at: first.at + wide(one) / 6, height: first.height, typed: one.height }] : []
  })
}
