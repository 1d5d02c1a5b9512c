import { inMillimetres, lengthOf, type Millimetres } from '../core/amounts/length.ts'
import type { PlacedLine } from '../core/boundary/placedLine.ts'
import { setbackPoints } from '../core/boundary/setbackAlong.ts'
import { subtractRatios } from '../core/takeoff/exact.ts'
import { type Dimension, dimensionRow, gatheredDimensions, obliqueTick } from './dimensionLine.ts'
import type { Shape } from './drawing.ts'
import type { DrawingWords } from './drawingWords.ts'
import type { DrawnMore } from './drawnMore.ts'
import type { Frame } from './frame.ts'
import { labelRows } from './labelRows.ts'
import { type Part, rowHeight, smallText } from './part.ts'
import { textWidth } from './textRoom.ts'

/**
 * Under the stations of the plan: in a larger drawing the setbacks there, each bay and opening; then sections, then all.
 * Nothing where no build-up says what is built: the drawing of a line without one stays as it was.
 */
export function planDimensions(
  placed: PlacedLine,
  frame: Frame,
  words: DrawingWords,
  more: DrawnMore,
  top: number,
): Part {
  if (!more.detail && more.fence === undefined) return { shapes: [], bottom: top, leftOut: 0 }
  const edges = { from: 0, to: frame.width }
  const setbacks = more.detail ? setbackLabels(placed, frame, words, more, top) : empty(top)
  const bays = more.detail ? bayRow(placed, frame, words, more, setbacks.bottom) : empty(setbacks.bottom)
  const stretch = (from: Millimetres, to: Millimetres): Dimension => ({
    from: frame.toX(inMillimetres(from)),
    to: frame.toX(inMillimetres(to)),
    text: words.length(subtractRatios(to, from)),
  })
  const sections = (more.cutSections ? [] : placed.sections)
    .map(({ from, to }) => stretch(from, to))
    .sort((left, right) => left.from - right.from)
  const lengths = dimensionRow(sections, edges, bays.bottom)
  const alone =
    sections.length === 1 && sections[0]?.text === words.length(subtractRatios(placed.end, placed.start))
  const whole =
    alone || more.detail
      ? empty(lengths.bottom)
      : dimensionRow([stretch(placed.start, placed.end)], edges, lengths.bottom)
  return {
    shapes: [...setbacks.shapes, ...bays.shapes, ...lengths.shapes, ...whole.shapes],
    bottom: whole.bottom,
    leftOut: setbacks.leftOut + bays.leftOut + lengths.leftOut + whole.leftOut,
  }
}

function empty(bottom: number): Part {
  return { shapes: [], bottom, leftOut: 0 }
}

/** How far the middle of the fence stands off the line at each station that says so. */
function setbackLabels(
  placed: PlacedLine,
  frame: Frame,
  words: DrawingWords,
  { stations }: DrawnMore,
  top: number,
): Part {
  const rows = labelRows(
    setbackPoints(placed.stations.flatMap(({ index }) => stations[index] ?? [])).map(({ at, setback }) => {
      const text = words.offLine(setback)
      return { label: text, centre: frame.toX(inMillimetres(at)), width: textWidth(text, smallText) }
    }),
    { from: 0, to: frame.width },
    2,
  )
  return {
    shapes: rows.placed.map(
      ({ label, x, row, width }): Shape => ({
        kind: 'text',
        text: label,
        at: { x, y: top + 9 + row * rowHeight },
        anchor: 'middle',
        size: smallText,
        ink: 'quiet',
        room: width,
      }),
    ),
    bottom: top + rows.rows * rowHeight,
    leftOut: rows.leftOut,
  }
}

/** From post to post, and clear between a gate's posts. */
export function bayDimensions(
  placed: PlacedLine,
  frame: Frame,
  words: DrawingWords,
  { fence }: Pick<DrawnMore, 'fence'>,
): readonly Dimension[] {
  const bays = (fence?.bays ?? []).map(({ bay, from, to }) => ({
    from: frame.toX(from),
    to: frame.toX(to),
    text: words.length(bay.length),
  }))
  const openings = placed.gates
    .filter(({ gate }) => gate.opening !== '')
    .map(({ from, to, gate }) => ({
      from: frame.toX(inMillimetres(from)),
      to: frame.toX(inMillimetres(to)),
      text: words.clear(lengthOf(gate.opening)),
    }))
  return [...bays, ...openings].sort((left, right) => left.from - right.from || left.to - right.to)
}

function bayRow(placed: PlacedLine, frame: Frame, words: DrawingWords, more: DrawnMore, top: number): Part {
  const gathered = gatheredDimensions(bayDimensions(placed, frame, words, more), words.alike)
  const row = dimensionRow(gathered.dimensions, { from: 0, to: frame.width }, top)
  const y = top + rowHeight + 2
  return { ...row, shapes: [...row.shapes, ...gathered.ticks.map((x) => obliqueTick({ x, y }))] }
}
