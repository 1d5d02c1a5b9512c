import { isOfOther } from '../../../../lib/core/ledger/entryRules.ts'
import { lineFinder } from '../../../../lib/core/ledger/findLine.ts'
import type { PlannedAgainstActual } from '../../../../lib/core/ledger/plannedAgainstActual.ts'
import { writerOf } from '../../../../lib/forms/book.ts'
import { fingerprintOf } from '../../../../lib/store/fingerprint.ts'
import { entryName, goneLineWords, goneWriterWords } from '../../../../lib/words/booksText.ts'
import { moneyWords } from '../../../../lib/words/money.ts'
import { shareNames } from '../../../../lib/words/shareText.ts'
import { PressForm } from '../../../ui/draft/PressForm.tsx'
import { Panel } from '../../../ui/Panel.tsx'
import { moveEntryLine } from '../entryActions.ts'
import { itemTitles } from '../itemTitles.ts'
import { lineChoices } from '../lineChoices.ts'
import type { Opened } from '../opened.ts'

/** Parts of entries whose line is gone: nothing is lost, and the one who wrote the entry is asked where it belongs. */
export function GoneLines({ opened, standing }: { opened: Opened; standing: PlannedAgainstActual }) {
  const { notebook, notebookId, document, household } = opened
  const inDraft = lineFinder(notebook)
  const gone = standing.actuals.gone.filter(({ was }) => inDraft(was) === undefined)
  if (gone.length === 0) return null
  const names = shareNames(notebook)
  const titleOf = itemTitles(document)
  const items = new Set([...notebook.sections, ...notebook.gates, ...notebook.common].map(({ id }) => id))
  const written = document.contributions as readonly Record<string, unknown>[]
  const choices = lineChoices(opened)
  const choicesFor = (entryFor: string) => choices.filter((line) => !isOfOther(entryFor, line))
  return (
    <Panel heading="For a line that is gone" id="gone">
      <ul className="item-rows">
        {gone.map(({ entry, line, was, amount }) => {
          const stored = written[entry] ?? {}
          const writer = writerOf(stored) === 'b' ? 'b' : 'a'
          const id = `move-${entry}-${line}`
          return (
            <li key={id} className="book-entry">
              <p>
                {goneLineWords(
                  was,
                  moneyWords(amount, notebook.currency),
                  entryName(notebook.contributions[entry]),
                  items.has(was.item) ? titleOf(was.item) : undefined,
                )}
              </p>
              {writer !== household ? (
                <p className="quiet">{goneWriterWords(names[writer])}</p>
              ) : (
                <PressForm action={moveEntryLine.bind(null, notebookId)} label="Put it there">
                  <input type="hidden" name="index" value={entry} />
                  <input type="hidden" name="line" value={line} />
                  <input type="hidden" name="fingerprint" value={fingerprintOf(stored)} />
                  <div className="field">
                    <label className="field-label" htmlFor={id}>
                      Line of the plan
                    </label>
                    <select id={id} name="to" defaultValue="">
                      <option value="">none: leave it with the item as a whole</option>
                      {choicesFor(notebook.contributions[entry]?.for ?? '').map(({ value, label }) => (
                        <option key={value} value={value}>
                          {label}
                        </option>
                      ))}
                    </select>
                  </div>
                </PressForm>
              )}
            </li>
          )
        })}
      </ul>
    </Panel>
  )
}
