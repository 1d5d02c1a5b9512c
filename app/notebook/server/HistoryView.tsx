import type { Notebook } from '../../../lib/core/agreement/notebook.ts'
import type { HistoryEntry } from '../../../lib/store/historyChain.ts'
import {
  brokenHistoryAdvice,
  happeningTitle,
  happeningWords,
  historyGroups,
  historyHeadWords,
  sealedHistoryWords,
  shortHash,
} from '../../../lib/words/happeningText.ts'
import { householdNames } from '../../../lib/words/labels.ts'
import { ButtonLink } from '../../ui/ButtonLink.tsx'
import { Caution } from '../../ui/Caution.tsx'
import { Panel } from '../../ui/Panel.tsx'
import { HashDetails, HistoryEntryView } from './HistoryEntryView.tsx'
import { historyAddress } from './historyAsked.ts'
import type { HistoryShown } from './historyShown.ts'
import { changeWords } from './MarkBox.tsx'

/** A history: where it stands, whether it fits the locked copies, and its entries, newest first. */
export function HistoryView({
  shown,
  notebook,
  here,
  file,
  pageOf = () => undefined,
}: {
  shown: HistoryShown
  notebook: Notebook
  /** Where to look at what an entry tells; a reader has no such pages. */
  pageOf?: (entry: HistoryEntry) => string | undefined
  /** The address of this page, without what it asks for. */
  here: string
  /** The address of the whole history as a file. */
  file: string
}) {
  const names = householdNames(notebook)
  return (
    <>
      <HistoryHeadPanel shown={shown} file={file} />
      <Panel heading="What happened" aside={countWords(shown)}>
        <HistoryFilter shown={shown} here={here} />
        {shown.entries.length === 0 ? <p>Nothing here.</p> : null}
        <ol className="history">
          {shown.entries.map((entry) => (
            <HistoryEntryView
              key={entry.id}
              entry={entry}
              notebook={notebook}
              title={happeningTitle(entry, shown.titles)}
              page={pageOf(entry)}
              words={
                entry.kind === 'edit'
                  ? changeWords(entry.before, entry.after, names)
                  : [happeningWords(entry, shown.titles.get(entry.itemKey) ?? entry.itemKey, shown.titleOf)]
              }
            />
          ))}
        </ol>
        <HistoryPages shown={shown} here={here} />
      </Panel>
    </>
  )
}

function countWords({ found, head }: HistoryShown): string {
  return found === head.entry ? `${found} in all` : `${found} of ${head.entry}`
}

function HistoryHeadPanel({ shown, file }: { shown: HistoryShown; file: string }) {
  const { head, locked } = shown
  return (
    <Panel heading="Where it stands">
      <p>{historyHeadWords(head)}</p>
      {head.entry === 0 ? null : (
        <HashDetails
          summary={`Check number (SHA-256) of entry ${head.entry}: ${shortHash(head.hash)}`}
          hash={head.hash}
        />
      )}
      {locked.map(({ revision, head: printed, leads }) =>
        leads ? (
          <p key={revision}>{sealedHistoryWords(revision, printed.entry, leads)}</p>
        ) : (
          <Caution key={revision} title="The history does not fit a locked copy">
            <p>{sealedHistoryWords(revision, printed.entry, leads)}</p>
            <p>{brokenHistoryAdvice}</p>
          </Caution>
        ),
      )}
      <p className="quiet">
        Each entry’s check number covers the entry before it, so none can be changed without changing all that
        follow. It proves nothing against whoever runs the program until a locked copy is kept elsewhere.
      </p>
      <div className="button-row">
        <ButtonLink href={file} download>
          History (JSON)
        </ButtonLink>
      </div>
    </Panel>
  )
}

/** A plain form that asks for an address, so that it works without script. */
function HistoryFilter({ shown, here }: { shown: HistoryShown; here: string }) {
  const { asked, titles } = shown
  return (
    <form className="history-filter" method="get" action={here}>
      <div className="field">
        <label className="field-label" htmlFor="history-item">
          About
        </label>
        <select id="history-item" name="item" defaultValue={asked.item ?? ''}>
          <option value="">everything</option>
          {[...titles].map(([key, title]) => (
            <option key={key} value={key}>
              {title}
            </option>
          ))}
        </select>
      </div>
      <div className="field">
        <label className="field-label" htmlFor="history-kind">
          Kind
        </label>
        <select id="history-kind" name="kind" defaultValue={asked.group ?? ''}>
          <option value="">all kinds</option>
          {Object.entries(historyGroups).map(([name, { label }]) => (
            <option key={name} value={name}>
              {label}
            </option>
          ))}
        </select>
      </div>
      <button type="submit" className="button button-plain">
        Show
      </button>
    </form>
  )
}

function HistoryPages({ shown, here }: { shown: HistoryShown; here: string }) {
  const { asked, pages } = shown
  if (pages === 1) return null
  return (
    <nav className="history-pages" aria-label="Pages of the history">
      {asked.page === 1 ? null : (
        <ButtonLink href={historyAddress(here, asked, asked.page - 1)}>Newer</ButtonLink>
      )}
      <span>
        Page {asked.page} of {pages}
      </span>
      {asked.page === pages ? null : (
        <ButtonLink href={historyAddress(here, asked, asked.page + 1)}>Older</ButtonLink>
      )}
    </nav>
  )
}
