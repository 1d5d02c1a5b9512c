import { inMillimetres, lengthOf } from '../core/amounts/length.ts'
import type { PlacedGate, PlacedLine, PlacedSection } from '../core/boundary/placedLine.ts'
import type { Point, Shape, Stroke } from './drawing.ts'
import type { DrawingWords } from './drawingWords.ts'
import { fenceRuns, inFloats, type Run } from './fenceRuns.ts'
import type { Frame } from './frame.ts'
import { type Grades, type Ground, groundOf } from './ground.ts'
import { labelRows } from './labelRows.ts'
import { exaggerate } from './niceScale.ts'
import { type Part, rowHeight, smallText } from './part.ts'
import { bendsWithin } from './profile.ts'
import { groundStrokes } from './signs.ts'
import { textWidth } from './textRoom.ts'

export type Elevation = Part & { readonly heightsDrawnHigher: number }

/** The fence from the side: both grounds, and each section's height from the ground it is measured from. */
export function elevationShapes(
  placed: PlacedLine,
  grades: Grades,
  frame: Frame,
  words: DrawingWords,
  top: number,
): Elevation {
  const ground = groundOf(grades)
  const tall = placed.sections.flatMap((section) => {
    const height = section.section.height.agreed
    return height === '' ? [] : [{ section, height: inMillimetres(lengthOf(height)) }]
  })
  const heights =
    placed.sections.length + placed.gates.length === 0 && grades.a.length + grades.b.length === 0 ? [] : [0]
  for (const profile of [grades.a, grades.b, grades.fence]) heights.push(...profile.map(({ value }) => value))
  for (const { section, height } of tall) {
    const { from, to } = inFloats(section)
    for (const at of bends(grades, from, to))
      heights.push(ground.measured(section.section.height.measuredFrom, at) + height)
  }
  const [lowest, highest] = [Math.min(0, ...heights), Math.max(0, ...heights)]
  const scale = exaggerate(highest - lowest, frame.unitsPerMillimetre, 55, 120)
  const labels = heightLabels(tall, placed.gates, frame, words)
  const base = top + labels.rows * rowHeight + 4
  const toY = (height: number) => base + (highest - height) * scale.unitsPerMillimetre
  const point = (at: number, height: number): Point => ({ x: frame.toX(at), y: toY(height) })
  const floor = toY(lowest) + 10
  const whole = bends(grades, frame.from, frame.to)
  const fences = tall.map(({ section, height }) =>
    sectionShapes(section, height, placed.gates, grades, ground, point),
  )
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
      { kind: 'polyline', points: whole.map((at) => point(at, ground.of('a', at))), stroke: groundStrokes.a },
      { kind: 'polyline', points: whole.map((at) => point(at, ground.of('b', at))), stroke: groundStrokes.b },
      ...fences.flatMap(({ arrow }) => arrow),
      ...labels.placed.flatMap(({ label, centre, x, row, width }) => {
        const y = base - 5 - row * rowHeight
        const { section, height, middle } = label
        const peak = point(middle, ground.measured(section.section.height.measuredFrom, middle) + height)
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
    bottom: floor,
    leftOut: labels.leftOut,
    heightsDrawnHigher: scale.times,
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
): { panels: Shape[]; arrow: Shape[] } {
  const from = section.section.height.measuredFrom
  const outline = (run: Run) => [
    ...bends(grades, run.from, run.to).map((at) => point(at, ground.measured(from, at) + height)),
    ...[...bends(grades, run.from, run.to)].reverse().map((at) => point(at, ground.fence(at))),
  ]
  const whole = inFloats(section)
  const openings = gates
    .map(inFloats)
    .filter((gate) => gate.to > gate.from && gate.from >= whole.from && gate.to <= whole.to)
  const middle = middleOfLongestRun(section, gates)
  return {
    panels: [
      ...fenceRuns(section, gates).map(
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

function heightLabels(
  tall: readonly { section: PlacedSection; height: number }[],
  gates: readonly PlacedGate[],
  frame: Frame,
  words: DrawingWords,
) {
  return labelRows(
    tall.map(({ section, height }) => {
      const middle = middleOfLongestRun(section, gates)
      const text = words.typed(section.section.height.agreed)
      return {
        label: { section, height, middle, text },
        centre: frame.toX(middle),
        width: textWidth(text, smallText),
      }
    }),
    { from: 0, to: frame.width },
    3,
  )
}

/** The height is shown on the fence, beside its gates. */
function middleOfLongestRun(section: PlacedSection, gates: readonly PlacedGate[]): number {
  const whole = inFloats(section)
  const longest = fenceRuns(section, gates).reduce<Run>(
    (best, run) => (run.to - run.from > best.to - best.from ? run : best),
    { from: (whole.from + whole.to) / 2, to: (whole.from + whole.to) / 2 },
  )
  return (longest.from + longest.to) / 2
}
