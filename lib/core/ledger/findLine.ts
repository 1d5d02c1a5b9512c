import type { CostLine, LabourLine, LineOf, Notebook } from '../agreement/notebook.ts'
import { type ItemPlace, placesOf } from '../shares/itemShares.ts'

/** A line of the plan, found where it stands. `place` counts from 1, as in the file. */
export type PlannedLine = {
  /** Path of the line: `sections[0].materials[2]`. It is the line's name within one notebook. */
  readonly path: string
  readonly itemId: string
  readonly item: ItemPlace & { readonly name: string }
  readonly place: number
  readonly what: string
} & (
  | { readonly pot: 'materials'; readonly line: CostLine }
  | { readonly pot: 'labour'; readonly line: LabourLine }
)

export type FindLine = (of: LineOf) => PlannedLine | undefined

/**
 * Finds lines by item, pot, words and place: the line with these words at that place, else the first with these words.
 * Undefined where there is none: the line was removed, or has other words now. Only items that are asked for are looked
 * through, each once.
 */
export function lineFinder(notebook: Notebook): FindLine {
  const places = placesById(notebook)
  const seen = new Map<string, PlannedLines>()
  return ({ item, pot, what, place }) => {
    const there = places.get(item)
    if (there === undefined) return undefined
    const lines = seen.get(item) ?? linesAt(there)
    seen.set(item, lines)
    const exact = /^[1-9][0-9]{0,8}$/.test(place) ? lines[pot][Number(place) - 1] : undefined
    return exact?.what === what ? exact : lines[pot].find((line) => line.what === what)
  }
}

/** Every line of the plan, in file order: materials before labour. */
export function plannedLines(notebook: Notebook): readonly PlannedLine[] {
  return placesOf(notebook).flatMap((place) => {
    const { materials, labour } = linesAt(place)
    return [...materials, ...labour]
  })
}

/** What the books call a line: enough to find it again after others were added before it, or it was moved. */
export function lineName({ itemId, pot, what, place }: PlannedLine): LineOf {
  return { item: itemId, pot, what, place: String(place) }
}

type Place = ReturnType<typeof placesOf>[number]
type PlannedLines = { readonly [Pot in 'materials' | 'labour']: readonly PlannedLine[] }

function placesById(notebook: Notebook): ReadonlyMap<string, Place> {
  return new Map(placesOf(notebook).map((place) => [place.item.id, place]))
}

function linesAt({ item, kind, index, path }: Place): PlannedLines {
  const about = { itemId: item.id, item: { kind, index, path, name: item.name } }
  return {
    materials: item.materials.map((line, at) => ({
      ...about,
      path: `${path}.materials[${at}]`,
      pot: 'materials',
      place: at + 1,
      what: line.what,
      line,
    })),
    labour: item.labour.map((line, at) => ({
      ...about,
      path: `${path}.labour[${at}]`,
      pot: 'labour',
      place: at + 1,
      what: line.task,
      line,
    })),
  }
}
