import { lengthOf, type Millimetres } from '../amounts/length.ts'
import type { Ratio } from '../amounts/ratio.ts'
import { lowestTerms, nothing, numberOf } from './exact.ts'
import type { Found } from './finding.ts'

/** The same few lengths are asked for by every section: what was read stays known, up to a number that no fence has. */
const known = new Map<string, Millimetres>()

function readLength(typed: string): Millimetres {
  const before = known.get(typed)
  if (before !== undefined) return before
  const length = lowestTerms(lengthOf(typed))
  if (known.size > 2000) known.clear()
  known.set(typed, length)
  return length
}

/** A length that the take-off can't do without: missing or zero is found and gives undefined. */
export function neededLength(typed: string, path: string, found: Found): Millimetres | undefined {
  if (typed === '') {
    found(path, { kind: 'missing' })
    return undefined
  }
  return aboveZero(typed, path, found)
}

/** A length that may be left out, but not be zero. */
export function aboveZero(typed: string, path: string, found: Found): Millimetres | undefined {
  if (typed === '') return undefined
  const length = readLength(typed)
  if (length.over > 0n) return length
  found(path, { kind: 'zero', typed })
  return undefined
}

/** A length where empty means none. */
export function lengthOrNothing(typed: string): Millimetres {
  return typed === '' ? nothing : readLength(typed)
}

/** A number where empty means `otherwise`. */
export function numberOr(typed: string, otherwise: Ratio): Ratio {
  return typed === '' ? otherwise : lowestTerms(numberOf(typed))
}

/** A count where empty means `otherwise`: a fraction counts as the whole number above it. */
export function countOr(typed: string, otherwise: number): number {
  if (typed === '') return otherwise
  const { over, under } = numberOf(typed)
  return Number((over + under - 1n) / under)
}
