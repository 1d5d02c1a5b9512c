import type { Notebook } from '../../../lib/core/agreement/notebook.ts'
import { type Minor, minorUnits, moneyText } from '../../../lib/core/amounts/money.ts'
import type { InstalmentStanding } from '../../../lib/core/ledger/instalmentStanding.ts'
import { paymentPlanStanding } from '../../../lib/core/ledger/paymentPlan.ts'
import { digitsOf } from '../../../lib/core/shares/statement.ts'
import { moneyWords } from '../../../lib/words/money.ts'
import type { MoreInstalment } from '../forms/moreInstalment.ts'
import { booksFigures } from './booksFigures.ts'
import type { Opened } from './opened.ts'
import { today } from './today.ts'

/** The payment plan of what the books are held against, as it stands today; undefined where none is agreed. */
export function instalmentsNow(opened: Opened):
  | {
      readonly notebook: Notebook
      readonly standing: InstalmentStanding
      /** What is to be written as one more instalment: what the plan falls short by, less what the draft adds to it. */
      readonly more: Minor
    }
  | undefined {
  const { notebook, statement } = booksFigures(opened)
  const standing = paymentPlanStanding(notebook, statement, today())
  if (standing === undefined) return undefined
  const drafted = opened.notebook.arrangements?.instalments
  const added =
    drafted?.from === standing.from ? minorUnits(drafted.total, digitsOf(notebook)) - standing.total : 0n
  const more = standing.short - added
  return { notebook, standing, more: more > 0n ? more : 0n }
}

/** What is to be written as one more instalment, as the form is given it; undefined where nothing is. */
export function moreInstalment(opened: Opened): MoreInstalment | undefined {
  const plan = instalmentsNow(opened)
  if (plan === undefined || plan.more === 0n) return undefined
  const { notebook, more } = plan
  const digits = digitsOf(notebook)
  return { amount: moneyText(more, digits), words: moneyWords(more, notebook.currency), digits }
}
