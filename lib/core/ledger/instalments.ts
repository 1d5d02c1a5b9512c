import type { Instalments } from '../agreement/notebook.ts'
import { isCalendarDay } from '../amounts/calendarDay.ts'
import { minorUnits, moneyText } from '../amounts/money.ts'
import { isNumber } from '../amounts/typedNumber.ts'
import type { FaultFacts } from '../faults.ts'

type InstalmentFault = FaultFacts & { path: (string | number)[] }

/**
 * What is wrong with a payment plan besides its single figures: the parts have to add to exactly the total, and their
 * days to follow one another (two on one day will do). Paths begin inside the instalments. A figure or a day that is
 * none in itself is another fault's matter: it is left out here, and with it the sum.
 */
export function instalmentFaults(
  { total, parts }: Pick<Instalments, 'total' | 'parts'>,
  digits: number,
): readonly InstalmentFault[] {
  return [...sumFaults(total, parts, digits), ...orderFaults(parts)]
}

function sumFaults(total: string, parts: Instalments['parts'], digits: number): InstalmentFault[] {
  if (![total, ...parts.map(({ amount }) => amount)].every((amount) => isNumber(amount, digits))) return []
  const sum = parts.reduce((added, { amount }) => added + minorUnits(amount, digits), 0n)
  const over = sum - minorUnits(total, digits)
  if (over === 0n) return []
  return [
    {
      path: ['total'],
      kind: 'instalments-sum',
      total,
      sum: moneyText(sum, digits),
      difference: moneyText(over < 0n ? -over : over, digits),
      way: over < 0n ? 'less' : 'more',
    },
  ]
}

function orderFaults(parts: Instalments['parts']): InstalmentFault[] {
  return parts.flatMap(({ on }, index) => {
    const before = parts[index - 1]?.on
    if (before === undefined || !isCalendarDay(on) || !isCalendarDay(before) || on >= before) return []
    return [{ path: ['parts', index, 'on'], kind: 'instalments-order' as const, on, before }]
  })
}
