import { type Need, needsMet } from '../../../lib/core/agreement/needs.ts'
import { type ForBoth, households } from '../../../lib/core/people/household.ts'
import { householdName } from '../../../lib/words/labels.ts'
import { metByWords, needLine } from '../../../lib/words/needText.ts'
import { capitalised } from '../../../lib/words/summary/names.ts'
import { HouseholdTag } from '../../ui/HouseholdTag.tsx'
import { Status } from '../../ui/Status.tsx'
import type { Opened } from './opened.ts'

/** What both need, side by side, each with the sections that meet it; what none meets is open. */
export function NeedLists({ opened, both }: { opened: Opened; both: ForBoth<readonly Need[]> }) {
  const { notebook } = opened
  return (
    <div className="panel-pair">
      {households.map((household) => (
        <div key={household}>
          <p>
            <HouseholdTag household={household} name={householdName(notebook, household)} />
          </p>
          <ul className="need-list">
            {needsMet(notebook.sections, household, both[household]).map((met) => (
              <li key={met.need}>
                {capitalised(needLine(met))}
                <br />
                {met.sections.length === 0 ? (
                  <Status kind="open" text={metByWords(notebook, met)} />
                ) : (
                  metByWords(notebook, met)
                )}
              </li>
            ))}
          </ul>
        </div>
      ))}
    </div>
  )
}
