import { spentBeyondPlan } from '../core/ledger/onNoLine.ts'
import { booksOfItem, type ItemStanding } from '../core/ledger/plannedAgainstActual.ts'
import { differenceOf } from './booksText.ts'
import { moneyWords } from './money.ts'

/** What an item comes to against its plan; “as planned” only where that was marked, and not for want of entries. */
export function againstPlanWords(items: readonly ItemStanding[], currency: string): string {
  const sum = (key: 'counts' | 'planned') => items.reduce((total, item) => total + item[key], 0n)
  const known = items.map(booksOfItem)
  if (known.every((one) => one === 'nothing')) return 'nothing entered yet'
  if (!known.includes('marked') && sum('counts') === sum('planned')) return 'nothing marked by both yet'
  return differenceOf(sum('counts'), sum('planned'), currency)
}

/** Where more was spent than planned and what counts does not say so: on no line, or not marked by both yet. */
export function spentBeyondWords(items: readonly ItemStanding[], currency: string): string | undefined {
  const beyond = spentBeyondPlan(items)
  if (beyond === undefined) return undefined
  return `${moneyWords(beyond, currency)} more than planned was spent, on lines and on no line together`
}

/** What of an entry is on no line of its item. */
export function onNoLineWords(amount: string, entry: string): string {
  return `On no line: ${amount} (${entry}).`
}

/** How it comes to a line: `writer` is the other household where that one wrote it. */
export function toALineWords(writer: string | undefined): string {
  const again = 'with its lines, hours with their task'
  return writer === undefined
    ? `To put what you wrote on lines of the plan, take the entry back and enter it again ${again}.`
    : `To put what ${writer} wrote on lines of the plan, ${writer} takes the entry back and enters it again ${again}.`
}
