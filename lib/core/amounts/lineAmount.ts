import { ExactDecimal } from './exactDecimal.ts'
import type { Minor } from './money.ts'

/**
 * A cost line's amount: quantity × unit price × (1 + tax/100), rounded once, half away from zero, to the minor unit.
 * An empty price is "not priced yet" and counts as 0. Rule 1 of the file format.
 */
export function costLineAmount(
  line: { readonly quantity: string; readonly unitPrice: string; readonly taxPercent: string },
  digits: number,
): Minor {
  if (line.unitPrice === '') return 0n
  const net = new ExactDecimal(line.quantity).times(line.unitPrice)
  // 100 + tax over 100 keeps the product exact: the point moves two places in toMinor.
  const untaxed = line.taxPercent === '0' || line.taxPercent === ''
  return untaxed ? toMinor(net, digits) : toMinor(net.times(new ExactDecimal(line.taxPercent).plus(100)), digits - 2)
}

/** A labour line's or an hours entry's amount: hours × rate, rounded like a cost line. An empty rate counts as 0. */
export function labourAmount(line: { readonly hours: string; readonly rate: string }, digits: number): Minor {
  if (line.rate === '') return 0n
  return toMinor(new ExactDecimal(line.hours).times(line.rate), digits)
}

function toMinor(exact: InstanceType<typeof ExactDecimal>, digits: number): Minor {
  return BigInt(exact.times(new ExactDecimal(10).pow(digits)).toDecimalPlaces(0).toFixed(0))
}
