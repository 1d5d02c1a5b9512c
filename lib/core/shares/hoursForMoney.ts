import type { Hundredths } from '../amounts/hours.ts'
import type { Minor } from '../amounts/money.ts'
import { scaledInteger } from '../amounts/typedNumber.ts'

/**
 * The hours whose worth comes to an amount of money at a rate an hour, in hundredths, rounded up so that they cover it.
 *
 * @param amount in minor units, not below zero
 * @param rate as typed, with up to six digits after the point
 * @param digits after the point of the currency
 * @returns undefined at a rate of nothing
 */
export function hoursForMoney(amount: Minor, rate: string, digits: number): Hundredths | undefined {
  const millionths = scaledInteger(rate, 6)
  if (millionths === 0n) return undefined
  const over = amount * 100n * 1_000_000n
  const under = millionths * 10n ** BigInt(digits)
  return (over + under - 1n) / under
}
