import { booksOfItem, type ItemStanding } from '../core/ledger/plannedAgainstActual.ts'
import { differenceOf } from './booksText.ts'

/** What an item comes to against its plan; “as planned” only where that was marked, and not for want of entries. */
export function againstPlanWords(items: readonly ItemStanding[], currency: string): string {
  const sum = (key: 'counts' | 'planned') => items.reduce((total, item) => total + item[key], 0n)
  const known = items.map(booksOfItem)
  if (known.every((one) => one === 'nothing')) return 'nothing entered yet'
  if (!known.includes('marked') && sum('counts') === sum('planned')) return 'nothing marked by both yet'
  return differenceOf(sum('counts'), sum('planned'), currency)
}
