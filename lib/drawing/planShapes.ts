import type { PlacedLine } from '../core/boundary/placedLine.ts'
import type { Household } from '../core/people/household.ts'
import type { Point, Shape } from './drawing.ts'
import type { DrawingWords } from './drawingWords.ts'
import { fenceRuns, inFloats, postPlaces } from './fenceRuns.ts'
import type { Frame } from './frame.ts'
import { gateShapes } from './gateShapes.ts'
import { exaggerate } from './niceScale.ts'
import type { Part } from './part.ts'
import { gateLeaders, stationLabels, topLabels } from './planLabels.ts'
import { bendsWithin, type Profile, valueAt } from './profile.ts'
import { boundaryStroke, fenceStroke, postShape } from './signs.ts'
import { fitted, textWidth } from './textRoom.ts'

const patternHeight = 9
/** Room for a swing arc is at most this; wider gates are drawn without theirs. */
const deepestLand = 120
/** Between a swing and the far edge of its land: the pattern, the land's name, and the setback. */
const besideSwing = 42

export type Plan = Part & { readonly setbacksDrawnWider: number }

/** The line from above: household a's land at the top, b's at the bottom, the fence beside the line by its setbacks. */
export function planShapes(
  placed: PlacedLine,
  setbacks: Profile,
  frame: Frame,
  words: DrawingWords,
  top: number,
): Plan {
  const landDepth = depthOfLand(placed, frame)
  const labels = topLabels(placed, frame, words, top)
  const line = labels.bottom + landDepth
  const bottomOfLand = line + landDepth
  const largest = Math.max(0, ...setbacks.map(({ value }) => Math.abs(value)))
  const setbackScale = exaggerate(largest, frame.unitsPerMillimetre, 7, 16)
  const onFence = (place: number): Point => ({
    x: frame.toX(place),
    y: line - valueAt(setbacks, place) * setbackScale.unitsPerMillimetre,
  })
  const stations = stationLabels(placed, frame, line, bottomOfLand, words)
  const gates = placed.gates.map((gate) => gateShapes(gate, frame, onFence, landDepth))
  return {
    shapes: [
      ...landShapes('a', frame, labels.bottom, landDepth),
      ...landShapes('b', frame, line, landDepth),
      ...labels.shapes,
      ...gateLeaders(labels.leaders, onFence),
      ...stations.shapes,
      ...landName('a', frame, labels.bottom, words),
      ...landName('b', frame, bottomOfLand, words),
      {
        kind: 'polyline',
        points: [
          { x: frame.left, y: line },
          { x: frame.right, y: line },
        ],
        stroke: boundaryStroke,
      },
      ...placed.sections.flatMap((section) =>
        fenceRuns(section, placed.gates).map(
          (run): Shape => ({
            kind: 'polyline',
            points: bendsWithin([setbacks], run.from, run.to).map(onFence),
            stroke: fenceStroke,
          }),
        ),
      ),
      ...gates.flatMap(({ shapes }) => shapes),
      ...postPlaces(placed).map((place): Shape => postShape(onFence(place))),
    ],
    bottom: stations.bottom,
    leftOut: labels.leftOut + stations.leftOut + gates.filter(({ whole }) => !whole).length,
    setbacksDrawnWider: setbackScale.times,
  }
}

function depthOfLand(placed: PlacedLine, frame: Frame): number {
  const swings = placed.gates
    .filter(({ toward }) => toward.length > 0)
    .map((gate) => {
      const { from, to } = inFloats(gate)
      return (to - from) * frame.unitsPerMillimetre
    })
    .filter((radius) => radius + besideSwing <= deepestLand)
  return Math.max(52, ...swings.map((radius) => radius + besideSwing))
}

function landShapes(household: Household, frame: Frame, top: number, depth: number): Shape[] {
  const [x, width] = [frame.left, frame.right - frame.left]
  const patternTop = household === 'a' ? top : top + depth - patternHeight
  return [
    { kind: 'polygon', points: rectangle(x, top, width, depth), fill: soft(household) },
    { kind: 'hatch', household, x, y: patternTop, width, height: patternHeight },
  ]
}

/** The land's name beside its pattern, on a ground of its own so that no fine line runs through it. */
function landName(household: Household, frame: Frame, edge: number, words: DrawingWords): Shape[] {
  const room = frame.right - frame.left - 16
  const text = fitted(words.landOf(household), 10, room)
  const at = {
    x: frame.left + 6,
    y: household === 'a' ? edge + patternHeight + 12 : edge - patternHeight - 5,
  }
  return [
    {
      kind: 'polygon',
      points: rectangle(at.x - 2, at.y - 9, Math.min(room, textWidth(text, 10)) + 4, 12),
      fill: soft(household),
    },
    { kind: 'text', text, at, anchor: 'start', size: 10, bold: true, ink: household, room },
  ]
}

function soft(household: Household): 'soft-a' | 'soft-b' {
  return household === 'a' ? 'soft-a' : 'soft-b'
}

function rectangle(x: number, y: number, width: number, height: number): Point[] {
  return [
    { x, y },
    { x: x + width, y },
    { x: x + width, y: y + height },
    { x, y: y + height },
  ]
}
