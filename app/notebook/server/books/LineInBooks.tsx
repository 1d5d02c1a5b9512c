import { moneyText } from '../../../../lib/core/amounts/money.ts'
import { lineName } from '../../../../lib/core/ledger/findLine.ts'
import type { LineStanding } from '../../../../lib/core/ledger/plannedAgainstActual.ts'
import { households } from '../../../../lib/core/people/household.ts'
import { digitsOf } from '../../../../lib/core/shares/statement.ts'
import { lineValue } from '../../../../lib/forms/entryDraft.ts'
import {
  differenceOf,
  lineStandingWords,
  lineTitle,
  lineWords,
  marksWords,
  markWords,
} from '../../../../lib/words/booksText.ts'
import { moneyWords } from '../../../../lib/words/money.ts'
import { shareNames } from '../../../../lib/words/shareText.ts'
import { PressForm } from '../../../ui/draft/PressForm.tsx'
import { HouseholdTag } from '../../../ui/HouseholdTag.tsx'
import { Status } from '../../../ui/Status.tsx'
import type { BooksFigures } from '../booksFigures.ts'
import { markLineBought, takeLineMarkBack } from '../boughtActions.ts'
import type { Opened } from '../opened.ts'

/** One line: planned, actual, the difference, who paid, both marks, and the household's own to set or take. */
export function LineInBooks({
  opened: { household, notebookId },
  figures: { notebook },
  standing,
}: {
  opened: Opened
  figures: BooksFigures
  standing: LineStanding
}) {
  const names = shareNames(notebook)
  const money = (minor: bigint) => moneyWords(minor, notebook.currency)
  const { line, planned, actual, by, entries, markable, marks } = standing
  const state = lineStandingWords(standing, household, names)
  const mine = marks[household] !== undefined
  return (
    <li className="book-entry">
      <p className="book-entry-head">
        <strong>{lineWords(line.what)}</strong>
        <Status kind={state.kind} text={state.text} />
      </p>
      <p>
        Planned {money(planned)}.{' '}
        {entries.length === 0
          ? ''
          : `Actual ${money(actual)}: ${differenceOf(actual, planned, notebook.currency)}.`}
      </p>
      {entries.length === 0 ? null : (
        <p className="paid-by">
          {households
            .filter((one) => by[one] !== 0n)
            .map((one) => (
              <span key={one}>
                <HouseholdTag household={one} name={names[one]} /> {money(by[one])}
              </span>
            ))}
        </p>
      )}
      {marksWords(marks, names).map((sentence) => (
        <p key={sentence} className="quiet">
          {sentence}
        </p>
      ))}
      {markable < 0n ? (
        <p className="quiet">More came back for it than was spent on it, so it can’t be marked.</p>
      ) : (
        <PressForm
          action={(mine ? takeLineMarkBack : markLineBought).bind(null, notebookId)}
          label={mine ? 'Take your mark off' : markWords(standing, notebook.currency)}
          labelFor={lineTitle(line)}
          weight={mine || entries.length === 0 ? 'plain' : 'main'}
        >
          <input type="hidden" name="line" value={lineValue(lineName(line))} />
          <input type="hidden" name="amount" value={moneyText(markable, digitsOf(notebook))} />
        </PressForm>
      )}
    </li>
  )
}
