import { contributionAmount } from '../../../../lib/core/ledger/contributed.ts'
import { placesOf } from '../../../../lib/core/shares/itemShares.ts'
import { digitsOf } from '../../../../lib/core/shares/statement.ts'
import { dayWords } from '../../../../lib/words/day.ts'
import { itemTitle } from '../../../../lib/words/itemWords.ts'
import { contributionWords, householdName } from '../../../../lib/words/labels.ts'
import { moneyWords } from '../../../../lib/words/money.ts'
import { shareNames } from '../../../../lib/words/shareText.ts'
import { FigureTable } from '../../../ui/FigureTable.tsx'
import { Page } from '../../../ui/Page.tsx'
import { Panel } from '../../../ui/Panel.tsx'
import { ContributionForm } from '../../forms/ContributionForm.tsx'
import { BalanceView } from '../../server/BalanceView.tsx'
import { enterContribution } from '../../server/bookActions.ts'
import { EntryTools } from '../../server/EntryTools.tsx'
import { NotebookShell } from '../../server/NotebookShell.tsx'
import { openNotebook } from '../../server/opened.ts'

export const metadata = { title: 'Money and hours' }

export default async function MoneyPage({ params }: { params: Promise<{ notebookId: string }> }) {
  const { notebookId } = await params
  const opened = await openNotebook(notebookId)
  const { notebook, household } = opened
  const digits = digitsOf(notebook)
  const titles = new Map(
    placesOf(notebook).map(({ item, kind }) => [
      item.id,
      itemTitle({ kind, name: item.name, key: `item:${item.id}` }),
    ]),
  )
  const entries = notebook.contributions
  return (
    <NotebookShell opened={opened} page="money">
      <Page
        title="Money and hours"
        lead="What each household was asked for, what it has given, and what is left to give. Only what has been given counts as given."
      >
        <BalanceView opened={opened} />
        <Panel heading="Enter what was given">
          <ContributionForm
            key={entries.length}
            initial={{
              household,
              kind: 'cash',
              amount: '',
              hours: '',
              rate: '',
              date: today(),
              for: '',
              note: '',
            }}
            base="new"
            save={enterContribution.bind(null, notebookId)}
            names={shareNames(notebook)}
            items={[...titles].map(([value, label]) => ({ value, label }))}
          />
        </Panel>
        <Panel heading="The book">
          {entries.length === 0 ? (
            <p>Nothing has been entered yet.</p>
          ) : (
            <FigureTable
              caption="Entries, in the order in which they were made"
              columns={[
                { label: 'What was given' },
                { label: 'By' },
                { label: 'On' },
                { label: 'For' },
                { label: 'Worth', figures: true },
                { label: 'Take back' },
              ]}
              rows={entries.map((entry, index) => [
                <>
                  {contributionWords[entry.kind]}
                  {entry.kind === 'hours' ? ` (${entry.hours} h at ${entry.rate || 'no rate'})` : ''}
                  {entry.note ? `: ${entry.note}` : ''}
                </>,
                householdName(notebook, entry.household),
                dayWords(entry.date),
                titles.get(entry.for) ?? 'the whole fence',
                entry.struck
                  ? 'taken back'
                  : moneyWords(
                      (entry.kind === 'refund' ? -1n : 1n) * contributionAmount(entry, digits),
                      notebook.currency,
                    ),
                <EntryTools key={`tools ${entry.date}`} opened={opened} index={index} entry={entry} />,
              ])}
            />
          )}
        </Panel>
      </Page>
    </NotebookShell>
  )
}

/** A suggestion for the date field, no more: the household says the date. */
function today(): string {
  return new Date().toISOString().slice(0, 10)
}
