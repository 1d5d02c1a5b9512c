import { journalOf, trialBalance } from '../../../../lib/core/ledger/journal.ts'
import { accountWords, trialBalanceWords } from '../../../../lib/words/booksText.ts'
import { moneyWords } from '../../../../lib/words/money.ts'
import { shareNames } from '../../../../lib/words/shareText.ts'
import { FigureTable } from '../../../ui/FigureTable.tsx'
import { FoldedPart } from '../../../ui/FoldedPart.tsx'
import { Panel } from '../../../ui/Panel.tsx'
import type { BooksFigures } from '../booksFigures.ts'

/** The closing table of the books in double entry: every amount stands on two accounts, so both sums are equal. */
export function TrialBalancePanel({ figures: { notebook, statement } }: { figures: BooksFigures }) {
  const asked = statement.ok ? statement.value.asked : undefined
  const balance = trialBalance(journalOf(notebook, asked))
  const money = (minor: bigint) => moneyWords(minor, notebook.currency)
  const accounts = accountWords(shareNames(notebook))
  return (
    <Panel heading="Do the books add up?" id="trial-balance">
      <p>{trialBalanceWords(balance.debit === balance.credit)}</p>
      <FoldedPart summary="The trial balance">
        <FigureTable
          caption="Trial balance: both sides of every account"
          columns={[
            { label: 'Account' },
            { label: 'Debit', figures: true },
            { label: 'Credit', figures: true },
            { label: 'Balance', figures: true },
          ]}
          rows={balance.rows.map((row) => [
            accounts[row.account],
            money(row.debit),
            money(row.credit),
            money(row.balance),
          ])}
          foot={[['Sum', money(balance.debit), money(balance.credit), money(balance.debit - balance.credit)]]}
        />
      </FoldedPart>
    </Panel>
  )
}
