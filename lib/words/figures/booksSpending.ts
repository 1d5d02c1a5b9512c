import type { Notebook } from '../../core/agreement/notebook.ts'
import { instalmentStanding } from '../../core/ledger/instalmentStanding.ts'
import { plannedAgainstActual } from '../../core/ledger/plannedAgainstActual.ts'
import { spendingOf } from '../../core/ledger/spentByDay.ts'
import { transfersThatCount } from '../../core/ledger/transfers.ts'
import { digitsOf } from '../../core/shares/statement.ts'
import { shareNames } from '../shareText.ts'
import { type SpendingShown, spendingSteps } from './spendingSteps.ts'

/**
 * What the books of a notebook hold, day by day, against its plan and its payment plan.
 *
 * @param today ISO 8601, the day on which the books are read
 */
export function booksSpending(notebook: Notebook, today: string | undefined): SpendingShown | undefined {
  const digits = digitsOf(notebook)
  const planned = plannedAgainstActual(notebook, digits).items.reduce((sum, item) => sum + item.planned, 0n)
  const plan = notebook.arrangements?.instalments
  const dues = plan
    ? instalmentStanding(plan, transfersThatCount(notebook, digits), today ?? '', digits).parts.map(
        ({ on, state }) => ({ on, met: state === 'paid' }),
      )
    : []
  return spendingSteps(spendingOf(notebook, digits), planned, shareNames(notebook), dues, today)
}
