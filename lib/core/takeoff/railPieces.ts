import type { Notebook } from '../agreement/notebook.ts'
import { compareLengths, type Millimetres } from '../amounts/length.ts'
import { ceilingOf, divideRatios, lowestTerms, subtractRatios, times } from './exact.ts'
import type { Bay } from './fenceTops.ts'
import type { Found } from './finding.ts'
import { countOr } from './neededLength.ts'

/** Rails of one section: alike pieces together. */
export type RailPieces = {
  readonly section: number
  readonly perBay: number
  /** Every piece to be cut, brace rails included. */
  readonly pieces: readonly { readonly length: Millimetres; readonly count: number }[]
  /** Joints within a bay, where pieces are let in. */
  readonly splices: number
  /** Rails of the bays, without the braces' own. */
  readonly rails: number
  readonly braceRails: number
}

/**
 * One piece from post centre to post centre for each rail of each bay, and one level rail for each brace assembly. A bay
 * longer than every length at hand takes spliced pieces where the build-up allows it, else it is found.
 *
 * @param longest of the stock and the measured pieces that the rails can be cut from; undefined where any length can be had
 */
export function railPieces(
  notebook: Notebook,
  section: number,
  bays: readonly Bay[],
  longest: Millimetres | undefined,
  found: Found,
): RailPieces {
  const path = `sections[${section}].buildUp.rails`
  const rails = notebook.sections[section]?.buildUp?.rails
  const perBay = countOr(rails?.count ?? '', 0)
  const counts = new Map<string, { length: Millimetres; count: number }>()
  const add = (length: Millimetres, count: number) => {
    const key = `${length.over}/${length.under}`
    counts.set(key, { length, count: (counts.get(key)?.count ?? 0) + count })
  }
  let splices = 0
  let tooLong: { rail: Millimetres; bays: number } | undefined
  const cut = (length: Millimetres, count: number) => {
    if (longest === undefined || compareLengths(length, longest) <= 0) return add(length, count)
    if (rails?.joints !== 'spliced') {
      const longer = tooLong === undefined || compareLengths(length, tooLong.rail) > 0
      tooLong = { rail: longer ? length : (tooLong?.rail ?? length), bays: (tooLong?.bays ?? 0) + 1 }
      return add(length, count)
    }
    const parts = ceilingOf(divideRatios(length, longest))
    add(longest, count * (parts - 1))
    add(lowestTerms(subtractRatios(length, times(longest, parts - 1))), count)
    splices += count * (parts - 1)
  }
  let braceRails = 0
  for (const bay of bays) {
    if (perBay > 0) cut(bay.along, perBay)
    if (!bay.brace) continue
    braceRails += 1
    cut(bay.length, 1)
  }
  if (tooLong !== undefined && longest !== undefined) {
    found(`${path}.stock`, {
      kind: 'rail-longer-than-stock',
      stock: longest,
      ...(tooLong as { rail: Millimetres; bays: number }),
    })
  }
  return {
    section,
    perBay,
    pieces: [...counts.values()],
    splices,
    rails: perBay * bays.length,
    braceRails,
  }
}
