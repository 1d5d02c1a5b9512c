import type { BeyondTolerance } from '../core/ledger/tolerance.ts'
import { itemTitle } from './itemWords.ts'
import { moneyWords } from './money.ts'

/** "Along the gardens came to $530.00, more than 10 percent above the plan: both look at it again". */
export function beyondToleranceWords(
  { kind, name, id, actual, percent }: BeyondTolerance,
  currency: string,
): string {
  const title = itemTitle({ kind, name, key: `item:${id}` })
  return `${title} came to ${moneyWords(actual, currency)}, more than ${percent} percent above the plan: both look at it again`
}

/** The same with its figures, where the item stands in the books. */
export function beyondToleranceFigures(
  { planned, allowed, actual, percent }: BeyondTolerance,
  currency: string,
): string {
  const money = (minor: bigint) => moneyWords(minor, currency)
  return `Planned ${money(planned)}; with the agreed tolerance of ${percent} percent it may come to ${money(allowed)}. It came to ${money(actual)}, so it lost its marks and needs both again.`
}
