import type { Notebook } from '../core/agreement/notebook.ts'
import { type PlacedLine, placedLine } from '../core/boundary/placedLine.ts'
import type { Drawing, Shape } from './drawing.ts'
import type { DrawingWords } from './drawingWords.ts'
import { elevationShapes } from './elevationShapes.ts'
import { type Frame, frameOf } from './frame.ts'
import { keyShapes } from './keyShapes.ts'
import { planShapes } from './planShapes.ts'
import { gradeProfile, setbackProfile } from './profile.ts'

/**
 * The line in plan, to scale along it, and in elevation below. Never throws on a notebook that was read: what can be
 * drawn is drawn, the rest is in the notes.
 *
 * @param options.widthUnits width of the drawing in its own units, at least 200; see `Drawing`
 * @param options.words `drawingWords(notebook)` of `lib/words/summary/drawingWords.ts`
 */
export function lineDrawing(
  notebook: Notebook,
  options: { widthUnits: number; words: DrawingWords },
): Drawing {
  const placed = placedLine(notebook)
  const frame = frameOf(placed, Math.max(200, options.widthUnits))
  return frame.unitsPerMillimetre > 0 && Number.isFinite(frame.unitsPerMillimetre)
    ? placedDrawing(notebook, placed, frame, options.words)
    : emptyDrawing(placed, frame, options.words)
}

function placedDrawing(notebook: Notebook, placed: PlacedLine, frame: Frame, words: DrawingWords): Drawing {
  const { stations } = notebook.line
  const grades = {
    a: gradeProfile(stations, 'a'),
    b: gradeProfile(stations, 'b'),
    fence: gradeProfile(stations, 'fence'),
  }
  const plan = planShapes(placed, setbackProfile(stations), frame, words, titleHeight)
  const elevationTop = plan.bottom + 14
  const elevation = elevationShapes(placed, grades, frame, words, elevationTop + titleHeight)
  const leftOut = plan.leftOut + elevation.leftOut
  const remarks = [
    ...(placed.notes.some(({ kind }) => kind === 'setbacks-unknown')
      ? []
      : [words.setbacksDrawnWider(plan.setbacksDrawnWider)]),
    words.heightsDrawnHigher(elevation.heightsDrawnHigher),
    ...(leftOut > 0 ? [words.leftOut(leftOut)] : []),
  ]
  const key = keyShapes(notebook, placed, frame, words, remarks, elevation.bottom + 8)
  return {
    width: frame.width,
    height: Math.ceil(key.bottom + 4),
    shapes: [
      title(words.plan, frame, 0),
      ...plan.shapes,
      title(words.elevation, frame, elevationTop),
      ...elevation.shapes,
      ...key.shapes,
    ],
    notes: placed.notes,
    scale: {
      millimetresPerUnit: 1 / frame.unitsPerMillimetre,
      setbacksDrawnWider: plan.setbacksDrawnWider,
      heightsDrawnHigher: elevation.heightsDrawnHigher,
    },
  }
}

const titleHeight = 18

function title(text: string, frame: Frame, top: number): Shape {
  const at = { x: frame.left, y: top + 11 }
  return {
    kind: 'text',
    text,
    at,
    anchor: 'start',
    size: 10.5,
    bold: true,
    ink: 'ink',
    room: frame.right - frame.left,
  }
}

function emptyDrawing(placed: PlacedLine, frame: Frame, words: DrawingWords): Drawing {
  return {
    width: frame.width,
    height: 40,
    shapes: [
      {
        kind: 'text',
        text: words.nothing,
        at: { x: frame.width / 2, y: 24 },
        anchor: 'middle',
        size: 10,
        ink: 'quiet',
        room: frame.width - 20,
      },
    ],
    notes: placed.notes,
    scale: { millimetresPerUnit: 0, setbacksDrawnWider: 1, heightsDrawnHigher: 1 },
  }
}
