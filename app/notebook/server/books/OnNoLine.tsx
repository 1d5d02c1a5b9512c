import type { EntryOnNoLine } from '../../../../lib/core/ledger/onNoLine.ts'
import { writerOf } from '../../../../lib/forms/book.ts'
import { onNoLineWords, toALineWords } from '../../../../lib/words/againstPlanText.ts'
import { entryName } from '../../../../lib/words/booksText.ts'
import { moneyWords } from '../../../../lib/words/money.ts'
import { shareNames } from '../../../../lib/words/shareText.ts'
import { whyItStays } from '../entryStays.ts'
import type { Opened } from '../opened.ts'

/** The entries for an item that are on no line of it, each with a way to it, and how they come to one; nothing without any. */
export function OnNoLine({ opened, loose }: { opened: Opened; loose: readonly EntryOnNoLine[] }) {
  const { notebook, notebookId, document, household } = opened
  if (loose.length === 0) return null
  const written = (entry: number) =>
    (document.contributions as readonly Record<string, unknown>[])[entry] ?? {}
  const movable = loose.map(({ entry }) => written(entry)).filter((one) => whyItStays(one) === undefined)
  const writers = new Set(movable.map((one) => (writerOf(one) === 'b' ? 'b' : 'a')))
  return (
    <>
      <ul className="finding-list">
        {loose.map(({ entry, amount }) => (
          <li key={entry}>
            {onNoLineWords(moneyWords(amount, notebook.currency), entryName(notebook.contributions[entry]))}{' '}
            <a href={`/notebook/${notebookId}/money#book-entry-${entry}`}>To the entry</a>
          </li>
        ))}
      </ul>
      {[...writers].map((writer) => (
        <p key={writer}>{toALineWords(writer === household ? undefined : shareNames(notebook)[writer])}</p>
      ))}
    </>
  )
}
