import type { Minor } from './money.ts'
import { roundHalfUp } from './round.ts'
import { scaledInteger } from './typedNumber.ts'

/** Quantities, prices, hours and rates have up to six digits after the point, percentages up to four. */
const millionths = 1_000_000n

/**
 * A cost line's amount: quantity × unit price × (1 + tax/100), rounded once, half away from zero, to the minor unit.
 * Whole-number arithmetic throughout, so nothing is rounded before that. An empty price is "not priced yet" and counts
 * as 0. Rule 1 of the file format.
 */
export function costLineAmount(
  line: { readonly quantity: string; readonly unitPrice: string; readonly taxPercent: string },
  digits: number,
): Minor {
  if (line.unitPrice === '') return 0n
  const net = scaledInteger(line.quantity, 6) * scaledInteger(line.unitPrice, 6)
  const untaxed = line.taxPercent === '0'
  return untaxed
    ? rounded(net, millionths * millionths, digits)
    : rounded(
        net * (millionths + scaledInteger(line.taxPercent, 4)),
        millionths * millionths * millionths,
        digits,
      )
}

/** A cost line's amount as it enters the pot: a credit is taken off. */
export function signedCostAmount(
  line: Parameters<typeof costLineAmount>[0] & { readonly credit: boolean },
  digits: number,
): Minor {
  return line.credit ? -costLineAmount(line, digits) : costLineAmount(line, digits)
}

/** A labour line's or an hours entry's amount: hours × rate, rounded like a cost line. An empty rate counts as 0. */
export function labourAmount(line: { readonly hours: string; readonly rate: string }, digits: number): Minor {
  if (line.rate === '') return 0n
  return rounded(scaledInteger(line.hours, 6) * scaledInteger(line.rate, 6), millionths * millionths, digits)
}

function rounded(exact: bigint, scale: bigint, digits: number): Minor {
  return roundHalfUp(exact * 10n ** BigInt(digits), scale)
}
