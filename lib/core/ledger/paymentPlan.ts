import type { Notebook } from '../agreement/notebook.ts'
import type { Result } from '../result.ts'
import { digitsOf, type Statement } from '../shares/statement.ts'
import { type InstalmentStanding, instalmentStanding } from './instalmentStanding.ts'
import { stillInMoney } from './stillInMoney.ts'
import { transfersThatCount } from './transfers.ts'

/**
 * The payment plan of a notebook as it stands on a day, the one reading of it for every screen and paper; undefined where
 * none is agreed.
 *
 * @param statement what the books come to; where it can't be worked out the plan is held against the payments alone
 * @param today ISO 8601
 */
export function paymentPlanStanding(
  notebook: Notebook,
  statement: Result<Statement>,
  today: string,
): InstalmentStanding | undefined {
  const plan = notebook.arrangements?.instalments
  if (plan === undefined) return undefined
  const digits = digitsOf(notebook)
  const still = statement.ok ? stillInMoney(notebook, statement.value)[plan.from] : undefined
  return instalmentStanding(plan, transfersThatCount(notebook, digits), today, digits, still)
}
