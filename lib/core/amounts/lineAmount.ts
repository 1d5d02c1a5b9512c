import type { Minor } from './money.ts'
import type { Ratio } from './ratio.ts'
import { roundHalfUp } from './round.ts'
import { scaledInteger } from './typedNumber.ts'

/** Quantities, prices, hours and rates have up to six digits after the point, percentages up to four. */
const millionths = 1_000_000n

/**
 * What a line actually came to, in minor units, where the books put that in the place of its planned amount. A symbol, so
 * that no file can say it.
 */
export const actualAmount: unique symbol = Symbol('actual amount')
export type MayBeActual = { readonly [actualAmount]?: Minor }

/**
 * A cost line's exact amount in whole units of the currency: quantity × unit price × (1 + tax/100). An empty price is
 * "not priced yet" and counts as 0.
 */
export function exactCostLine(line: {
  readonly quantity: string
  readonly unitPrice: string
  readonly taxPercent: string
}): Ratio {
  if (line.unitPrice === '') return { over: 0n, under: 1n }
  const net = scaledInteger(line.quantity, 6) * scaledInteger(line.unitPrice, 6)
  if (line.taxPercent === '0') return { over: net, under: millionths * millionths }
  const taxed = net * (millionths + scaledInteger(line.taxPercent, 4))
  return { over: taxed, under: millionths * millionths * millionths }
}

/** A labour line's or an hours entry's exact amount in whole units of the currency. An empty rate counts as 0. */
export function exactLabour(line: { readonly hours: string; readonly rate: string }): Ratio {
  if (line.rate === '') return { over: 0n, under: 1n }
  return {
    over: scaledInteger(line.hours, 6) * scaledInteger(line.rate, 6),
    under: millionths * millionths,
  }
}

/**
 * A cost line's amount: exact, then rounded once, half away from zero, to the minor unit. Whole-number arithmetic
 * throughout, so nothing is rounded before that. Rule 1 of the file format.
 */
export function costLineAmount(
  line: Parameters<typeof exactCostLine>[0] & MayBeActual,
  digits: number,
): Minor {
  return line[actualAmount] ?? rounded(exactCostLine(line), digits)
}

/** A cost line's amount as it enters the pot: a credit is taken off. */
export function signedCostAmount(
  line: Parameters<typeof costLineAmount>[0] & { readonly credit: boolean },
  digits: number,
): Minor {
  return line.credit ? -costLineAmount(line, digits) : costLineAmount(line, digits)
}

/** A labour line's or an hours entry's amount: hours × rate, rounded like a cost line. */
export function labourAmount(
  line: { readonly hours: string; readonly rate: string } & MayBeActual,
  digits: number,
): Minor {
  return line[actualAmount] ?? rounded(exactLabour(line), digits)
}

function rounded(exact: Ratio, digits: number): Minor {
  return roundHalfUp(exact.over * 10n ** BigInt(digits), exact.under)
}
