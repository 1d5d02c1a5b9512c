import { moneyText } from '../../../../lib/core/amounts/money.ts'
import { lineName } from '../../../../lib/core/ledger/findLine.ts'
import { mayMark } from '../../../../lib/core/ledger/lineMarks.ts'
import type { LineStanding } from '../../../../lib/core/ledger/plannedAgainstActual.ts'
import { households } from '../../../../lib/core/people/household.ts'
import { digitsOf } from '../../../../lib/core/shares/statement.ts'
import { lineValue } from '../../../../lib/forms/entryDraft.ts'
import {
  differenceOf,
  lineStandingWords,
  lineTitle,
  lineWords,
  markWords,
  unmarkWords,
} from '../../../../lib/words/booksText.ts'
import { moneyWords } from '../../../../lib/words/money.ts'
import { shareNames } from '../../../../lib/words/shareText.ts'
import { PressForm } from '../../../ui/draft/PressForm.tsx'
import { HouseholdTag } from '../../../ui/HouseholdTag.tsx'
import { Status } from '../../../ui/Status.tsx'
import type { BooksFigures } from '../booksFigures.ts'
import { markLineBought, takeLineMarkBack } from '../boughtActions.ts'
import type { Opened } from '../opened.ts'

/** One line: planned, actual, the difference, who paid, what both marked, and the household's own mark to set or take. */
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
  const mine = marks.pending[household]
  const named = <input type="hidden" name="line" value={lineValue(lineName(line))} />
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
      {state.more.map((sentence) => (
        <p key={sentence} className="quiet">
          {sentence}
        </p>
      ))}
      {markable < 0n ? (
        <p className="quiet">More came back for it than was spent on it, so it can’t be marked.</p>
      ) : null}
      {mayMark(marks, markable, household) ? (
        <PressForm
          action={markLineBought.bind(null, notebookId)}
          label={markWords(standing, notebook.currency)}
          labelFor={lineTitle(line)}
          weight={entries.length === 0 ? 'plain' : 'main'}
        >
          {named}
          <input type="hidden" name="amount" value={moneyText(markable, digitsOf(notebook))} />
        </PressForm>
      ) : null}
      {mine === undefined ? null : (
        <PressForm
          action={takeLineMarkBack.bind(null, notebookId)}
          label={unmarkWords(mine.amount, notebook.currency)}
          labelFor={lineTitle(line)}
        >
          {named}
        </PressForm>
      )}
    </li>
  )
}
