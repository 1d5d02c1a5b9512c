import { type ScaleLinear, scaleLinear } from 'd3-scale'
import { stack, stackOffsetDiverging } from 'd3-shape'
import type { BarsFigure, FigureBar } from '../../core/figures/figure.ts'
import { type ForBoth, type Household, households } from '../../core/people/household.ts'
import type { Shape } from '../drawing.ts'
import { amountTicks, countThatFits, labelsBelow } from './axisLabels.ts'
import { type BarPlace, columnsFor, placesBelow, placesBeside } from './barPlaces.ts'
import type { DrawnFigure, FigureLook } from './figureDrawing.ts'
import { frameOf, keyRows } from './keyRows.ts'
import { upright } from './upright.ts'

/** Narrower drawings have the words above their bars, wider ones beside them. */
const besideFrom = 420
/** Left free at the edges for strokes. */
const edge = 2

/** Bars on one axis of amounts. Zero is a line; what is below it lies on its other side. */
export function barsDrawing(figure: BarsFigure, { width, text: size, words }: FigureLook): DrawnFigure {
  const bars = figure.groups.flatMap((group) => group.bars)
  const parts = placedParts(bars)
  const key = keyRows(
    households
      .filter((household) => bars.some((bar) => bar.parts[household] !== 0))
      .map((household) => ({ sign: household, text: figure.names[household] })),
    width,
    size,
  )
  const beside = width >= besideFrom
  const columns = columnsFor(figure.groups, width, size)
  const along = scaleLinear()
    .domain(rangeOf(parts))
    .range(beside ? [columns.title + size, width - columns.text - size] : [edge, width - edge])
  const ticksOf = (scale: ScaleLinear<number, number>, count: number) =>
    amountTicks(scale, count, (places) => words.amounts(places, figure.unit))
  const room = { from: 0, to: width, size }
  const count = countThatFits((tried) => ticksOf(along.copy().nice(tried), tried), room)
  along.nice(count)
  const top = key.bottom + size * 0.4
  const places = beside
    ? placesBeside(figure.groups, columns, { width, size, top })
    : placesBelow(figure.groups, { width, size, top })
  const ticks = ticksOf(along, count)
  // Beside the bars nothing else stands in the way of a rule; below words it reaches over its own bar only.
  const stretches = beside
    ? [{ from: top, to: places.bottom }]
    : places.bars.map((bar) => ({ from: bar.top - 2, to: bar.top + bar.height + 2 }))
  return {
    width,
    height: places.bottom + size * 1.6,
    shapes: [
      ...key.shapes,
      ...stretches.flatMap(({ from, to }) =>
        ticks.map(({ at }) => upright(at, from, to, { ink: 'rule', width: 0.8 })),
      ),
      ...places.bars.flatMap((place, index) => barShapes(place, parts[index], along)),
      ...stretches.map(({ from, to }) => upright(along(0), from, to, { ink: 'ink', width: 1.6 })),
      ...places.texts,
      ...labelsBelow(ticks, places.bottom + size * 1.15, room),
    ],
  }
}

type PlacedParts = ForBoth<readonly [from: number, to: number]>

/** Where each household's part of each bar begins and ends: b's on a's, those below zero on the other side. */
function placedParts(bars: readonly FigureBar[]): PlacedParts[] {
  const [a = [], b = []] = stack<FigureBar, Household>()
    .keys(households)
    .value(({ parts }, household) => parts[household])
    .offset(stackOffsetDiverging)(bars)
  return bars.map((_, index) => ({
    a: [a[index]?.[0] ?? 0, a[index]?.[1] ?? 0],
    b: [b[index]?.[0] ?? 0, b[index]?.[1] ?? 0],
  }))
}

/** From zero or below to what the longest bar reaches; one unit where there is nothing at all. */
function rangeOf(parts: readonly PlacedParts[]): [number, number] {
  const ends = parts.flatMap(({ a, b }) => [...a, ...b])
  const [least, most] = [Math.min(0, ...ends), Math.max(0, ...ends)]
  return least === most ? [0, 1] : [least, most]
}

function barShapes(
  { top, height }: BarPlace,
  parts: PlacedParts | undefined,
  along: ScaleLinear<number, number>,
): Shape[] {
  if (parts === undefined) return []
  const boxes = households.flatMap((household) => {
    const [from, to] = parts[household]
    const box = { x: along(from), y: top, width: along(to) - along(from), height }
    return box.width > 0 ? [{ household, box }] : []
  })
  const [first, second] = boxes
  const meetAt = first && second && first.box.x + first.box.width
  return [
    ...boxes.flatMap(({ household, box }): Shape[] => [
      { kind: 'patterned', household, boxes: [box] },
      frameOf(box),
    ]),
    // The post at which the two households meet, as on every share bar.
    ...(meetAt !== undefined && second?.box.x === meetAt
      ? [upright(meetAt, top - 2, top + height + 2, { ink: 'ink', width: 2 })]
      : []),
  ]
}
