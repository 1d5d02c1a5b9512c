import type { Gate, Notebook, Section } from '../agreement/notebook.ts'
import { compareLengths, lengthOf, type Millimetres } from '../amounts/length.ts'
import { addRatios, multiplyRatios, ratio } from '../amounts/ratio.ts'
import type { Household } from '../people/household.ts'
import type { DrawingNote } from './drawingNote.ts'
import { opensToward } from './opensToward.ts'
import { setbackPoints } from './setbackAlong.ts'

/** What has a place along the line, exact, and what has none or clashes. For drawing; the shares never look at it. */
export type PlacedLine = {
  readonly start: Millimetres
  readonly end: Millimetres
  /** Where the line ends: at its farthest station, or, where fewer than two say so, where all that is placed ends. */
  readonly lineEnd: Millimetres
  readonly stations: readonly { readonly index: number; readonly at: Millimetres; readonly typed: string }[]
  readonly sections: readonly PlacedSection[]
  readonly gates: readonly PlacedGate[]
  readonly notes: readonly DrawingNote[]
}

export type Stretch = { readonly from: Millimetres; readonly to: Millimetres }
export type PlacedSection = Stretch & { readonly index: number; readonly section: Section }
export type PlacedGate = Stretch & {
  readonly index: number
  readonly gate: Gate
  /** Where the leaf swings; empty where the notebook does not say. */
  readonly toward: readonly Household[]
}

/** Places everything that has a place. Order of the file is kept. */
export function placedLine(notebook: Notebook): PlacedLine {
  const { line } = notebook
  const stations = line.stations.flatMap(({ at }, index) =>
    at === '' ? [] : [{ index, at: lengthOf(at), typed: at }],
  )
  const sections = notebook.sections.flatMap((section, index) => placedSection(section, index) ?? [])
  const gates = notebook.gates.flatMap((gate, index) => placedGate(notebook, gate, index) ?? [])
  const fence = [...sections.flatMap(ends), ...gates.flatMap(ends)]
  const places = [...stations.map(({ at }) => at), ...fence]
  const nothing = ratio(0n, 1n)
  const end = places.reduce((last, place) => (compareLengths(place, last) > 0 ? place : last), nothing)
  const start = places.reduce((first, place) => (compareLengths(place, first) < 0 ? place : first), nothing)
  const stationsEnd = stations.reduce((last, { at }) => (compareLengths(at, last) > 0 ? at : last), nothing)
  const lineEnd = stations.length > 1 ? stationsEnd : end
  // What reaches past an end of the line is noted as that.
  const onLine = fence.filter((place) => place.over >= 0n && compareLengths(place, lineEnd) <= 0)
  return {
    start,
    end,
    lineEnd,
    stations,
    sections,
    gates,
    notes: [
      ...(compareLengths(start, end) === 0 ? [{ kind: 'nothing-to-draw' as const }] : []),
      ...line.stations.flatMap(({ at }, station) =>
        at === '' ? [{ kind: 'station-without-place' as const, station }] : [],
      ),
      ...saidAlong(
        setbackPoints(line.stations).map(({ at }) => at),
        onLine,
        ['setbacks-unknown', 'setbacks-past'],
      ),
      ...saidAlong(
        stations
          .filter(({ index }) => line.stations[index]?.gradeA !== '' || line.stations[index]?.gradeB !== '')
          .map(({ at }) => at),
        onLine,
        ['grades-unknown', 'grades-past'],
      ),
      ...sectionNotes(notebook, sections, lineEnd),
      ...gateNotes(notebook, gates, sections, lineEnd),
    ],
  }
}

/** Whether the stations say something nowhere, or not as far as the fence reaches. */
function saidAlong(
  said: readonly Millimetres[],
  fence: readonly Millimetres[],
  [unknown, past]:
    | readonly ['setbacks-unknown', 'setbacks-past']
    | readonly ['grades-unknown', 'grades-past'],
): DrawingNote[] {
  const [somewhere] = said
  if (somewhere === undefined) return [{ kind: unknown }]
  const first = said.reduce((least, at) => (compareLengths(at, least) < 0 ? at : least), somewhere)
  const last = said.reduce((most, at) => (compareLengths(at, most) > 0 ? at : most), somewhere)
  const within = (place: Millimetres) => compareLengths(first, place) <= 0 && compareLengths(place, last) <= 0
  return fence.every(within) ? [] : [{ kind: past }]
}

function ends({ from, to }: Stretch): Millimetres[] {
  return [from, to]
}

function placedSection(section: Section, index: number): PlacedSection | undefined {
  if (section.from === '' || section.to === '') return undefined
  const [from, to] = [lengthOf(section.from), lengthOf(section.to)]
  return compareLengths(from, to) < 0 ? { index, section, from, to } : undefined
}

/** A gate's place is the middle of its clear opening; without an opening it is that point. */
function placedGate(notebook: Notebook, gate: Gate, index: number): PlacedGate | undefined {
  if (gate.at === '') return undefined
  const middle = lengthOf(gate.at)
  const half = multiplyRatios(gate.opening === '' ? ratio(0n, 1n) : lengthOf(gate.opening), ratio(1n, 2n))
  const from = addRatios(middle, ratio(-half.over, half.under))
  return { index, gate, from, to: addRatios(middle, half), toward: opensToward(notebook, gate.opens) }
}

function sectionNotes(
  notebook: Notebook,
  placed: readonly PlacedSection[],
  lineEnd: Millimetres,
): DrawingNote[] {
  return [
    ...notebook.sections.flatMap((section, index): DrawingNote[] => {
      if (section.from === '' || section.to === '') return [{ kind: 'section-without-place', section: index }]
      if (!placed.some((one) => one.index === index)) return [{ kind: 'section-backwards', section: index }]
      return section.height.agreed === '' ? [{ kind: 'section-without-height', section: index }] : []
    }),
    ...placed
      .filter(({ to }) => compareLengths(to, lineEnd) > 0)
      .map(({ index }) => ({ kind: 'section-past-the-end' as const, section: index })),
    ...overlaps(placed).map(([section, other]) => ({ kind: 'sections-overlap' as const, section, other })),
  ]
}

function gateNotes(
  notebook: Notebook,
  placed: readonly PlacedGate[],
  sections: readonly PlacedSection[],
  lineEnd: Millimetres,
): DrawingNote[] {
  const inSection = (gate: PlacedGate) =>
    sections.some((one) => compareLengths(one.from, gate.from) <= 0 && compareLengths(gate.to, one.to) <= 0)
  return [
    ...notebook.gates.flatMap(({ at }, gate) =>
      at === '' ? [{ kind: 'gate-without-place' as const, gate }] : [],
    ),
    ...placed.flatMap((one): DrawingNote[] => [
      ...(one.gate.opening === '' ? [{ kind: 'gate-without-opening' as const, gate: one.index }] : []),
      ...(compareLengths(one.to, lineEnd) > 0 || one.from.over < 0n
        ? [{ kind: 'gate-past-the-end' as const, gate: one.index }]
        : inSection(one)
          ? []
          : [{ kind: 'gate-outside-sections' as const, gate: one.index }]),
      ...(one.toward.length === 0 && one.gate.opening !== ''
        ? [{ kind: 'swing-unknown' as const, gate: one.index }]
        : []),
    ]),
    ...overlaps(placed).map(([gate, other]) => ({ kind: 'gates-overlap' as const, gate, other })),
  ]
}

/** Each stretch that begins inside one before it, with that one; touching ends are no overlap. */
function overlaps(stretches: readonly (Stretch & { readonly index: number })[]): [number, number][] {
  const sorted = [...stretches].sort((left, right) => compareLengths(left.from, right.from))
  const found: [number, number][] = []
  let furthest = sorted[0]
  for (const next of sorted.slice(1)) {
    if (furthest && compareLengths(next.from, furthest.to) < 0) found.push([furthest.index, next.index])
    if (!furthest || compareLengths(next.to, furthest.to) > 0) furthest = next
  }
  return found
}
