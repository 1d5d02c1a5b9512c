import { inMillimetres } from '../core/amounts/length.ts'
import type { PlacedGate, PlacedLine } from '../core/boundary/placedLine.ts'
import type { Household } from '../core/people/household.ts'
import type { Point, Shape, Stroke } from './drawing.ts'
import type { DrawingWords } from './drawingWords.ts'
import { fenceRuns, inFloats, postPlaces } from './fenceRuns.ts'
import type { Frame } from './frame.ts'
import { labelRows } from './labelRows.ts'
import { exaggerate } from './niceScale.ts'
import { bendsWithin, type Profile, valueAt } from './profile.ts'
import { fitted, textWidth } from './textRoom.ts'

/** One part of the drawing, from `top` down. */
export type Part = { readonly shapes: readonly Shape[]; readonly bottom: number; readonly leftOut: number }

export const smallText = 8.5
export const rowHeight = 12
const patternHeight = 9
/** Room for a swing arc is at most this; wider gates are drawn without theirs. */
const deepestLand = 110

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
      ...landShapes('a', frame, labels.bottom, landDepth, words),
      ...landShapes('b', frame, line, landDepth, words),
      ...labels.shapes,
      ...gateLeaders(labels.leaders, onFence),
      ...stations.shapes,
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

/** The draughtsman's boundary: a long dash and two short ones. */
export const boundaryStroke: Stroke = { ink: 'ink', width: 1, dash: [14, 3, 2.5, 3, 2.5, 3] }
export const fenceStroke: Stroke = { ink: 'ink', width: 2 }

export function postShape(centre: Point): Shape {
  return { kind: 'circle', centre, radius: 2.1, fill: 'sheet', stroke: { ink: 'ink', width: 1.2 } }
}

function depthOfLand(placed: PlacedLine, frame: Frame): number {
  const swings = placed.gates
    .filter(({ toward }) => toward.length > 0)
    .map((gate) => {
      const { from, to } = inFloats(gate)
      return (to - from) * frame.unitsPerMillimetre
    })
    .filter((radius) => radius + 34 <= deepestLand)
  return Math.max(52, ...swings.map((radius) => radius + 34))
}

function landShapes(
  household: Household,
  frame: Frame,
  top: number,
  depth: number,
  words: DrawingWords,
): Shape[] {
  const [x, width] = [frame.left, frame.right - frame.left]
  const patternTop = household === 'a' ? top : top + depth - patternHeight
  const room = width - 16
  const text = fitted(words.landOf(household), 10, room)
  return [
    {
      kind: 'polygon',
      points: [
        { x, y: top },
        { x: x + width, y: top },
        { x: x + width, y: top + depth },
        { x, y: top + depth },
      ],
      fill: household === 'a' ? 'soft-a' : 'soft-b',
    },
    { kind: 'hatch', household, x, y: patternTop, width, height: patternHeight },
    {
      kind: 'text',
      text,
      at: { x: x + 6, y: household === 'a' ? top + patternHeight + 12 : top + depth - patternHeight - 5 },
      anchor: 'start',
      size: 10,
      bold: true,
      ink: household,
      room,
    },
  ]
}

type Leader = { readonly gate: PlacedGate; readonly from: Point }

/** Brackets that span the sections, and under them the gates' labels with leaders down to the openings. */
function topLabels(placed: PlacedLine, frame: Frame, words: DrawingWords, top: number) {
  const keys = placed.sections.map((section) => {
    const { from, to } = inFloats(section)
    const [left, right] = [frame.toX(from), frame.toX(to)]
    const number = `${section.index + 1}`
    const name = section.section.name.trim()
    const full = name === '' ? number : `${number} ${name}`
    // The name only where it fits between the section's own ends: the key below has it in any case.
    const text = textWidth(full, smallText) <= right - left - 10 ? full : number
    return { left, right, text, centre: (left + right) / 2, width: textWidth(text, smallText) }
  })
  const keyRows = labelRows(
    keys.map((label) => ({ label, centre: label.centre, width: label.width })),
    { from: frame.left, to: frame.right },
    3,
  )
  const bracket = top + keyRows.rows * rowHeight + 3
  const keyShapes = keyRows.placed.map(
    ({ label, x, row, width }): Shape => ({
      kind: 'text',
      text: label.text,
      at: { x, y: bracket - 5 - row * rowHeight },
      anchor: 'middle',
      size: smallText,
      bold: true,
      ink: 'ink',
      room: width,
    }),
  )
  const gateKeys = placed.gates.map((gate) => {
    const text = words.gateKey(gate.index)
    const { from, to } = inFloats(gate)
    return { label: { gate, text }, centre: frame.toX((from + to) / 2), width: textWidth(text, smallText) }
  })
  const gateRows = labelRows(gateKeys, { from: frame.left, to: frame.right }, 4)
  const bottom = bracket + 6 + gateRows.rows * rowHeight + 3
  const gateY = (row: number) => bottom - 5 - row * rowHeight
  return {
    bottom,
    leftOut: keyRows.leftOut + gateRows.leftOut,
    leaders: gateRows.placed.map(
      ({ label, centre, row }): Leader => ({
        gate: label.gate,
        from: { x: centre, y: gateY(row) + 2 },
      }),
    ),
    shapes: [
      ...keys.map(
        ({ left, right }): Shape => ({
          kind: 'polyline',
          points: [
            { x: left + 0.75, y: bracket + 4 },
            { x: left + 0.75, y: bracket },
            { x: right - 0.75, y: bracket },
            { x: right - 0.75, y: bracket + 4 },
          ],
          stroke: { ink: 'quiet', width: 0.8 },
        }),
      ),
      ...keyShapes,
      ...gateRows.placed.map(
        ({ label, x, row, width }): Shape => ({
          kind: 'text',
          text: label.text,
          at: { x, y: gateY(row) },
          anchor: 'middle',
          size: smallText,
          ink: 'ink',
          room: width,
        }),
      ),
    ],
  }
}

function gateLeaders(leaders: readonly Leader[], onFence: (place: number) => Point): Shape[] {
  return leaders.map(({ gate, from }) => {
    const opening = inFloats(gate)
    return {
      kind: 'polyline',
      points: [from, { x: from.x, y: onFence((opening.from + opening.to) / 2).y - 3 }],
      stroke: { ink: 'quiet', width: 0.6, dash: [1.5, 2] },
    }
  })
}

/** The opening, and the leaf with its swing where the notebook says which way. Hinges on the left: it does not say where. */
function gateShapes(gate: PlacedGate, frame: Frame, onFence: (place: number) => Point, landDepth: number) {
  const { from, to } = inFloats(gate)
  const [hinge, latch] = [onFence(from), onFence(to)]
  const radius = (to - from) * frame.unitsPerMillimetre
  if (radius === 0) return { shapes: [postShape(hinge)], whole: true }
  const closed: Shape = {
    kind: 'polyline',
    points: [hinge, latch],
    stroke: { ink: 'ink', width: 0.8, dash: [2, 2] },
  }
  if (radius + 14 > landDepth) return { shapes: [closed], whole: gate.toward.length === 0 }
  const swings = gate.toward.flatMap((household): Shape[] => {
    const up = household === 'a'
    return [
      {
        kind: 'polyline',
        points: [hinge, { x: hinge.x, y: hinge.y + (up ? -radius : radius) }],
        stroke: { ink: 'ink', width: 1.4 },
      },
      {
        kind: 'arc',
        centre: hinge,
        radius,
        from: up ? -Math.PI / 2 : 0,
        to: up ? 0 : Math.PI / 2,
        stroke: { ink: 'ink', width: 0.8 },
      },
    ]
  })
  return { shapes: [closed, ...swings], whole: true }
}

/** A tick on the line at every station, and its distance below, joined by a fine line. */
function stationLabels(
  placed: PlacedLine,
  frame: Frame,
  line: number,
  bottomOfLand: number,
  words: DrawingWords,
) {
  const labels = placed.stations.map(({ at, typed }) => {
    const text = words.typed(typed)
    return { label: text, centre: frame.toX(inMillimetres(at)), width: textWidth(text, smallText) }
  })
  const rows = labelRows(labels, { from: 0, to: frame.width }, 3)
  const shapes: Shape[] = [
    ...labels.map(
      ({ centre }): Shape => ({
        kind: 'polyline',
        points: [
          { x: centre, y: line - 5 },
          { x: centre, y: line + 5 },
        ],
        stroke: { ink: 'ink', width: 0.8 },
      }),
    ),
    ...rows.placed.flatMap(({ label, centre, x, row, width }): Shape[] => {
      const y = bottomOfLand + 11 + row * rowHeight
      return [
        {
          kind: 'polyline',
          points: [
            { x: centre, y: line + 5 },
            { x: centre, y: y - 8 },
          ],
          stroke: { ink: 'quiet', width: 0.5, dash: [1, 2.5] },
        },
        {
          kind: 'text',
          text: label,
          at: { x, y },
          anchor: 'middle',
          size: smallText,
          ink: 'ink',
          room: width,
        },
      ]
    }),
  ]
  return { shapes, leftOut: rows.leftOut, bottom: bottomOfLand + 4 + rows.rows * rowHeight }
}
