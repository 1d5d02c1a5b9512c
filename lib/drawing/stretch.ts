import { compareLengths, type Millimetres } from '../core/amounts/length.ts'
import { addRatios } from '../core/amounts/ratio.ts'
import type { PlacedLine } from '../core/boundary/placedLine.ts'
import { larger, smaller, subtractRatios } from '../core/takeoff/exact.ts'
import type { DrawnLine } from './drawnLine.ts'

/** A part of the line that a larger drawing shows: the item's own stretch with a little beside it. */
export type Stretch = {
  /** Only what lies in it; sections are cut at its ends. */
  readonly placed: PlacedLine
  /** Places where it may be parted into sheets: posts, in order, from its beginning to its end. */
  readonly breaks: readonly Millimetres[]
  /** Sections whose bays are drawn; none on the drawing of a gate, where sections are cut anywhere. */
  readonly section: number | undefined
}

/** Undefined where the item has no place on the line. */
export function stretchOfItem({ placed: whole, fence }: DrawnLine, itemId: string): Stretch | undefined {
  const section = whole.sections.find(({ section: { id } }) => id === itemId)
  if (section) {
    const gates = whole.gates.filter(
      ({ from, to }) => compareLengths(section.from, from) <= 0 && compareLengths(to, section.to) <= 0,
    )
    const posts = (fence?.posts ?? []).filter(({ built }) => built.post.sections.includes(section.index))
    return {
      placed: cut({ ...whole, sections: [section], gates }, section.from, section.to),
      breaks: [
        section.from,
        ...between(
          posts.map(({ built }) => built.post.at),
          section.from,
          section.to,
        ),
        section.to,
      ],
      section: section.index,
    }
  }
  const gate = whole.gates.find(({ gate: { id } }) => id === itemId)
  if (gate === undefined || compareLengths(gate.from, gate.to) >= 0) return undefined
  const beside = subtractRatios(gate.to, gate.from)
  const from = subtractRatios(gate.from, beside)
  const to = addRatios(gate.to, beside)
  return { placed: cut({ ...whole, gates: [gate] }, from, to), breaks: [from, to], section: undefined }
}

function between(places: readonly Millimetres[], from: Millimetres, to: Millimetres): readonly Millimetres[] {
  return places
    .filter((at) => compareLengths(from, at) < 0 && compareLengths(at, to) < 0)
    .sort(compareLengths)
}

/** What lies from one place to another. Gates that reach past an end are left out. */
export function cut(placed: PlacedLine, from: Millimetres, to: Millimetres): PlacedLine {
  const inside = (at: Millimetres) => compareLengths(from, at) <= 0 && compareLengths(at, to) <= 0
  return {
    start: from,
    end: to,
    lineEnd: placed.lineEnd,
    stations: placed.stations.filter(({ at }) => inside(at)),
    sections: placed.sections.flatMap((section) => {
      const [begins, ends] = [larger(section.from, from), smaller(section.to, to)]
      return compareLengths(begins, ends) < 0 ? [{ ...section, from: begins, to: ends }] : []
    }),
    gates: placed.gates.filter((gate) => inside(gate.from) && inside(gate.to)),
    notes: placed.notes,
  }
}
