import type { Contribution } from '../../../lib/core/agreement/notebook.ts'
import { statedAmount } from '../../../lib/core/ledger/contributed.ts'
import { digitsOf } from '../../../lib/core/shares/statement.ts'
import { writerOf } from '../../../lib/forms/book.ts'
import { standsAgain } from '../../../lib/forms/enteredTwice.ts'
import { fingerprintOf } from '../../../lib/store/fingerprint.ts'
import { dayWords } from '../../../lib/words/day.ts'
import { entryHoursWords } from '../../../lib/words/hoursText.ts'
import { contributionWords, householdName } from '../../../lib/words/labels.ts'
import { moneyWords } from '../../../lib/words/money.ts'
import { PressForm } from '../../ui/draft/PressForm.tsx'
import { HouseholdTag } from '../../ui/HouseholdTag.tsx'
import { takeEntryBack } from './bookActions.ts'
import { EnterAgain } from './EnterAgain.tsx'
import { EntryDetails } from './EntryDetails.tsx'
import { whyItStays } from './entryStays.ts'
import type { Opened } from './opened.ts'
import { TransferStanding } from './TransferStanding.tsx'

/** One entry of the book: what, by whom, when, for what, who wrote it; its writer can take it back with a reason. */
export function BookEntry({
  opened,
  index,
  entry,
  item,
  ledTo = false,
}: {
  opened: Opened
  index: number
  entry: Contribution
  item: string
  /** Whoever entered it just now is led to it. */
  ledTo?: boolean
}) {
  const { notebook, notebookId, household, document } = opened
  const amount = statedAmount(entry, digitsOf(notebook))
  const worth = moneyWords(entry.kind === 'refund' ? -amount : amount, notebook.currency)
  const writer = writerOf(entry) === 'b' ? 'b' : 'a'
  const written = (document.contributions as readonly unknown[])[index]
  return (
    <li
      className="book-entry"
      id={`book-entry-${index}`}
      data-struck={entry.struck ? '' : undefined}
      data-led-to={ledTo ? '' : undefined}
    >
      <p className="book-entry-head">
        <strong>
          {contributionWords[entry.kind]}
          {entry.kind === 'hours'
            ? ` (${[entry.task, entryHoursWords(entry, notebook.currency)].filter(Boolean).join(': ')})`
            : ''}
        </strong>
        <span className="figure">{entry.struck ? <s>{worth}</s> : worth}</span>
      </p>
      <p>
        <HouseholdTag household={entry.household} name={householdName(notebook, entry.household)} />,{' '}
        {dayWords(entry.date)}, for {item}
        {entry.note ? `: ${entry.note}` : ''}
      </p>
      <EntryDetails opened={opened} entry={entry} counts={amount} />
      <TransferStanding opened={opened} index={index} entry={entry} />
      <p className="quiet">
        Written by {householdName(notebook, writer)}.
        {entry.kind === 'hours' && entry.rate === ''
          ? ' Without a rate the hours are worth nothing in money.'
          : ''}
        {entry.struck
          ? ` Taken back by ${householdName(notebook, entry.struck.by)} on ${dayWords(entry.struck.on)}: ${entry.struck.why}. It counts as nothing.`
          : ''}
      </p>
      {entry.struck || writer !== household || whyItStays(entry) !== undefined ? null : (
        <details className="entry-tools">
          <summary>Take back</summary>
          <PressForm action={takeEntryBack.bind(null, notebookId)} label="Take this entry back">
            <input type="hidden" name="index" value={index} />
            <input type="hidden" name="fingerprint" value={fingerprintOf(written)} />
            <div className="field">
              <label className="field-label" htmlFor={`why-${index}`}>
                Why
              </label>
              <input id={`why-${index}`} name="why" type="text" maxLength={500} />
            </div>
          </PressForm>
        </details>
      )}
      {entry.struck && writer === household && !standsAgain(document, index) ? (
        <EnterAgain notebookId={notebookId} index={index} written={written} about={`${worth}, ${item}`} />
      ) : null}
    </li>
  )
}
