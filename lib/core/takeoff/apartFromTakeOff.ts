import type { CostLine } from '../agreement/notebook.ts'
import { compareLengths } from '../amounts/length.ts'
import { numberOf } from './exact.ts'
import { fromTakeOff, type OfferedLine } from './offeredLines.ts'

/** A cost line that came from the take-off, or should have, and does not say what the take-off says now. */
export type ApartLine = {
  /** The cost line; undefined where the take-off has something that stands on no line. */
  readonly line: CostLine | undefined
  /** What the take-off says; undefined where it has nothing of the kind any more. */
  readonly offered: OfferedLine | undefined
}

/**
 * Where an item's cost lines and the take-off have come apart: a build-up or a dimension was changed since, a gate was
 * given a build-up of its own, or a quantity was changed by hand. Empty for an item that nothing was taken over for.
 *
 * @param offered the lines that the take-off offers for this item
 */
export function apartFromTakeOff(
  materials: readonly CostLine[],
  offered: readonly OfferedLine[],
): readonly ApartLine[] {
  const taken = materials.filter(fromTakeOff)
  if (taken.length === 0) return []
  const byPart = new Map(offered.map((line) => [line.from, line]))
  const ofLines = taken.flatMap((line): ApartLine[] => {
    const now = byPart.get(line.from)
    if (now === undefined) return isZero(line.quantity) ? [] : [{ line, offered: undefined }]
    const same = line.unit === now.unit && sameFigure(line.quantity, now.quantity)
    return same ? [] : [{ line, offered: now }]
  })
  const standing = new Set(taken.map(({ from }) => from))
  const missing = offered.filter(({ from }) => !standing.has(from))
  return [...ofLines, ...missing.map((line) => ({ line: undefined, offered: line }))]
}

function sameFigure(left: string, right: string): boolean {
  return compareLengths(numberOf(left), numberOf(right)) === 0
}

function isZero(quantity: string): boolean {
  return sameFigure(quantity, '0')
}
