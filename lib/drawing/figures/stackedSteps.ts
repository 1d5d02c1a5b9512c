import type { ScaleLinear } from 'd3-scale'
import { curveStepAfter, line, stack, stackOffsetDiverging } from 'd3-shape'
import { type ForBoth, type Household, households } from '../../core/people/household.ts'
import type { Box, Point } from '../drawing.ts'

type Step = { readonly on: Date; readonly parts: ForBoth<number> }

/** Days that lie closer than this many units are drawn as one. */
const closest = 1.5

/**
 * What lies under the steps of each household, as boxes from one day to the next: b's on a's, and what is below zero on
 * the other side of it. The last one reaches to `end`.
 */
export function stackedSteps(
  steps: readonly Step[],
  along: (on: Date) => number,
  up: ScaleLinear<number, number>,
  end: number,
): ForBoth<readonly Box[]> {
  const drawn = apart(steps.map((step) => ({ x: along(step.on), parts: step.parts })))
  const [a = [], b = []] = stack<(typeof drawn)[number], Household>()
    .keys(households)
    .value(({ parts }, household) => parts[household])
    .offset(stackOffsetDiverging)(drawn)
  const boxes = (series: readonly (readonly [number, number])[] | typeof a) =>
    drawn.flatMap(({ x }, index): Box[] => {
      const [from = 0, to = 0] = series[index] ?? []
      const width = (drawn[index + 1]?.x ?? end) - x
      const height = up(from) - up(to)
      return width > 0 && height > 0 ? [{ x, y: up(to), width, height }] : []
    })
  return { a: boxes(a), b: boxes(b) }
}

function apart<Placed extends { readonly x: number }>(steps: readonly Placed[]): Placed[] {
  const kept: Placed[] = []
  for (const step of steps) {
    const before = kept.at(-1)
    if (before !== undefined && step.x - before.x < closest) kept[kept.length - 1] = { ...step, x: before.x }
    else kept.push(step)
  }
  return kept
}

/** The line over steps: from `start` along, up or down at each day, and on to `end`. */
export function stepLine(days: readonly Point[], start: Point, end: number): Point[] {
  const last = days.at(-1) ?? start
  const points: Point[] = []
  const put = (x: number, y: number) => {
    points.push({ x, y })
  }
  const drawn = line<Point>()
    .x(({ x }) => x)
    .y(({ y }) => y)
    .curve(() => curveStepAfter({ moveTo: put, lineTo: put } as CanvasRenderingContext2D))
  drawn([start, ...days, { x: end, y: last.y }])
  return points
}
