import { inMillimetres } from '../core/amounts/length.ts'
import type { PlacedGate, PlacedLine } from '../core/boundary/placedLine.ts'
import type { Point, Shape } from './drawing.ts'
import type { DrawingWords } from './drawingWords.ts'
import { inFloats } from './fenceRuns.ts'
import type { Frame } from './frame.ts'
import { labelRows } from './labelRows.ts'
import { rowHeight, smallText } from './part.ts'
import { type DrawnStandings, railsHeight, statusRails } from './statusRails.ts'
import { textWidth } from './textRoom.ts'

type Leader = { readonly gate: PlacedGate; readonly from: Point }

/** Between a gate's name and the sign of how it stands. */
const underName = 2.5

/**
 * Brackets that span the sections, and under them the gates' labels with leaders down to the openings. With `standings` each
 * bracket is made of the rails that tell how its section stands, and each gate has them under its name.
 */
export function topLabels(
  placed: PlacedLine,
  frame: Frame,
  words: DrawingWords,
  top: number,
  standings?: DrawnStandings,
) {
  const keys = placed.sections.map((section) => {
    const { from, to } = inFloats(section)
    const [left, right] = [frame.toX(from), frame.toX(to)]
    const number = `${section.index + 1}`
    const name = section.section.name.trim()
    const full = name === '' ? number : `${number} ${name}`
    // The name only where it fits between the section's own ends: the key below has it in any case.
    const text = textWidth(full, smallText) <= right - left - 10 ? full : number
    const look = standings?.sections[section.index]
    return { left, right, text, look, centre: (left + right) / 2, width: textWidth(text, smallText) }
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
  const underGate = standings ? underName + railsHeight : 0
  const bottom = bracket + 6 + gateRows.rows * (rowHeight + underGate) + 3
  const gateY = (row: number) => bottom - 5 - underGate - row * (rowHeight + underGate)
  return {
    bottom,
    bracket,
    leftOut: keyRows.leftOut + gateRows.leftOut,
    leaders: gateRows.placed.map(
      ({ label, centre, row }): Leader => ({
        gate: label.gate,
        from: { x: centre, y: gateY(row) + (standings ? underGate + 0.5 : 2) },
      }),
    ),
    shapes: [
      ...keys.flatMap(({ left, right, look }) =>
        look ? statusRails(look, left + 0.75, right - 0.75, bracket) : [plainBracket(left, right, bracket)],
      ),
      ...keyShapes,
      ...gateRows.placed.flatMap(({ label, x, row, width }): Shape[] => {
        const look = standings?.gates[label.gate.index]
        return [
          {
            kind: 'text',
            text: label.text,
            at: { x, y: gateY(row) },
            anchor: 'middle',
            size: smallText,
            ink: 'ink',
            room: width,
          },
          ...(look ? statusRails(look, x - width / 2, x + width / 2, gateY(row) + underName) : []),
        ]
      }),
    ],
  }
}

function plainBracket(left: number, right: number, top: number): Shape {
  return {
    kind: 'polyline',
    points: [
      { x: left + 0.75, y: top + 4 },
      { x: left + 0.75, y: top },
      { x: right - 0.75, y: top },
      { x: right - 0.75, y: top + 4 },
    ],
    stroke: { ink: 'quiet', width: 0.8 },
  }
}

export function gateLeaders(leaders: readonly Leader[], onFence: (place: number) => Point): Shape[] {
  return leaders.map(({ gate, from }) => {
    const opening = inFloats(gate)
    return {
      kind: 'polyline',
      points: [from, { x: from.x, y: onFence((opening.from + opening.to) / 2).y - 3 }],
      stroke: { ink: 'quiet', width: 0.6, dash: [1.5, 2] },
    }
  })
}

/** A tick on the line at every station, and its distance below, joined by a fine line. */
export function stationLabels(
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
