import type { Notebook } from '../core/agreement/notebook.ts'
import { inMillimetres, type Millimetres } from '../core/amounts/length.ts'
import type { TakeOff } from '../core/takeoff/takeOff.ts'
import { acrossDrawing } from './acrossDrawing.ts'
import { type BuiltFence, within } from './builtFence.ts'
import type { Drawing } from './drawing.ts'
import type { DrawingWords } from './drawingWords.ts'
import { type DrawnLine, drawnLine } from './drawnLine.ts'
import { type DrawnMore, drawnMore, reachOf } from './drawnMore.ts'
import { elevationShapes } from './elevationShapes.ts'
import { type Frame, frameFrom, margin } from './frame.ts'
import { keyShapes, remarkShapes } from './keyShapes.ts'
import { namedParts } from './namedParts.ts'
import { rowHeight, smallText } from './part.ts'
import { bayDimensions } from './planDimensions.ts'
import { planShapes } from './planShapes.ts'
import { stacked } from './stacked.ts'
import { cut, type Stretch, stretchOfItem } from './stretch.ts'
import { textWidth } from './textRoom.ts'
import { subtitle, title, titleHeight } from './title.ts'

/** Sheets under one another: more would be no drawing any more. Where they don't suffice, alike bays share a figure. */
const mostSheets = 6

/**
 * One section or gate alone, larger, with every dimension: parted into sheets where one would be too narrow for its
 * figures. Undefined where it has no place on the line yet. Never throws on a notebook that was read.
 *
 * @param found the take-off of the same notebook, where anything in it has a build-up
 */
export function itemDrawing(
  notebook: Notebook,
  found: TakeOff | undefined,
  itemId: string,
  options: { widthUnits: number; words: DrawingWords },
): Drawing | undefined {
  const sheets = itemSheets(notebook, found, itemId, options)
  return sheets.length === 0 ? undefined : stacked(sheets)
}

/**
 * The same, sheet by sheet, each a drawing by itself; the last one has the key. On `paper` the line's own drawing has the
 * key already, and a short item is drawn no larger than it has to be, so that a page holds several.
 */
export function itemSheets(
  notebook: Notebook,
  found: TakeOff | undefined,
  itemId: string,
  {
    widthUnits,
    words,
    line = drawnLine(notebook, found),
    paper = false,
  }: { widthUnits: number; words: DrawingWords; line?: DrawnLine; paper?: boolean },
): readonly Drawing[] {
  const stretch = stretchOfItem(line, itemId)
  if (stretch === undefined) return []
  const room = Math.max(200, widthUnits)
  const width = paper ? widthOnPaper(stretch, line.fence, room) : room
  const whole = line.fence
  const ends = sheetEnds(stretch, sheetCount(stretch, whole, words, width))
  const longest = Math.max(...ends.map(([from, to]) => inMillimetres(to) - inMillimetres(from)))
  const name = nameOf(notebook, itemId, words)
  const reach = largestReach(stretch, whole)
  const scale = (width - 2 * margin) / (longest + 2 * reach)
  if (!(scale > 0) || !Number.isFinite(scale)) return []
  const sheets = ends.map(([from, to], index) => {
    const placed = cut(stretch.placed, from, to)
    const frame = frameFrom(inMillimetres(from) - reach, inMillimetres(to) + reach, width, scale)
    const more = moreOf(notebook, stretch, whole, frame.from, frame.to)
    return sheet({ ...line, placed }, frame, words, more, [
      words.sheet(name, index + 1, ends.length),
      words.sheetReach(from, to),
    ])
  })
  const drawings = sheets.map(({ drawing }) => drawing)
  const key = keySheet(notebook, stretch, { width, scale, reach, paper }, words, whole, sheets)
  const last = drawings.at(-1)
  return paper && last ? [...drawings.slice(0, -1), stacked([last, key])] : [...drawings, key]
}

/** On paper a unit is a point, 127/360 mm: this many millimetres of fence to a point are a scale of 1 to 50. */
const finestOnPaper = (50 * 127) / 360
/** Narrower, and a gate's figures would have no room. */
const narrowestOnPaper = 240

function widthOnPaper({ placed }: Stretch, whole: BuiltFence | undefined, widest: number): number {
  const length = inMillimetres(placed.end) - inMillimetres(placed.start)
  const reach = largestReach({ placed }, whole)
  const needed = (length + 2 * reach) / finestOnPaper + 2 * margin
  return Math.min(widest, Math.max(narrowestOnPaper, needed))
}

type Sheet = { readonly drawing: Drawing; readonly leftOut: number; readonly tooClose: number }

function sheet(
  { placed, setbacks, grades }: DrawnLine,
  frame: Frame,
  words: DrawingWords,
  more: DrawnMore,
  [head, reach]: readonly [string, string],
): Sheet {
  const whole = { ...frame, right: frame.width - margin }
  const plan = planShapes(placed, setbacks, frame, words, titleHeight + rowHeight, more)
  const elevation = elevationShapes(placed, grades, frame, words, plan.bottom + 10, more)
  return {
    drawing: {
      width: frame.width,
      height: Math.ceil(elevation.bottom + 6),
      shapes: [
        title(head, whole, 0),
        subtitle(reach, whole, titleHeight),
        ...plan.shapes,
        ...elevation.shapes,
      ],
      notes: [],
      scale: {
        millimetresPerUnit: 1 / frame.unitsPerMillimetre,
        setbacksDrawnWider: plan.setbacksDrawnWider,
        heightsDrawnHigher: elevation.heightsDrawnHigher,
      },
      parts: namedParts(placed, frame, words, more, plan, elevation),
    },
    leftOut: plan.leftOut + elevation.leftOut,
    tooClose: plan.tooClose,
  }
}

/** The key of all sheets, and the post that reaches nearest to the line, across it. */
function keySheet(
  notebook: Notebook,
  stretch: Stretch,
  { width, scale, reach, paper }: { width: number; scale: number; reach: number; paper: boolean },
  words: DrawingWords,
  whole: BuiltFence | undefined,
  sheets: readonly Sheet[],
): Drawing {
  const { placed } = stretch
  const frame = frameFrom(0, (width - 2 * margin) / scale, width, scale)
  const more = moreOf(
    notebook,
    stretch,
    whole,
    inMillimetres(placed.start) - reach,
    inMillimetres(placed.end) + reach,
  )
  const across = more.fence && acrossDrawing(more.fence, width, words, more, 0)
  const leftOut = sheets.reduce((sum, one) => sum + one.leftOut, 0)
  const tooClose = sheets.reduce((sum, one) => sum + one.tooClose, 0)
  // Sheets of one item differ where its setbacks or heights do: each factor is told once.
  const told = (sentence: (times: number) => string, of: (one: Drawing['scale']) => number) => [
    ...new Set(sheets.map(({ drawing }) => sentence(of(drawing.scale)))),
  ]
  const remarks = [
    ...told(words.acrossDrawnWider, (one) => one.setbacksDrawnWider),
    ...told(words.heightsDrawnHigher, (one) => one.heightsDrawnHigher),
    ...(more.fence ? [words.depthRule] : []),
    ...(tooClose > 0 ? [words.postsTooClose(tooClose)] : []),
    ...(leftOut > 0 ? [words.leftOut(leftOut)] : []),
  ]
  const top = (across?.bottom ?? 0) + 4
  const key = paper
    ? remarkShapes(remarks, { ...frame, left: margin, right: width - margin }, top)
    : keyShapes(notebook, placed, frame, words, remarks, top, more)
  return {
    width,
    height: Math.ceil(key.bottom + 4),
    shapes: [...(across?.shapes ?? []), ...key.shapes],
    notes: [],
    scale: { millimetresPerUnit: 1 / scale, setbacksDrawnWider: 1, heightsDrawnHigher: 1 },
    parts: [],
  }
}

/** What stands in a part of the stretch: of a section all that is its own, of a gate the posts. */
function moreOf(
  notebook: Notebook,
  { section }: Stretch,
  whole: BuiltFence | undefined,
  from: number,
  to: number,
): DrawnMore {
  const own = new Set(section === undefined ? [] : [section])
  const fence = whole && within(whole, from, to, own)
  return {
    ...drawnMore(notebook, fence && fence.posts.length > 0 ? fence : undefined, true),
    ...(section === undefined ? { cutSections: true } : { section }),
  }
}

/** How far holes at the ends of a sheet reach past them; and a little of the line on either side. */
function largestReach({ placed }: Pick<Stretch, 'placed'>, whole: BuiltFence | undefined): number {
  const reach = Math.max(0, ...(whole?.posts ?? []).map(reachOf))
  const length = inMillimetres(placed.end) - inMillimetres(placed.start)
  return Math.min(reach * 1.1, length / 4)
}

function nameOf(notebook: Notebook, itemId: string, words: DrawingWords): string {
  const section = notebook.sections.findIndex(({ id }) => id === itemId)
  const gate = notebook.gates.findIndex(({ id }) => id === itemId)
  return section >= 0 ? words.sectionKey(section) : words.gateKey(gate)
}

/** As many sheets as let the middle-sized bay's figure stand on it. */
function sheetCount(
  { placed, section }: Stretch,
  whole: BuiltFence | undefined,
  words: DrawingWords,
  width: number,
): number {
  const [from, to] = [inMillimetres(placed.start), inMillimetres(placed.end)]
  const fence = whole && within(whole, from, to, new Set(section === undefined ? [] : [section]))
  if (fence === undefined || fence.bays.length === 0) return 1
  const lengths = fence.bays.map((bay) => bay.to - bay.from).sort((left, right) => left - right)
  const middle = lengths[lengths.length >> 1] ?? 0
  if (!(middle > 0)) return 1
  const unscaled = frameFrom(0, 1, width, 1)
  const widest = Math.max(
    ...bayDimensions(placed, unscaled, words, { fence }).map(({ text }) => textWidth(text, smallText)),
  )
  const needed = ((to - from) * (widest + 5)) / middle
  return Math.max(
    1,
    Math.min(mostSheets, Math.ceil(needed / (width - 2 * margin) - 0.001), fence.bays.length),
  )
}

/** Parted at posts, the parts as equal in length as posts allow. */
function sheetEnds(
  { breaks, placed }: Stretch,
  count: number,
): readonly (readonly [Millimetres, Millimetres])[] {
  const from = inMillimetres(placed.start)
  const each = (inMillimetres(placed.end) - from) / count
  const ends: Millimetres[] = [placed.start]
  for (let index = 1; index < count; index += 1) {
    const goal = from + index * each
    const nearest = breaks.reduce<Millimetres | undefined>((best, at) => {
      const usable =
        inMillimetres(at) > inMillimetres(ends.at(-1) ?? placed.start) + each / 4 &&
        inMillimetres(at) < inMillimetres(placed.end) - each / 4 &&
        placed.gates.every(
          (gate) =>
            !(inMillimetres(gate.from) < inMillimetres(at) && inMillimetres(at) < inMillimetres(gate.to)),
        )
      if (!usable) return best
      const off = Math.abs(inMillimetres(at) - goal)
      return best === undefined || off < Math.abs(inMillimetres(best) - goal) ? at : best
    }, undefined)
    if (nearest) ends.push(nearest)
  }
  ends.push(placed.end)
  return ends.slice(1).map((end, index) => [ends[index] ?? placed.start, end] as const)
}
