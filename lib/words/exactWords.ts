import { moneyText } from '../core/amounts/money.ts'
import type { Ratio } from '../core/amounts/ratio.ts'
import { moneyWords } from './money.ts'

/** An exact decimal figure: 259.0000 is "259", 12.345 is "12.345". For ratios whose denominator is a power of ten. */
export function decimalWords(exact: Ratio): string {
  const digits = exact.under.toString().length - 1
  const text = moneyText(exact.over, digits)
  return text.includes('.') ? text.replace(/\.?0+$/, '') : text
}

/**
 * A fraction in its lowest terms: 30/90 is "1/3", a whole number stands alone. One that nobody could write down, as parts
 * of many unlike lengths add to, is a decimal cut off after twelve digits, and says so.
 */
export function fractionWords(exact: Ratio): string {
  if (exact.under >= reducible) return cutOff(exact)
  const { over, under } = lowest(exact)
  if (under >= writable) return cutOff(exact)
  return under === 1n ? `${over}` : `${over}/${under}`
}

const writable = 10n ** 9n
/** Finding the lowest terms of longer ones takes longer than anybody waits. */
const reducible = 10n ** 2_000n

function cutOff({ over, under }: Ratio): string {
  const digits = 12
  return `${moneyText((over * 10n ** BigInt(digits)) / under, digits)}…`
}

/** An exact amount in minor units: whole units as money, and what is left as a fraction of the smallest unit. */
export function exactMoneyWords(exact: Ratio, currency: string): string {
  const whole = exact.over / exact.under
  const rest = { over: exact.over % exact.under, under: exact.under }
  const money = moneyWords(whole, currency)
  return rest.over === 0n ? money : `${money} and ${fractionWords(rest)} of ${moneyWords(1n, currency)}`
}

function lowest({ over, under }: Ratio): Ratio {
  const shared = commonDivisor(over < 0n ? -over : over, under)
  return { over: over / shared, under: under / shared }
}

function commonDivisor(left: bigint, right: bigint): bigint {
  let [one, other] = [left, right]
  while (other !== 0n) [one, other] = [other, one % other]
  return one === 0n ? 1n : one
}
