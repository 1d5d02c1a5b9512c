import type { Contribution } from '../../../../lib/core/agreement/notebook.ts'
import { minorUnits } from '../../../../lib/core/amounts/money.ts'
import { markedByBoth, twoValues } from '../../../../lib/core/ledger/valuation.ts'
import { digitsOf } from '../../../../lib/core/shares/statement.ts'
import { fingerprintOf } from '../../../../lib/store/fingerprint.ts'
import { entryName, marksWords, valuationStanding } from '../../../../lib/words/booksText.ts'
import { moneyWords } from '../../../../lib/words/money.ts'
import { shareNames } from '../../../../lib/words/shareText.ts'
import { PressForm } from '../../../ui/draft/PressForm.tsx'
import { Panel } from '../../../ui/Panel.tsx'
import { markValuation, takeValuationBack } from '../entryActions.ts'
import type { Opened } from '../opened.ts'

/** Goods in kind whose amount is more than the lower of their two values: the whole counts only once both mark it. */
export function ValuationsPanel({ opened }: { opened: Opened }) {
  const { notebook, notebookId, household, document } = opened
  const digits = digitsOf(notebook)
  const names = shareNames(notebook)
  const money = (minor: bigint) => moneyWords(minor, notebook.currency)
  const above = notebook.contributions.flatMap((entry, index) => {
    const lower = lowerOf(entry, digits)
    return lower === undefined ? [] : [{ entry, index, lower }]
  })
  if (above.length === 0) return null
  return (
    <Panel heading="Reclaimed stock above its lower value" id="values">
      <ul className="item-rows">
        {above.map(({ entry, index, lower }) => {
          const marks = entry.valuation?.marks ?? {}
          const mine = marks[household] !== undefined
          const amount = money(minorUnits(entry.amount, digits))
          const stored = (document.contributions as readonly unknown[])[index]
          return (
            <li key={fingerprintOf([index, stored])} className="book-entry">
              <p>
                <strong>{entryName(entry)}</strong>
              </p>
              <p>{valuationStanding(amount, money(lower), entry.valuation?.saidBy ?? '', marks)}</p>
              {marksWords(marks, names).map((sentence) => (
                <p key={sentence} className="quiet">
                  {sentence}
                </p>
              ))}
              {markedByBoth(marks) ? null : (
                <PressForm
                  action={(mine ? takeValuationBack : markValuation).bind(null, notebookId)}
                  label={mine ? 'Take your mark off' : `Agree that all ${amount} counts`}
                  labelFor={entryName(entry)}
                >
                  <input type="hidden" name="index" value={index} />
                  <input type="hidden" name="fingerprint" value={fingerprintOf(stored)} />
                </PressForm>
              )}
            </li>
          )
        })}
      </ul>
    </Panel>
  )
}

/** The lower value of goods in kind, where the entry says more than that. */
function lowerOf(entry: Contribution, digits: number): bigint | undefined {
  if (entry.kind !== 'material' || entry.struck !== undefined || entry.valuation === undefined)
    return undefined
  const { lower } = twoValues(entry.valuation, digits)
  return lower !== undefined && lower < minorUnits(entry.amount, digits) ? lower : undefined
}
