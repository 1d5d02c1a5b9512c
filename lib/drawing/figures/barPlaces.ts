import type { BarGroup, FigureBar } from '../../core/figures/figure.ts'
import type { Ink, Shape } from '../drawing.ts'
import { fitted, linesUpTo, textWidth } from '../textRoom.ts'

/** Where a bar lies, from its top to its bottom. */
export type BarPlace = { readonly bar: FigureBar; readonly top: number; readonly height: number }

/** Where the bars of all groups lie, with their words. */
export type BarPlaces = {
  readonly bars: readonly BarPlace[]
  readonly texts: readonly Shape[]
  readonly bottom: number
}

/** Widths of the words at the left and of those at the right, where they stand beside the bars. */
export type Columns = { readonly title: number; readonly text: number }

/** Long names are told apart by their ends, too. */
const mostTitleLines = 3

type Room = { readonly width: number; readonly size: number; readonly top: number }

/** The words beside the bars take as much as they need, as long as the bars keep a third. */
export function columnsFor(groups: readonly BarGroup[], width: number, size: number): Columns {
  const widest = (texts: readonly string[]) => Math.max(0, ...texts.map((text) => textWidth(text, size)))
  return {
    title: Math.min(width * 0.38, widest(groups.map(({ title }) => title))),
    text: Math.min(width * 0.3, widest(groups.flatMap(({ bars }) => bars.map(({ text }) => text)))),
  }
}

/** Each title at the left of its bars, each text at the right of its bar. */
export function placesBeside(groups: readonly BarGroup[], columns: Columns, room: Room): BarPlaces {
  const { width, size } = room
  const row = size * 1.4
  const bars: BarPlace[] = []
  const texts: Shape[] = []
  let y = room.top
  for (const group of groups) {
    const title = linesUpTo(mostTitleLines, group.title, size, columns.title)
    const next = y + row * Math.max(title.length, group.bars.length) + size * 0.5
    title.forEach((line, at) => {
      texts.push(word(line, 0, y + row * (at + 0.5) + size * 0.36, 'start', columns.title, size))
    })
    for (const bar of group.bars) {
      const height = heightOf(bar, size)
      bars.push({ bar, top: y + (row - height) / 2, height })
      const text = fitted(bar.text, size, columns.text)
      texts.push(word(text, width, y + row / 2 + size * 0.36, 'end', columns.text, size))
      y += row
    }
    y = next
  }
  return { bars, texts, bottom: y }
}

/** Each title above its bars; what the bars say in one row below it where there is room, else each above its own bar. */
export function placesBelow(groups: readonly BarGroup[], { width, size, top }: Room): BarPlaces {
  const row = size * 1.35
  const bars: BarPlace[] = []
  const texts: Shape[] = []
  let y = top
  const put = (text: string, ink: Ink, bold = false) => {
    texts.push({
      ...word(fitted(text, size, width), 0, y + size, 'start', width, size, ink),
      ...(bold && { bold }),
    })
    y += row
  }
  for (const group of groups) {
    const said = group.bars.map(({ text }) => text).filter((text) => text !== '')
    const together = said.join(', ')
    const fits = textWidth(together, size) <= width
    for (const line of linesUpTo(mostTitleLines, group.title, size, width * 0.93)) put(line, 'ink', true)
    if (fits && together !== '') put(together, 'quiet')
    for (const bar of group.bars) {
      if (!fits && bar.text !== '') put(bar.text, 'quiet')
      const height = heightOf(bar, size)
      bars.push({ bar, top: y + size * 0.15, height })
      y += height + size * 0.3
    }
    y += size * 0.6
  }
  return { bars, texts, bottom: y }
}

function heightOf({ thin = false }: FigureBar, size: number): number {
  return size * (thin ? 0.55 : 1)
}

function word(
  text: string,
  x: number,
  y: number,
  anchor: 'start' | 'end',
  room: number,
  size: number,
  ink: Ink = 'ink',
): Shape {
  return { kind: 'text', text, at: { x, y }, anchor, size, ink, room }
}
