import type { Millimetres } from '../amounts/length.ts'
import { addRatios, compareRatios, multiplyRatios, type Ratio, ratio } from '../amounts/ratio.ts'
import { roundHalfUp } from '../amounts/round.ts'
import { scaledInteger } from '../amounts/typedNumber.ts'

/** Exact arithmetic for the take-off: lengths stay quotients of whole numbers until a root or π comes in. */

export const nothing: Ratio = ratio(0n, 1n)
export const one: Ratio = ratio(1n, 1n)

export function subtractRatios(left: Ratio, right: Ratio): Ratio {
  if (left.under === right.under) return { over: left.over - right.over, under: left.under }
  return addRatios(left, { over: -right.over, under: right.under })
}

export function divideRatios(left: Ratio, right: Ratio): Ratio {
  return ratio(left.over * right.under, left.under * right.over)
}

export function halved(value: Ratio): Ratio {
  return { over: value.over, under: value.under * 2n }
}

export function times(value: Ratio, count: number): Ratio {
  return { over: value.over * BigInt(count), under: value.under }
}

export function negative(value: Ratio): Ratio {
  return { over: -value.over, under: value.under }
}

export function sizeOf(value: Ratio): Ratio {
  return value.over < 0n ? negative(value) : value
}

export function larger(left: Ratio, right: Ratio): Ratio {
  return compareRatios(left, right) < 0 ? right : left
}

export function smaller(left: Ratio, right: Ratio): Ratio {
  return compareRatios(left, right) > 0 ? right : left
}

/** The whole number at or above a ratio of zero or more. */
export function ceilingOf(value: Ratio): number {
  return Number((value.over + value.under - 1n) / value.under)
}

/** The whole number at or below a ratio of zero or more. */
export function floorOf(value: Ratio): number {
  return Number(value.over / value.under)
}

const safe = BigInt(Number.MAX_SAFE_INTEGER)

/** The same value with the smallest numbers: keeps a chain of sums from growing. */
export function lowestTerms(value: Ratio): Ratio {
  if (value.over === 0n) return nothing
  if (value.under === 1n) return value
  let [left, right] = [value.over < 0n ? -value.over : value.over, value.under]
  // Euclid on big numbers only until both fit into ordinary ones, which are far quicker.
  while (right !== 0n && (left > safe || right > safe)) [left, right] = [right, left % right]
  const common = right === 0n ? left : commonDivisor(Number(left), Number(right))
  if (common === 1) return value
  const divisor = BigInt(common)
  return { over: value.over / divisor, under: value.under / divisor }
}

/** Euclid; the last steps, on numbers of 31 bits, are those that a processor takes fastest. */
function commonDivisor(left: number, right: number): number {
  let [high, low] = [left, right]
  while (low > 0x7fffffff) {
    const rest = high % low
    high = low
    low = rest
  }
  if (low === 0) return high
  let [one, other] = [low | 0, (high % low) | 0]
  while (other !== 0) {
    const rest = (one % other) | 0
    one = other
    other = rest
  }
  return one
}

/** The sum of many: those of one denominator are added first, so that the numbers stay small. */
export function sumOf(values: readonly Ratio[]): Ratio {
  const byUnder = new Map<bigint, bigint>()
  for (const value of values) byUnder.set(value.under, (byUnder.get(value.under) ?? 0n) + value.over)
  let sum = nothing
  for (const [under, over] of byUnder) sum = lowestTerms(addRatios(sum, { over, under }))
  return sum
}

/** A number of the file format, exact. */
export function numberOf(typed: string): Ratio {
  return ratio(scaledInteger(typed, 6), 1_000_000n)
}

/** 1 + percent/100, exact; an empty percent adds nothing. */
export function withPercent(percent: string): Ratio {
  return percent === '' ? one : ratio(100_000_000n + scaledInteger(percent, 6), 100_000_000n)
}

export function multiplied(...values: readonly Ratio[]): Ratio {
  return values.reduce(multiplyRatios, one)
}

/** A float of millimetres as a length of whole nanometres, rounded to the nearest. */
export function fromMillimetres(millimetres: number): Millimetres {
  return ratio(BigInt(Math.round(millimetres * 1e6)), 1_000_000n)
}

/** As a float; for what is not exact anyway. */
export function asNumber(value: Ratio): number {
  if (value.under <= safe && value.over <= safe && -safe <= value.over)
    return Number(value.over) / Number(value.under)
  const whole = value.over / value.under
  return Number(whole) + Number(value.over % value.under) / Number(value.under)
}

/** Rounded half up to three digits after the point, as a number of the file format. Of zero or more. */
export function thousandthsText(value: Ratio): string {
  const figures = roundHalfUp(value.over * 1000n, value.under)
    .toString()
    .padStart(4, '0')
  return `${figures.slice(0, -3)}.${figures.slice(-3)}`.replace(/\.?0+$/, '')
}
