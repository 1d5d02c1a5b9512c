import type { Contribution } from '../../../lib/core/agreement/notebook.ts'
import { fingerprintOf } from '../../../lib/store/fingerprint.ts'
import { dayWords } from '../../../lib/words/day.ts'
import { householdName } from '../../../lib/words/labels.ts'
import { PressForm } from '../../ui/draft/PressForm.tsx'
import { takeEntryBack } from './bookActions.ts'
import type { Opened } from './opened.ts'

/** Takes one entry of the book back, with a reason; or says who did. */
export function EntryTools({ opened, index, entry }: { opened: Opened; index: number; entry: Contribution }) {
  if (entry.struck) {
    const { on, by, why } = entry.struck
    return <span>{`Taken back by ${householdName(opened.notebook, by)} on ${dayWords(on)}: ${why}`}</span>
  }
  const written = (opened.document.contributions as readonly unknown[])[index]
  return (
    <details className="entry-tools">
      <summary>Take back</summary>
      <PressForm action={takeEntryBack.bind(null, opened.notebookId)} label="Take this entry back">
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
  )
}
