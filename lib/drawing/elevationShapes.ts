import { inMillimetres, lengthOf } from '../core/amounts/length.ts'
import type { PlacedGate, PlacedLine, PlacedSection } from '../core/boundary/placedLine.ts'
import { type BasicHeight, basicHeights, basicLabels, basicMarks } from './basicHeights.ts'
import { bayPanels, footLabels, heightsOf, leafShapes, standingPosts } from './builtElevation.ts'
import type { BuiltFence } from './builtFence.ts'
import type { Point, Shape, Stroke } from './drawing.ts'
import type { DrawingWords } from './drawingWords.ts'
import type { DrawnMore } from './drawnMore.ts'
import { fenceRuns, inFloats, type Run } from './fenceRuns.ts'
import { type Frame, heldInside } from './frame.ts'
import { type Grades, type Ground, groundOf } from './ground.ts'
import { labelRows } from './labelRows.ts'
import { type LimitLine, limitLines, limitMarks } from './limitLines.ts'
import { exaggerate } from './niceScale.ts'
import { type Part, rowHeight, smallText } from './part.ts'
import { bendsWithin } from './profile.ts'
import { groundStrokes } from './signs.ts'
import { textWidth } from './textRoom.ts'

export type Elevation = Part & {
  readonly heightsDrawnHigher: number
  /** Where the fence begins at the top and where the ground ends. */
  readonly top: number
  readonly toY: (height: number) => number
}

/** The fence from the side: both grounds, and each section's height from the ground it is measured from. */
export function elevationShapes(
  placed: PlacedLine,
  grades: Grades,
  frame: Frame,
  words: DrawingWords,
  top: number,
  more: DrawnMore,
): Elevation {
  const { fence } = more
  const ground = groundOf(grades)
  const tall = placed.sections.flatMap((section) => {
    const height = section.section.height.agreed
    return height === '' ? [] : [{ section, height: inMillimetres(lengthOf(height)), ground }]
  })
  const heights =
    placed.sections.length + placed.gates.length === 0 && grades.a.length + grades.b.length === 0 ? [] : [0]
  for (const profile of [grades.a, grades.b, grades.fence]) heights.push(...profile.map(({ value }) => value))
  for (const { section, height } of tall) {
    const { from, to } = inFloats(section)
    for (const at of bends(grades, from, to))
      heights.push(ground.measured(section.section.height.measuredFrom, at) + height)
  }
  const limits = limitLines(more.limits, placed, frame, ground, (from, to) => bends(grades, from, to))
  for (const { points } of limits) heights.push(...points.map(({ height }) => height))
  const basics = basicHeights(placed.sections, placed.gates, ground, (from, to) => bends(grades, from, to))
  for (const { points } of basics) heights.push(...points.map(({ height }) => height))
  if (fence) heights.push(...heightsOf(fence, ground))
  const [lowest, highest] = [lowestOf(heights), highestOf(heights)]
  const scale = exaggerate(
    highest - lowest,
    frame.unitsPerMillimetre,
    55,
    more.detail ? 240 : fence ? 150 : 120,
  )
  const labels = heightLabels(tall, placed.gates, limits, basics, frame, words, fence)
  const base = top + labels.rows * rowHeight + 4
  const toY = (height: number) => base + (highest - height) * scale.unitsPerMillimetre
  const point = (at: number, height: number): Point => heldInside(frame, { x: frame.toX(at), y: toY(height) })
  const floor = toY(lowest) + 10
  const whole = bends(grades, frame.from, frame.to)
  const fences = tall.map(({ section, height }) =>
    sectionShapes(section, height, placed.gates, grades, ground, point, more),
  )
  const foot = more.detail && fence ? footLabels(fence, frame, words, floor, point, more.section) : undefined
  return {
    shapes: [
      {
        kind: 'polygon',
        points: [
          ...whole.map((at) => point(at, Math.min(ground.of('a', at), ground.of('b', at)))),
          { x: frame.right, y: floor },
          { x: frame.left, y: floor },
        ],
        fill: 'rule',
      },
      ...fences.flatMap(({ panels }) => panels),
      ...(fence ? bayPanels(fence, ground, point) : []),
      ...(fence ? leafShapes(fence, placed.gates, ground, point) : []),
      ...(fence ? standingPosts(fence, frame, point) : []),
      { kind: 'polyline', points: whole.map((at) => point(at, ground.of('a', at))), stroke: groundStrokes.a },
      { kind: 'polyline', points: whole.map((at) => point(at, ground.of('b', at))), stroke: groundStrokes.b },
      ...limitMarks(limits, point),
      ...basicMarks(basics, point),
      ...fences.flatMap(({ arrow }) => arrow),
      ...(foot?.shapes ?? []),
      ...labels.placed.flatMap(({ label, centre, x, row, width }) => {
        const y = base - 5 - row * rowHeight
        const peak = point(label.at, label.height)
        return [
          leader({ x: centre, y: y + 2 }, { x: centre, y: peak.y - 2 }),
          {
            kind: 'text' as const,
            text: label.text,
            at: { x, y },
            anchor: 'middle' as const,
            size: smallText,
            ink: 'ink' as const,
            room: width,
          },
        ]
      }),
    ],
    bottom: foot?.bottom ?? floor,
    leftOut: labels.leftOut + (foot?.leftOut ?? 0),
    heightsDrawnHigher: scale.times,
    top: base,
    toY,
  }
}

function bends(grades: Grades, from: number, to: number): readonly number[] {
  return bendsWithin([grades.a, grades.b, grades.fence], from, to)
}

type DrawPoint = (at: number, height: number) => Point

function sectionShapes(
  section: PlacedSection,
  height: number,
  gates: readonly PlacedGate[],
  grades: Grades,
  ground: Ground,
  point: DrawPoint,
  { fence }: DrawnMore,
): { panels: Shape[]; arrow: Shape[] } {
  const from = section.section.height.measuredFrom
  const outline = (run: Run) => [
    ...bends(grades, run.from, run.to).map((at) => point(at, ground.measured(from, at) + height)),
    ...[...bends(grades, run.from, run.to)].reverse().map((at) => point(at, ground.fence(at))),
  ]
  const whole = inFloats(section)
  const openings = gates
    .filter(({ index }) => fence?.leaves.get(index)?.height === undefined)
    .map(inFloats)
    .filter((gate) => gate.to > gate.from && gate.from >= whole.from && gate.to <= whole.to)
  const middle = middleOfLongestRun(section, gates, fence)
  // A section that is laid out is drawn bay by bay instead.
  const runs = fence?.sections.has(section.index) ? [] : fenceRuns(section, gates)
  return {
    panels: [
      ...runs.map(
        (run): Shape => ({
          kind: 'polygon',
          points: outline(run),
          fill: 'sheet',
          stroke: { ink: 'ink', width: 1 },
        }),
      ),
      ...openings.flatMap((gate) => gateLeaf(outline(gate))),
    ],
    arrow: heightMark(
      point(middle, ground.measured(from, middle)),
      point(middle, ground.measured(from, middle) + height),
    ),
  }
}

/** A leaf is told from the fence by its brace. */
function gateLeaf(outline: readonly Point[]): Shape[] {
  const [topLeft] = outline
  const bottomRight = outline[outline.length / 2]
  return [
    { kind: 'polygon', points: outline, fill: 'sheet', stroke: { ink: 'ink', width: 1 } },
    ...(topLeft && bottomRight
      ? [
          {
            kind: 'polyline' as const,
            points: [topLeft, bottomRight],
            stroke: { ink: 'quiet' as const, width: 0.8 },
          },
        ]
      : []),
  ]
}

/** A dimension line from the ground the height is measured from to the top. */
function heightMark(bottom: Point, top: Point): Shape[] {
  const stroke: Stroke = { ink: 'quiet', width: 0.8 }
  const tick = (at: Point): Shape => ({
    kind: 'polyline',
    points: [
      { x: at.x - 2.5, y: at.y + 1.5 },
      { x: at.x + 2.5, y: at.y - 1.5 },
    ],
    stroke,
  })
  return [{ kind: 'polyline', points: [bottom, top], stroke }, tick(bottom), tick(top)]
}

function leader(from: Point, to: Point): Shape {
  return { kind: 'polyline', points: [from, to], stroke: { ink: 'quiet', width: 0.5, dash: [1, 2.5] } }
}

/** Each section's height as agreed, each limit by its number, and the height of each basic fence. */
function heightLabels(
  tall: readonly { section: PlacedSection; height: number; ground: Ground }[],
  gates: readonly PlacedGate[],
  limits: readonly LimitLine[],
  basics: readonly BasicHeight[],
  frame: Frame,
  words: DrawingWords,
  fence: BuiltFence | undefined,
) {
  const wanted = tall.map(({ section, height, ground }) => {
    const at = middleOfLongestRun(section, gates, fence)
    const text = words.typed(section.section.height.agreed)
    return { at, height: ground.measured(section.section.height.measuredFrom, at) + height, text }
  })
  // A limit over each household's own ground has two lines, and one label.
  const first = limits.filter(
    (line, place) => limits.findIndex(({ index }) => index === line.index) === place,
  )
  const named = first.flatMap(({ index, points }) => {
    const [begin, end] = [points[0], points.at(-1)]
    if (begin === undefined || end === undefined) return []
    return [{ at: begin.at + (end.at - begin.at) / 6, height: begin.height, text: words.limitKey(index) }]
  })
  const plainer = basicLabels(basics).map(({ at, height, typed }) => ({
    at,
    height,
    text: words.basicKey(typed),
  }))
  return labelRows(
    [...wanted, ...named, ...plainer].map((label) => ({
      label,
      centre: frame.toX(label.at),
      width: textWidth(label.text, smallText),
    })),
    { from: 0, to: frame.width },
    3,
  )
}

function lowestOf(heights: readonly number[]): number {
  return heights.reduce((least, height) => Math.min(least, height), 0)
}

function highestOf(heights: readonly number[]): number {
  return heights.reduce((most, height) => Math.max(most, height), 0)
}

/** The height is shown on the fence, beside its gates; where it is laid out, between two posts. */
function middleOfLongestRun(
  section: PlacedSection,
  gates: readonly PlacedGate[],
  fence: BuiltFence | undefined,
): number {
  const whole = inFloats(section)
  const longest = fenceRuns(section, gates).reduce<Run>(
    (best, run) => (run.to - run.from > best.to - best.from ? run : best),
    { from: (whole.from + whole.to) / 2, to: (whole.from + whole.to) / 2 },
  )
  const middle = (longest.from + longest.to) / 2
  const bay = fence?.bays.find(
    ({ bay: { section: of }, from, to }) => of === section.index && from <= middle && middle < to,
  )
  return bay ? (bay.from + bay.to) / 2 : middle
}
