import type { StatusLook } from '../core/agreement/itemStatus.ts'
import type { Notebook } from '../core/agreement/notebook.ts'
import type { PlacedLine } from '../core/boundary/placedLine.ts'
import type { Shape } from './drawing.ts'
import type { DrawingWords } from './drawingWords.ts'
import type { DrawnMore } from './drawnMore.ts'
import type { Frame } from './frame.ts'
import { type KeySign, keySigns } from './keySigns.ts'
import { scaleBar } from './niceScale.ts'
import { type Part, rowHeight, smallText } from './part.ts'
import { fitted, textWidth, wrapped } from './textRoom.ts'

/** More parts than this are not listed under the drawing; the summary lists them all in any case. */
const mostListed = 24
const narrow = 400

/** The scale bar, what each kind of line means, what is not to scale, and the parts by their numbers. */
export function keyShapes(
  notebook: Notebook,
  placed: PlacedLine,
  frame: Frame,
  words: DrawingWords,
  remarks: readonly string[],
  top: number,
  more: DrawnMore,
): Part {
  const standing = (text: string, look: StatusLook | undefined) =>
    look ? `${text}, ${words.standing[look]}` : text
  const scale = scaleShapes(notebook, frame, words, top)
  const signs = signShapes(keySigns(notebook, placed, words, more), frame, scale.bottom + 4)
  const parts =
    placed.sections.length + placed.gates.length > mostListed
      ? []
      : [
          ...placed.sections.map(({ index }) =>
            standing(words.sectionLine(index), more.standings?.sections[index]),
          ),
          ...placed.gates.map(({ index }) => standing(words.gateLine(index), more.standings?.gates[index])),
        ]
  const limits = more.limits.slice(0, mostListed).map(({ index }) => words.limitLine(index))
  const room = frame.right - frame.left
  const told = [...remarks, ...limits].flatMap((text) => wrapped(text, smallText, room))
  // On a narrow drawing no line of the list is cut: there is room downward.
  const listed = frame.width < narrow ? parts.flatMap((text) => wrapped(text, smallText, room - 8)) : parts
  const list = columnsOf([...told, ...listed], told.length, frame, signs.bottom + 4)
  return { shapes: [...scale.shapes, ...signs.shapes, ...list.shapes], bottom: list.bottom, leftOut: 0 }
}

/** What is not to scale, without a key: where another drawing of the same paper has it. */
export function remarkShapes(remarks: readonly string[], frame: Frame, top: number): Part {
  const told = remarks.flatMap((text) => wrapped(text, smallText, frame.right - frame.left))
  return { ...columnsOf(told, told.length, frame, top), leftOut: 0 }
}

function scaleShapes(notebook: Notebook, frame: Frame, words: DrawingWords, top: number) {
  const bar = scaleBar(notebook.units, frame.unitsPerMillimetre, (frame.right - frame.left) / 3)
  if (bar === undefined) return { shapes: [], bottom: top }
  const length = bar.millimetres * frame.unitsPerMillimetre
  const y = top + 10
  const box = (from: number, to: number, fill: 'ink' | 'sheet'): Shape => ({
    kind: 'polygon',
    points: [
      { x: frame.left + from, y: y - 4 },
      { x: frame.left + to, y: y - 4 },
      { x: frame.left + to, y },
      { x: frame.left + from, y },
    ],
    fill,
    stroke: { ink: 'ink', width: 0.7 },
  })
  const label = words.length(bar.exact)
  const at = { x: frame.left + length + 6, y: y + 1 }
  return {
    shapes: [
      box(0, length / 2, 'ink'),
      box(length / 2, length, 'sheet'),
      {
        kind: 'text' as const,
        text: label,
        at,
        anchor: 'start' as const,
        size: smallText,
        ink: 'ink' as const,
        room: frame.right - at.x,
      },
    ],
    bottom: y + 4,
  }
}

/** Each sign beside its meaning, wrapped into as many rows as the width asks for. */
function signShapes(signs: readonly KeySign[], frame: Frame, top: number) {
  const shapes: Shape[] = []
  let [x, y] = [frame.left, top + 9]
  for (const { text, draw } of signs) {
    const shown = fitted(text, smallText, frame.right - frame.left - 34)
    const width = 32 + textWidth(shown, smallText)
    if (x > frame.left && x + width > frame.right) [x, y] = [frame.left, y + rowHeight]
    shapes.push(...draw({ x, y: y - 3 }), {
      kind: 'text',
      text: shown,
      at: { x: x + 31, y },
      anchor: 'start',
      size: smallText,
      ink: 'ink',
      room: frame.right - x - 31,
    })
    x += width + 14
  }
  return { shapes, bottom: y + 4 }
}

const gapBeforeParts = 5

/** Remarks in full width, then the parts in as many columns as fit. */
function columnsOf(lines: readonly string[], remarks: number, frame: Frame, top: number) {
  const width = frame.right - frame.left
  // As many columns as keep every line whole; one that is wider than the drawing is cut in any case.
  const longest = Math.max(...lines.slice(remarks).map((line) => textWidth(line, smallText)), 120)
  const columns = Math.max(1, Math.floor(width / (longest + 10)))
  const column = width / columns
  const perColumn = Math.ceil((lines.length - remarks) / columns)
  const shapes = lines.map((line, index): Shape => {
    const listed = index - remarks
    const place = listed < 0 ? 0 : Math.floor(listed / perColumn)
    const row = listed < 0 ? index : remarks + (listed % perColumn)
    const room = listed < 0 ? width : column - 8
    return {
      kind: 'text',
      text: fitted(line, smallText, room),
      at: {
        x: frame.left + place * column,
        y: top + 9 + row * rowHeight + (listed < 0 ? 0 : gapBeforeParts),
      },
      anchor: 'start',
      size: smallText,
      ink: listed < 0 ? 'quiet' : 'ink',
      room,
    }
  })
  return { shapes, bottom: top + 4 + gapBeforeParts + (remarks + Math.max(0, perColumn)) * rowHeight }
}
