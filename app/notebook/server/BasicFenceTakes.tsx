import type { Notebook, Section } from '../../../lib/core/agreement/notebook.ts'
import { apartFromTakeOff } from '../../../lib/core/takeoff/apartFromTakeOff.ts'
import type { BasicTakeOff } from '../../../lib/core/takeoff/basicTakeOff.ts'
import { basicLinesApart } from '../../../lib/words/basicFenceText.ts'
import { apartText } from '../../../lib/words/takeoff/apartText.ts'
import { findingText } from '../../../lib/words/takeoff/findingText.ts'
import { fieldId } from '../../ui/draft/fieldId.ts'
import { type PressAction, PressForm } from '../../ui/draft/PressForm.tsx'
import type { Fault } from '../../ui/draft/saveAnswer.ts'
import { HiddenFields } from './BasicFenceHeld.tsx'
import { leafOf } from './findingField.ts'
import { QuantityTable } from './QuantityTable.tsx'

type Takes = {
  notebook: Notebook
  section: Section
  found: BasicTakeOff
  /** The same in the units that are agreed, which its cost lines are written in. */
  followed: BasicTakeOff
  fingerprint: string
  offer: PressAction
}

/** What the basic fence takes, offered as its cost lines; what lacks or clashes in it; where its lines have come apart. */
export function BasicFenceTakes({ notebook, section, found, followed, fingerprint, offer }: Takes) {
  const { quantities } = found
  const apart = apartFromTakeOff(section.basicFence?.materials ?? [], followed.offered)
  const faults = basicFindings(notebook, found)
  return (
    <>
      {faults.length === 0 ? null : (
        <ul className="finding-list">
          {faults.map(({ path, message }) => (
            <li key={`${path} ${message}`}>
              <a href={`#${fieldId('field', path)}`}>{message}</a>
            </li>
          ))}
        </ul>
      )}
      {quantities.length === 0 ? (
        <p>Nothing is worked out yet. Choose what it is made of below and save it.</p>
      ) : (
        <>
          <QuantityTable
            notebook={notebook}
            quantities={quantities}
            caption="Quantities of the basic fence on this stretch"
          />
          {apart.length === 0 ? null : (
            <div className="apart" role="note">
              <p>{basicLinesApart}</p>
              <ul>
                {apart.map((one) => (
                  <li
                    key={`${one.line?.from ?? ''} ${one.offered?.from ?? ''} ${apartText(one, notebook.units)}`}
                  >
                    {apartText(one, notebook.units)}
                  </li>
                ))}
              </ul>
            </div>
          )}
          <PressForm action={offer} label="Put these among its cost lines">
            <HiddenFields id={section.id} fingerprint={fingerprint} />
          </PressForm>
        </>
      )}
    </>
  )
}

/** The findings as sentences at the fields of the basic fence's form. */
export function basicFindings(notebook: Notebook, { findings }: BasicTakeOff): readonly Fault[] {
  return findings.map((finding) => {
    const path = finding.path.endsWith('.basicFence.height') ? finding.path : leafOf(finding)
    return { path: path.replace(/^sections\[[0-9]+\]\./, ''), message: findingText(notebook, finding) }
  })
}
