import type { Notebook } from '../agreement/notebook.ts'
import { compareLengths, lengthOf, type Millimetres } from '../amounts/length.ts'
import { addRatios } from '../amounts/ratio.ts'
import type { PlacedGate, PlacedLine, PlacedSection } from '../boundary/placedLine.ts'
import { halved, lowestTerms, subtractRatios } from './exact.ts'
import type { Found } from './finding.ts'
import { lengthOrNothing } from './neededLength.ts'

/** A stretch of fence between two posts with neither an opening nor a turn of the line in it. Ends are post centres. */
export type Run = {
  /** Index into the notebook's sections. */
  readonly section: number
  readonly from: Millimetres
  readonly to: Millimetres
}

/** A gate's two posts: their centres stand half a post outside the clear opening. */
export type Jambs = {
  readonly gate: PlacedGate
  readonly left: Millimetres
  readonly right: Millimetres
  /** The section that the gate stands in, or the one beside it; undefined where there is none. */
  readonly section: number | undefined
}

export type CornerPoint = { readonly at: Millimetres; readonly station: number; readonly degrees: number }

/** The posts of every gate that has an opening. */
export function jambsOf(notebook: Notebook, placed: PlacedLine): readonly Jambs[] {
  return placed.gates.flatMap((gate) => {
    if (compareLengths(gate.from, gate.to) >= 0) return []
    const section = sectionOf(notebook, gate, placed.sections)
    const half = halved(jambWidth(notebook, gate, section))
    return [
      {
        gate,
        left: lowestTerms(subtractRatios(gate.from, half)),
        right: lowestTerms(addRatios(gate.to, half)),
        section,
      },
    ]
  })
}

function jambWidth(notebook: Notebook, gate: PlacedGate, section: number | undefined): Millimetres {
  const around = section === undefined ? undefined : notebook.sections[section]?.buildUp
  return lengthOrNothing(
    gate.gate.buildUp?.posts?.outside || around?.gatePosts?.outside || around?.posts.outside || '',
  )
}

/**
 * The section that a gate stands in, else the first along the line that it touches. One with a build-up goes before one
 * without: its fence needs the gate's posts to end on.
 */
function sectionOf(
  notebook: Notebook,
  gate: PlacedGate,
  sections: readonly PlacedSection[],
): number | undefined {
  const touching = sections
    .filter(({ from, to }) => compareLengths(from, gate.to) <= 0 && compareLengths(gate.from, to) <= 0)
    .toSorted((left, right) => compareLengths(left.from, right.from))
  const built = touching.filter(({ index }) => notebook.sections[index]?.buildUp !== undefined)
  const among = built.length > 0 ? built : touching
  const holding = among.find(
    ({ from, to }) => compareLengths(from, gate.from) <= 0 && compareLengths(gate.to, to) <= 0,
  )
  return (holding ?? among[0])?.index
}

/** The stations where the line turns; one inside an opening has no post to stand on and is found. */
export function cornerPoints(
  notebook: Notebook,
  jambs: readonly Jambs[],
  found: Found,
): readonly CornerPoint[] {
  return notebook.line.stations.flatMap(({ at, angle }, station) => {
    const degrees = Number(angle?.degrees || '0')
    if (at === '' || degrees === 0) return []
    const path = `line.stations[${station}].angle`
    if (degrees >= 180) {
      found(`${path}.degrees`, { kind: 'angle-too-large', degrees: angle?.degrees ?? '' })
      return []
    }
    const place = lowestTerms(lengthOf(at))
    const within = jambs.find(
      ({ left, right }) => compareLengths(left, place) < 0 && compareLengths(place, right) < 0,
    )
    if (within) {
      found(path, { kind: 'angle-in-gate', at: place, gate: within.gate.index })
      return []
    }
    return [{ at: place, station, degrees }]
  })
}

/** A section less the openings of its gates and their posts, cut at the turns of the line. */
export function runsOf(
  section: PlacedSection,
  jambs: readonly Jambs[],
  corners: readonly CornerPoint[],
): readonly Run[] {
  const { index, from, to } = section
  let runs: readonly Run[] = [{ section: index, from: lowestTerms(from), to: lowestTerms(to) }]
  for (const { left, right } of jambs) {
    if (compareLengths(right, from) <= 0 || compareLengths(to, left) <= 0) continue
    runs = runs.flatMap((run) => carve(run, left, right))
  }
  for (const { at } of corners) {
    if (compareLengths(at, from) <= 0 || compareLengths(to, at) <= 0) continue
    runs = runs.flatMap((run) => part(run, at))
  }
  return runs
}

function part(run: Run, at: Millimetres): Run[] {
  if (compareLengths(at, run.from) <= 0 || compareLengths(run.to, at) <= 0) return [run]
  return [
    { ...run, to: at },
    { ...run, from: at },
  ]
}

function carve(run: Run, left: Millimetres, right: Millimetres): Run[] {
  if (compareLengths(right, run.from) <= 0 || compareLengths(run.to, left) <= 0) return [run]
  return [
    ...(compareLengths(run.from, left) < 0 ? [{ ...run, to: left }] : []),
    ...(compareLengths(right, run.to) < 0 ? [{ ...run, from: right }] : []),
  ]
}
