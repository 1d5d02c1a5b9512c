import type { Notebook } from '../core/agreement/notebook.ts'
import type { PlacedLine } from '../core/boundary/placedLine.ts'
import type { TakeOff } from '../core/takeoff/takeOff.ts'
import { takeOffWhereBuilt } from './builtFence.ts'
import type { Drawing } from './drawing.ts'
import type { DrawingWords } from './drawingWords.ts'
import { type DrawnLine, drawnLine } from './drawnLine.ts'
import { type DrawnMore, drawnMore } from './drawnMore.ts'
import { elevationShapes } from './elevationShapes.ts'
import { type Frame, frameOf } from './frame.ts'
import { itemSheets } from './itemDrawing.ts'
import { keyShapes } from './keyShapes.ts'
import { namedParts } from './namedParts.ts'
import type { Part } from './part.ts'
import { planShapes } from './planShapes.ts'
import { inRows } from './stacked.ts'
import type { DrawnStandings } from './statusRails.ts'
import { title, titleHeight } from './title.ts'
import { turnsPlan } from './turnsPlan.ts'

/**
 * The line in plan, to scale along it, and in elevation below. Never throws on a notebook that was read: what can be
 * drawn is drawn, the rest is in the notes. Posts, bays and holes are those of the take-off, where a build-up says them.
 *
 * @param options.widthUnits width of the drawing in its own units, at least 200; see `Drawing`
 * @param options.words `drawingWords(notebook)` of `lib/words/summary/drawingWords.ts`
 * @param options.takeOff of the same notebook, where the caller has it; else it is worked out where a build-up asks for it
 * @param options.details for paper: with a larger drawing of each section and gate that has a build-up as `details`; before
 *   them the key of the line, where a page can't hold it with the line
 * @param options.standings how sections and gates stand between the households; on paper that is told in words
 * @param options.keyApart for a screen: the key alone, as the one drawing in `details`
 */
export function lineDrawing(
  notebook: Notebook,
  options: {
    widthUnits: number
    words: DrawingWords
    takeOff?: TakeOff
    details?: boolean
    standings?: DrawnStandings
    keyApart?: boolean
  },
): Drawing {
  const { words } = options
  const found = options.takeOff ?? takeOffWhereBuilt(notebook)
  const line = drawnLine(notebook, found)
  const { placed, fence } = line
  const frame = frameOf(placed, Math.max(200, options.widthUnits), fence?.posts)
  if (!(frame.unitsPerMillimetre > 0 && Number.isFinite(frame.unitsPerMillimetre)))
    return emptyDrawing(placed, frame, words)
  const more = {
    ...drawnMore(notebook, fence, false),
    ...(options.standings ? { standings: options.standings } : {}),
  }
  const { drawing, key } = placedDrawing(notebook, line, frame, words, more)
  if (options.keyApart) return { ...drawing, details: [keyAlone(drawing, key(0))] }
  if (!options.details || found === undefined || fence === undefined) return under(drawing, key)
  const items = [...notebook.sections, ...notebook.gates].filter(({ buildUp }) => buildUp !== undefined)
  const sheets = items.flatMap(({ id }) =>
    itemSheets(notebook, found, id, { widthUnits: frame.width, words, line, paper: true }),
  )
  const details = inRows(sheets, frame.width)
  const whole = under(drawing, key)
  return whole.height <= fitsOnPage
    ? { ...whole, details }
    : { ...drawing, details: [keyAlone(drawing, key(0)), ...details] }
}

/** In points: what is a little higher than the column of a page is set a little smaller, rather than on two pages. */
const fitsOnPage = 690

type KeyAt = (top: number) => Part

/** The drawing with its key at its foot. */
function under(drawing: Drawing, keyAt: KeyAt): Drawing {
  const key = keyAt(drawing.height)
  return { ...drawing, height: Math.ceil(key.bottom + 4), shapes: [...drawing.shapes, ...key.shapes] }
}

function keyAlone(drawing: Drawing, { shapes, bottom }: Part): Drawing {
  return { ...drawing, height: Math.ceil(bottom + 4), shapes, notes: [], parts: [] }
}

function placedDrawing(
  notebook: Notebook,
  { placed, setbacks, grades }: DrawnLine,
  frame: Frame,
  words: DrawingWords,
  more: DrawnMore,
): { readonly drawing: Drawing; readonly key: KeyAt } {
  const plan = planShapes(placed, setbacks, frame, words, titleHeight, more)
  const turnsTop = plan.bottom + 14
  const turns = turnsPlan(notebook, placed, frame, words, turnsTop + titleHeight)
  const elevationTop = turns ? turns.bottom + 14 : turnsTop
  const elevation = elevationShapes(placed, grades, frame, words, elevationTop + titleHeight, more)
  const leftOut = plan.leftOut + elevation.leftOut + (turns?.leftOut ?? 0)
  const remarks = [
    ...(placed.notes.some(({ kind }) => kind === 'setbacks-unknown')
      ? []
      : [words.setbacksDrawnWider(plan.setbacksDrawnWider)]),
    words.heightsDrawnHigher(elevation.heightsDrawnHigher),
    ...(plan.tooClose > 0 ? [words.postsTooClose(plan.tooClose)] : []),
    ...(leftOut > 0 ? [words.leftOut(leftOut)] : []),
  ]
  const drawing: Drawing = {
    width: frame.width,
    height: elevation.bottom + 8,
    shapes: [
      title(words.plan, frame, 0),
      ...plan.shapes,
      ...(turns ? [title(words.turns, frame, turnsTop), ...turns.shapes] : []),
      title(words.elevation, frame, elevationTop),
      ...elevation.shapes,
    ],
    notes: placed.notes,
    scale: {
      millimetresPerUnit: 1 / frame.unitsPerMillimetre,
      setbacksDrawnWider: plan.setbacksDrawnWider,
      heightsDrawnHigher: elevation.heightsDrawnHigher,
    },
    parts: namedParts(placed, frame, words, more, plan, elevation),
  }
  return { drawing, key: (top) => keyShapes(notebook, placed, frame, words, remarks, top, more) }
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
    parts: [],
  }
}
