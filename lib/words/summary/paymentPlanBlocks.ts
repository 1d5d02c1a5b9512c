import type { Notebook } from '../../core/agreement/notebook.ts'
import type { Minor } from '../../core/amounts/money.ts'
import { paymentPlanStanding } from '../../core/ledger/paymentPlan.ts'
import { transfersThatCount } from '../../core/ledger/transfers.ts'
import type { Result } from '../../core/result.ts'
import { digitsOf, type Statement } from '../../core/shares/statement.ts'
import { dayWords } from '../day.ts'
import { instalmentSentences, instalmentWords, partStandingWords } from '../instalmentText.ts'
import { householdName } from '../labels.ts'
import { moneyWords } from '../money.ts'
import type { Block } from './block.ts'
import { unbroken } from './unbroken.ts'

/**
 * The payment plan against what was paid and what the balance still asks for, once anything was paid: what is planned stands in a chapter of its own. Nothing
 * without a day to hold it against.
 */
export function paymentPlanBlocks(
  notebook: Notebook,
  today: string | undefined,
  statement: Result<Statement>,
): Block[] {
  if (today === undefined || transfersThatCount(notebook, digitsOf(notebook)).length === 0) return []
  const standing = paymentPlanStanding(notebook, statement, today)
  if (standing === undefined) return []
  const money = (minor: Minor) => moneyWords(minor, notebook.currency)
  const names = { a: householdName(notebook, 'a'), b: householdName(notebook, 'b') }
  const { columns, foot } = instalmentWords
  return [
    { kind: 'paragraph', text: instalmentSentences(standing, names, notebook.currency).join(' ') },
    {
      kind: 'table',
      caption: 'The payment plan against what was paid',
      columns: [
        { title: columns.on },
        { title: columns.amount, figure: true },
        { title: columns.paid, figure: true },
        { title: columns.state },
      ],
      rows: standing.parts.map((part) => ({
        cells: [
          unbroken(dayWords(part.on)),
          money(part.amount),
          money(part.paid),
          partStandingWords(part, notebook.currency),
        ],
      })),
      foot: [foot, money(standing.total), money(standing.paid), ''],
    },
  ]
}
