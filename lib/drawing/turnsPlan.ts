import type { Notebook } from '../core/agreement/notebook.ts'
import { inMillimetres, lengthOf, type Millimetres } from '../core/amounts/length.ts'
import type { PlacedLine } from '../core/boundary/placedLine.ts'
import { planPath } from '../core/takeoff/planPath.ts'
import type { Point, Shape } from './drawing.ts'
import type { DrawingWords } from './drawingWords.ts'
import type { Box } from './drawnPart.ts'
import type { Frame } from './frame.ts'
import { type Part, smallText } from './part.ts'
import { boundaryStroke, fenceStroke, groundStrokes } from './signs.ts'
import { textWidth } from './textRoom.ts'

const highest = 170
const besideLine = 4

/** Where the line turns, it stands once more as it runs over the ground, both ways to scale; undefined where it is straight. */
export function turnsPlan(
  notebook: Notebook,
  placed: PlacedLine,
  frame: Frame,
  words: DrawingWords,
  top: number,
): Part | undefined {
  const turns = notebook.line.stations.flatMap(({ at, angle }) => {
    const degrees = Number(angle?.degrees || '0')
    const place = at === '' ? undefined : inMillimetres(lengthOf(at))
    // A turn before the line's start or past its end changes nothing that is drawn.
    return place === undefined || degrees === 0 || degrees >= 180 || place <= frame.from || place >= frame.to
      ? []
      : [{ at: lengthOf(at), place, degrees: angle?.degrees ?? '', typed: at }]
  })
  if (turns.length === 0) return undefined
  const path = planPath(notebook.line.stations)
  const ordered = [...turns].sort((left, right) => left.place - right.place)
  const stops = [placed.start, ...ordered.map(({ at }) => at), placed.end]
  const ground = stops.map((at) => path.pointAt(at))
  const [left, right] = [Math.min(...ground.map(({ x }) => x)), Math.max(...ground.map(({ x }) => x))]
  const [low, high] = [Math.min(...ground.map(({ y }) => y)), Math.max(...ground.map(({ y }) => y))]
  const room = { width: frame.right - frame.left - 60, height: highest - 40 }
  const scale = Math.min(room.width / Math.max(right - left, 1e-9), room.height / Math.max(high - low, 1e-9))
  if (!(scale > 0) || !Number.isFinite(scale)) return undefined
  const height = (high - low) * scale + 40
  // Household a's land lies to the left of the way along the line: upward on the drawing.
  const toPoint = ({ x, y }: { x: number; y: number }): Point => ({
    x: frame.left + 30 + (x - left) * scale,
    y: top + 20 + (high - y) * scale,
  })
  const at = (place: Millimetres) => toPoint(path.pointAt(place))
  const legs = stops.slice(1).map((to, index) => [at(stops[index] ?? to), at(to)] as const)
  const fences = placed.sections.map(({ from, to }) => {
    const [first, last] = [inMillimetres(from), inMillimetres(to)]
    const between = ordered.filter(({ place }) => place > first && place < last).map((turn) => turn.at)
    return [from, ...between, to].map(at)
  })
  const labels = spreadLabels(
    ordered.map((turn) => ({ text: words.turn(turn.degrees, turn.typed), at: at(turn.at) })),
    { x: 0, y: top, width: frame.width, height },
    legs.flatMap(([from, to]) => pointsAlong(from, to)),
  )
  return {
    shapes: [
      ...legs.flatMap(([from, to]) => [beside(from, to, 'a'), beside(from, to, 'b')]),
      { kind: 'polyline', points: stops.map(at), stroke: { ...boundaryStroke, width: 0.8 } },
      ...fences.map(
        (points): Shape => ({ kind: 'polyline', points, stroke: { ...fenceStroke, width: 1.4 } }),
      ),
      ...ordered.map((turn): Shape => ({ kind: 'circle', centre: at(turn.at), radius: 2.4, fill: 'ink' })),
      ...labels.shapes,
    ],
    bottom: top + height,
    leftOut: labels.leftOut,
  }
}

/** The two lands, told apart as the grounds in the side view are: a whole line for a, a broken one for b. */
function beside(from: Point, to: Point, household: 'a' | 'b'): Shape {
  const length = Math.hypot(to.x - from.x, to.y - from.y) || 1
  const by = (household === 'a' ? besideLine : -besideLine) / length
  const shift = ({ x, y }: Point): Point => ({ x: x + (to.y - from.y) * by, y: y - (to.x - from.x) * by })
  return { kind: 'polyline', points: [shift(from), shift(to)], stroke: groundStrokes[household] }
}

/** Where a leg runs, close enough to one another to see whether a label lies on it. */
function pointsAlong(from: Point, to: Point): readonly Point[] {
  const steps = Math.min(200, Math.ceil(Math.hypot(to.x - from.x, to.y - from.y) / 4))
  return Array.from({ length: steps + 1 }, (_, step) => ({
    x: from.x + ((to.x - from.x) * step) / Math.max(1, steps),
    y: from.y + ((to.y - from.y) * step) / Math.max(1, steps),
  }))
}

/** The point or what is drawn beside it. */
function covers({ x, y, width, height }: Box, point: Point): boolean {
  const around = besideLine + 1.5
  return (
    point.x > x - around &&
    point.x < x + width + around &&
    point.y > y - around &&
    point.y < y + height + around
  )
}

/** Each label at the first of eight places around its point where it lies inside, on no other label, and, if it can, on no leg. */
function spreadLabels(
  wanted: readonly { readonly text: string; readonly at: Point }[],
  inside: Box,
  drawn: readonly Point[],
) {
  const taken: Box[] = []
  const shapes: Shape[] = []
  for (const { text, at } of wanted) {
    const width = textWidth(text, smallText)
    const places = [
      [-width / 2, -11],
      [-width / 2, 18],
      [11, 3],
      [-11 - width, 3],
      [11, -10],
      [-11 - width, -10],
      [11, 17],
      [-11 - width, 17],
    ] as const
    const free = places
      .map(([x, y]): Box => ({ x: at.x + x, y: at.y + y - 8, width, height: 11 }))
      .filter((one) => lies(one, inside) && taken.every((other) => apart(one, other)))
    const box = free.find((one) => !drawn.some((point) => covers(one, point))) ?? free[0]
    if (box === undefined) continue
    taken.push(box)
    shapes.push({
      kind: 'text',
      text,
      at: { x: box.x, y: box.y + 8 },
      anchor: 'start',
      size: smallText,
      ink: 'ink',
      room: width,
    })
  }
  return { shapes, leftOut: wanted.length - shapes.length }
}

function lies(one: Box, inside: Box): boolean {
  return (
    one.x >= inside.x &&
    one.y >= inside.y &&
    one.x + one.width <= inside.x + inside.width &&
    one.y + one.height <= inside.y + inside.height
  )
}

function apart(one: Box, other: Box): boolean {
  return (
    one.x + one.width <= other.x ||
    other.x + other.width <= one.x ||
    one.y + one.height <= other.y ||
    other.y + other.height <= one.y
  )
}
