import type { PlacedLine } from '../core/boundary/placedLine.ts'
import type { Household } from '../core/people/household.ts'
import type { Point, Shape } from './drawing.ts'
import type { DrawingWords } from './drawingWords.ts'
import { type DrawnMore, reachOf } from './drawnMore.ts'
import { fenceRuns, inFloats } from './fenceRuns.ts'
import type { Frame } from './frame.ts'
import { gateShapes } from './gateShapes.ts'
import { exaggerate } from './niceScale.ts'
import type { Part } from './part.ts'
import { errorBand, holesFromAbove } from './planBand.ts'
import { planDimensions } from './planDimensions.ts'
import { gateLeaders, stationLabels, topLabels } from './planLabels.ts'
import { plannedPosts } from './plannedPosts.ts'
import { bendsWithin, type Profile, valueAt } from './profile.ts'
import { boundaryStroke, fenceStroke } from './signs.ts'
import { fitted, textWidth } from './textRoom.ts'

const patternHeight = 9
/** Room for a swing arc is at most this; wider gates are drawn without theirs. */
const deepestLand = 120
const deepestInDetail = 260
/** Between a swing and the far edge of its land: the pattern, the land's name, and the setback. */
const besideSwing = 42

export type Plan = Part & {
  readonly setbacksDrawnWider: number
  /** The brackets over the sections, where the land begins and where it ends, and the bottom of the stations' labels. */
  readonly land: {
    readonly bracket: number
    readonly top: number
    readonly bottom: number
    readonly labels: number
  }
  /** Line posts that stand too close to be drawn. */
  readonly tooClose: number
}

/** The line from above: household a's land at the top, b's at the bottom, the fence beside the line by its setbacks. */
export function planShapes(
  placed: PlacedLine,
  setbacks: Profile,
  frame: Frame,
  words: DrawingWords,
  top: number,
  more: DrawnMore,
): Plan {
  const reach = more.detail ? farthest(more, setbacks) : 0
  const largest = Math.max(reach, more.error, ...setbacks.map(({ value }) => Math.abs(value)))
  const setbackScale =
    reach > 0
      ? exaggerate(largest, frame.unitsPerMillimetre, 12, 40)
      : exaggerate(largest, frame.unitsPerMillimetre, 7, 16)
  const landDepth = Math.max(depthOfLand(placed, frame, more), reach * setbackScale.unitsPerMillimetre + 28)
  const labels = topLabels(placed, frame, words, top, more.standings)
  const line = labels.bottom + landDepth
  const bottomOfLand = line + landDepth
  const onFence = (place: number): Point => ({
    x: frame.toX(place),
    y: line - valueAt(setbacks, place) * setbackScale.unitsPerMillimetre,
  })
  const stations = stationLabels(placed, frame, line, bottomOfLand, words)
  const gates = placed.gates.map((gate) =>
    gateShapes(gate, frame, onFence, landDepth, more.fence?.leaves.get(gate.index)?.leaves ?? 1),
  )
  const dimensions = planDimensions(placed, frame, words, more, stations.bottom)
  const posts = plannedPosts(placed, frame, onFence, more)
  return {
    shapes: [
      ...landShapes('a', frame, labels.bottom, landDepth),
      ...landShapes('b', frame, line, landDepth),
      ...errorBand(frame, line, more.error * setbackScale.unitsPerMillimetre),
      ...labels.shapes,
      ...gateLeaders(labels.leaders, onFence),
      ...stations.shapes,
      ...landName('a', frame, labels.bottom, words),
      ...landName('b', frame, bottomOfLand, words),
      ...(more.detail && more.fence
        ? holesFromAbove(more.fence, frame, setbackScale.unitsPerMillimetre, onFence)
        : []),
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
      ...posts.shapes,
      ...dimensions.shapes,
    ],
    bottom: dimensions.bottom,
    leftOut:
      labels.leftOut + stations.leftOut + dimensions.leftOut + gates.filter(({ whole }) => !whole).length,
    setbacksDrawnWider: setbackScale.times,
    land: { bracket: labels.bracket, top: labels.bottom, bottom: bottomOfLand, labels: stations.bottom },
    tooClose: posts.tooClose,
  }
}

/** How far the holes reach from the line, in millimetres. */
function farthest({ fence }: DrawnMore, setbacks: Profile): number {
  return Math.max(
    0,
    ...(fence?.posts ?? []).map((post) => Math.abs(valueAt(setbacks, post.at)) + reachOf(post)),
  )
}

function depthOfLand(placed: PlacedLine, frame: Frame, { fence, detail }: DrawnMore): number {
  const swings = placed.gates
    .filter(({ toward }) => toward.length > 0)
    .map((gate) => {
      const { from, to } = inFloats(gate)
      return ((to - from) * frame.unitsPerMillimetre) / (fence?.leaves.get(gate.index)?.leaves ?? 1)
    })
    .filter((radius) => radius + besideSwing <= (detail ? deepestInDetail : deepestLand))
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
