import type { Notebook } from '../../../lib/core/agreement/notebook.ts'
import { type InstalmentStanding, instalmentStanding } from '../../../lib/core/ledger/instalmentStanding.ts'
import { stillInMoney } from '../../../lib/core/ledger/stillInMoney.ts'
import { transfersThatCount } from '../../../lib/core/ledger/transfers.ts'
import { digitsOf } from '../../../lib/core/shares/statement.ts'
import { booksFigures } from './booksFigures.ts'
import type { Opened } from './opened.ts'
import { today } from './today.ts'

/** The payment plan of what the books are held against, as it stands today; undefined where none is agreed. */
export function instalmentsNow(
  opened: Opened,
): { readonly notebook: Notebook; readonly standing: InstalmentStanding } | undefined {
  const { notebook, statement } = booksFigures(opened)
  const plan = notebook.arrangements?.instalments
  if (plan === undefined) return undefined
  const digits = digitsOf(notebook)
  const still = statement.ok ? stillInMoney(notebook, statement.value)[plan.from] : undefined
  return {
    notebook,
    standing: instalmentStanding(plan, transfersThatCount(notebook, digits), today(), digits, still),
  }
}
