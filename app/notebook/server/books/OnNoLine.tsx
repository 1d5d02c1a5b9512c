import { entriesOnNoLine } from '../../../../lib/core/ledger/onNoLine.ts'
import { digitsOf } from '../../../../lib/core/shares/statement.ts'
import { writerOf } from '../../../../lib/forms/book.ts'
import { onNoLineWords, toALineWords } from '../../../../lib/words/againstPlanText.ts'
import { entryName } from '../../../../lib/words/booksText.ts'
import { moneyWords } from '../../../../lib/words/money.ts'
import { shareNames } from '../../../../lib/words/shareText.ts'
import { whyItStays } from '../entryStays.ts'
import type { Opened } from '../opened.ts'

/** Entries for an item that are on no line of it, each with a way to it and how it comes to a line; nothing without any. */
export function OnNoLine({ opened, id }: { opened: Opened; id: string }) {
  const { notebook, notebookId, document, household } = opened
  const loose = entriesOnNoLine(notebook, digitsOf(notebook)).filter(({ item }) => item === id)
  if (loose.length === 0) return null
  const written = document.contributions as readonly Record<string, unknown>[]
  return (
    <ul className="item-rows">
      {loose.map(({ entry, amount }) => {
        const stored = written[entry] ?? {}
        const writer = writerOf(stored) === 'b' ? 'b' : 'a'
        const by = writer === household ? undefined : shareNames(notebook)[writer]
        return (
          <li key={entry}>
            <p>
              {onNoLineWords(moneyWords(amount, notebook.currency), entryName(notebook.contributions[entry]))}{' '}
              {whyItStays(stored) === undefined ? toALineWords(by) : null}{' '}
              <a href={`/notebook/${notebookId}/money#book-entry-${entry}`}>To the entry</a>
            </p>
          </li>
        )
      })}
    </ul>
  )
}
