import Link from 'next/link'
import type { Notebook } from '../../../lib/core/agreement/notebook.ts'
import type { HistoryEntry } from '../../../lib/store/historyChain.ts'
import { shownMoment } from '../../../lib/words/day.ts'
import { shortHash } from '../../../lib/words/happeningText.ts'
import { householdName } from '../../../lib/words/labels.ts'
import { HouseholdTag } from '../../ui/HouseholdTag.tsx'

/** One entry of the history: its number, who, when, what was before and after, and its hash. */
export function HistoryEntryView({
  entry,
  notebook,
  title,
  page,
  words,
}: {
  entry: HistoryEntry
  notebook: Notebook
  title: string
  /** Where to look at what it tells, for whoever may. */
  page: string | undefined
  words: readonly string[]
}) {
  const { household, number, at, hash } = entry
  return (
    <li className="history-entry" id={`entry-${number}`}>
      <p className="history-head">
        <span className="history-number">{number}</span>
        <strong>
          {page === undefined ? (
            title
          ) : (
            <Link href={page} prefetch={false}>
              {title}
            </Link>
          )}
        </strong>
        <HouseholdTag household={household} name={householdName(notebook, household)} />
        <span className="quiet">{shownMoment(at)}</span>
      </p>
      {words.length === 1 ? (
        <p className="message-text">{words[0]}</p>
      ) : (
        <ul>
          {words.map((line) => (
            <li key={line}>{line}</li>
          ))}
        </ul>
      )}
      <HashDetails summary={`Check number ${shortHash(hash)}`} hash={hash} />
    </li>
  )
}

/** A hash in short, and whole where it is asked for. */
export function HashDetails({ summary, hash }: { summary: string; hash: string }) {
  return (
    <details className="history-hash">
      <summary>{summary}</summary>
      <code>{hash}</code>
    </details>
  )
}
