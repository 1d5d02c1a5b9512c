import { minorUnits, moneyText } from '../amounts/money.ts'
import { isNumber } from '../amounts/typedNumber.ts'
import type { FaultFacts } from '../faults.ts'

/**
 * An entry may not say more of its lines than it has: the fault, with the excess named. Undefined where it holds, or
 * where a figure is none in itself, which is another fault's matter.
 */
export function linesFault(
  entry: { readonly amount: string; readonly lines: readonly { readonly amount: string }[] },
  digits: number,
): FaultFacts | undefined {
  const amounts = entry.lines.map(({ amount }) => amount)
  if (![entry.amount, ...amounts].every((amount) => isNumber(amount, digits))) return undefined
  const sum = amounts.reduce((added, amount) => added + minorUnits(amount, digits), 0n)
  const excess = sum - minorUnits(entry.amount, digits)
  if (excess <= 0n) return undefined
  return {
    kind: 'lines-above-amount',
    amount: entry.amount,
    sum: moneyText(sum, digits),
    excess: moneyText(excess, digits),
  }
}
