import { placesOf } from '../../../../lib/core/shares/itemShares.ts'
import { writerOf } from '../../../../lib/forms/book.ts'
import { accountWords } from '../../../../lib/words/account/accountText.ts'
import { arrangementsTitle } from '../../../../lib/words/arrangementText.ts'
import { enteredWords } from '../../../../lib/words/entryText.ts'
import { itemTitle } from '../../../../lib/words/itemWords.ts'
import { ButtonLink } from '../../../ui/ButtonLink.tsx'
import { LedTo } from '../../../ui/LedTo.tsx'
import { Panel } from '../../../ui/Panel.tsx'
import { AccountNotice } from '../../server/account/AccountNotice.tsx'
import { BalanceView } from '../../server/BalanceView.tsx'
import { BookEntry } from '../../server/BookEntry.tsx'
import { CapNotice } from '../../server/CapNotice.tsx'
import { EntryPart } from '../../server/EntryPart.tsx'
import { InstalmentsPanel } from '../../server/InstalmentsPanel.tsx'
import { NotebookShell } from '../../server/NotebookShell.tsx'
import { openNotebook } from '../../server/opened.ts'

export const metadata = { title: 'Money and hours' }

export default async function MoneyPage({ params }: { params: Promise<{ notebookId: string }> }) {
  const { notebookId } = await params
  const opened = await openNotebook(notebookId)
  const { notebook, household } = opened
  const titles = new Map(
    placesOf(notebook).map(({ item, kind }) => [
      item.id,
      itemTitle({ kind, name: item.name, key: `item:${item.id}` }),
    ]),
  )
  const entries = notebook.contributions
  const own = entries.filter((entry) => writerOf(entry) === household)
  return (
    <NotebookShell
      opened={opened}
      page="money"
      title="Money and hours"
      lead="What each household was asked for, what it has given, and what is left to give. Only what has been given counts as given."
    >
      <AccountNotice opened={opened} page={`/notebook/${notebookId}/final-account`} />
      <BalanceView opened={opened} />
      <CapNotice opened={opened} />
      <div className="button-row">
        <ButtonLink href={`/notebook/${notebookId}/books`}>The books: planned against actual</ButtonLink>
        <ButtonLink href={`/notebook/${notebookId}/arrangements`}>{arrangementsTitle}</ButtonLink>
        <ButtonLink href={`/notebook/${notebookId}/final-account`}>{accountWords.title}</ButtonLink>
      </div>
      <InstalmentsPanel opened={opened} />
      {await EntryPart({ opened })}
      <Panel heading="The book" id="book">
        <LedTo mark={`${own.length}`} says={enteredWords}>
          {entries.length === 0 ? (
            <p>Nothing has been entered yet.</p>
          ) : (
            <ol className="item-rows">
              {entries.map((entry, index) => (
                <BookEntry
                  // biome-ignore lint/suspicious/noArrayIndexKey: an entry never moves in the book
                  key={index}
                  opened={opened}
                  index={index}
                  entry={entry}
                  item={titles.get(entry.for) ?? 'the whole fence'}
                  ledTo={entry === own.at(-1)}
                />
              ))}
            </ol>
          )}
        </LedTo>
      </Panel>
    </NotebookShell>
  )
}
