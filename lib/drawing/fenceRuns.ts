import { inMillimetres } from '../core/amounts/length.ts'
import type { PlacedGate, PlacedLine, PlacedSection, Stretch } from '../core/boundary/placedLine.ts'

export type Run = { readonly from: number; readonly to: number }

export function inFloats({ from, to }: Stretch): Run {
  return { from: inMillimetres(from), to: inMillimetres(to) }
}

/** A section less the clear openings of the gates: what is fenced. */
export function fenceRuns(section: PlacedSection, gates: readonly PlacedGate[]): readonly Run[] {
  let runs: Run[] = [inFloats(section)]
  for (const gate of gates) {
    const opening = inFloats(gate)
    runs = runs.flatMap((run) =>
      opening.to <= run.from || opening.from >= run.to
        ? [run]
        : [
            ...(opening.from > run.from ? [{ from: run.from, to: opening.from }] : []),
            ...(opening.to < run.to ? [{ from: opening.to, to: run.to }] : []),
          ],
    )
  }
  return runs
}

/** Where posts stand for certain: at the ends of sections and at both sides of each opening. Bays are not laid out here. */
export function postPlaces(placed: PlacedLine): readonly number[] {
  const ends = [...placed.sections, ...placed.gates.filter(({ gate }) => gate.opening !== '')].flatMap(
    (stretch) => {
      const { from, to } = inFloats(stretch)
      return [from, to]
    },
  )
  const openings = placed.gates.map(inFloats)
  // A section's end that lies inside an opening has no post.
  return [...new Set(ends)].filter((place) => !openings.some(({ from, to }) => place > from && place < to))
}
