import { Decimal } from 'decimal.js'

/**
 * Exact decimals for what people typed. The longest legal product (18 digits × 18 digits × 7 digits) has 43 digits;
 * decimal.js' default of 20 would cut it, 100 never does. Half-way cases go away from zero (rule 1 of the file format).
 */
export const ExactDecimal = Decimal.clone({
  precision: 100,
  rounding: Decimal.ROUND_HALF_UP,
  toExpNeg: -200,
  toExpPos: 200,
})

/** The form of every number in a notebook file. */
const numberForm = /^(0|[1-9][0-9]{0,11})(?:\.([0-9]+))?$/

/** Whether `text` is a number of the file format with at most `fractionDigits` digits after the point. */
export function isNumber(text: string, fractionDigits: number): boolean {
  const match = numberForm.exec(text)
  return match !== null && (match[2]?.length ?? 0) <= fractionDigits
}

/**
 * A number of the file format as a whole count of its `fractionDigits`-th decimal place: ("1.5", 6) is 1500000n.
 * Throws on text that `isNumber` refuses: the file was not checked.
 */
export function scaledInteger(text: string, fractionDigits: number): bigint {
  const match = numberForm.exec(text)
  const fraction = match?.[2] ?? ''
  if (match === null || fraction.length > fractionDigits) throw new Error(`not a checked number: ${text}`)
  return BigInt((match[1] ?? '0') + fraction.padEnd(fractionDigits, '0'))
}
