import { unitsOfPapers, unitsSwitchWords } from '../../../lib/words/unitsText.ts'
import { PressForm } from '../../ui/draft/PressForm.tsx'
import type { Opened } from './opened.ts'
import { showLengthsIn } from './unitsActions.ts'

/** Shows lengths in the other units, in this browser alone; on every page, in its foot. */
export function UnitsSwitch({ opened }: { opened: Opened }) {
  const { notebookId, notebook, asAgreed } = opened
  const other = notebook.units === 'metric' ? 'ft-in' : 'metric'
  return (
    <div className="units-switch">
      <PressForm action={showLengthsIn.bind(null, notebookId)} label={unitsSwitchWords[other].label}>
        <input type="hidden" name="units" value={other} />
      </PressForm>
      {notebook.units === asAgreed.units ? null : <p className="quiet">{unitsOfPapers[asAgreed.units]}</p>}
    </div>
  )
}
