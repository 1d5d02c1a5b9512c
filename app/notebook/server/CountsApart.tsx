import type { PassageCounts } from '../../../lib/core/agreement/notebook.ts'
import { households, otherHousehold } from '../../../lib/core/people/household.ts'
import type { CountsSideBySide } from '../../../lib/core/shares/countsSideBySide.ts'
import { moneyWords } from '../../../lib/words/money.ts'
import {
  countOf,
  countsApartWords,
  takeLabel,
  takesWaitWords,
  takesWords,
} from '../../../lib/words/passageText.ts'
import { shareNames } from '../../../lib/words/shareText.ts'
import { capitalised } from '../../../lib/words/summary/names.ts'
import { PressForm } from '../../ui/draft/PressForm.tsx'
import { FigureTable } from '../../ui/FigureTable.tsx'
import type { Opened } from './opened.ts'
import { takeCount } from './passageActions.ts'

/** Two counts that differ, what each would ask, and for each household one press to take one of them. */
export function CountsApart({
  opened,
  id,
  found,
  takes,
  fingerprint,
}: {
  opened: Opened
  id: string
  found: CountsSideBySide
  takes: PassageCounts['takes']
  fingerprint: string
}) {
  const { notebook, notebookId, household } = opened
  const names = shareNames(notebook)
  const waits = takesWaitWords(takes, household, names)
  const asked = (of: 'a' | 'b', by: 'a' | 'b') => {
    const shares = found.under[by]
    return shares.ok ? moneyWords(shares.value[of], notebook.currency) : 'can’t be shared'
  }
  return (
    <>
      <FigureTable
        caption="The two counts, and what the gate would ask by each"
        columns={[
          { label: 'Count' },
          { label: `Passages, ${names.a}`, figures: true },
          { label: `Passages, ${names.b}`, figures: true },
          { label: `Asked of ${names.a}`, figures: true },
          { label: `Asked of ${names.b}`, figures: true },
        ]}
        rows={households.map((by) => [
          countOf(by, names),
          found.counts[by].a,
          found.counts[by].b,
          asked('a', by),
          asked('b', by),
        ])}
      />
      {countsApartWords(found, names).map((sentence) => (
        <p key={sentence}>{sentence}</p>
      ))}
      {households.map((by) => {
        const taken = takes[by]
        return taken ? <p key={by}>{capitalised(takesWords(taken, by, names))}</p> : null
      })}
      {waits === undefined ? null : <p>{waits}</p>}
      <div className="button-row">
        {[household, otherHousehold(household)].map((count) =>
          takes[household] === count ? null : (
            <PressForm
              key={count}
              action={takeCount.bind(null, notebookId)}
              label={takeLabel(count, household, takes, names)}
            >
              <input type="hidden" name="id" value={id} />
              <input type="hidden" name="count" value={count} />
              <input type="hidden" name="fingerprint" value={fingerprint} />
            </PressForm>
          ),
        )}
      </div>
    </>
  )
}
