import type { Notebook } from '../../core/agreement/notebook.ts'
import { paymentPlanStanding } from '../../core/ledger/paymentPlan.ts'
import { plannedAgainstActual } from '../../core/ledger/plannedAgainstActual.ts'
import { spendingOf } from '../../core/ledger/spentByDay.ts'
import type { Result } from '../../core/result.ts'
import { digitsOf, type Statement } from '../../core/shares/statement.ts'
import { shareNames } from '../shareText.ts'
import { type SpendingShown, spendingSteps } from './spendingSteps.ts'

/**
 * What the books of a notebook hold, day by day, against its plan and its payment plan.
 *
 * @param statement what the books come to
 * @param today ISO 8601, the day on which the books are read
 */
export function booksSpending(
  notebook: Notebook,
  statement: Result<Statement>,
  today: string | undefined,
): SpendingShown | undefined {
  const digits = digitsOf(notebook)
  const planned = plannedAgainstActual(notebook, digits).items.reduce((sum, item) => sum + item.planned, 0n)
  const instalments = paymentPlanStanding(notebook, statement, today ?? '')?.parts
  return spendingSteps(spendingOf(notebook, digits), planned, shareNames(notebook), instalments, today)
}
