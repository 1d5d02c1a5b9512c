import { placesOf } from '../../../../lib/core/shares/itemShares.ts'
import { thingAt, thingWithoutMarks } from '../../../../lib/forms/books.ts'
import { fingerprintOf } from '../../../../lib/store/fingerprint.ts'
import { itemTitle } from '../../../../lib/words/itemWords.ts'
import { shareNames } from '../../../../lib/words/shareText.ts'
import { FoldedPart } from '../../../ui/FoldedPart.tsx'
import { Panel } from '../../../ui/Panel.tsx'
import { ThingForm } from '../../forms/ThingForm.tsx'
import type { BooksFigures } from '../booksFigures.ts'
import type { Opened } from '../opened.ts'
import { saveThing } from '../thingActions.ts'
import { today } from '../today.ts'
import { ThingInBooks } from './ThingInBooks.tsx'

/** Tools, leftovers and salvage: what is still to go back, and what somebody keeps at a value. */
export function ThingsPanel({ opened, figures }: { opened: Opened; figures: BooksFigures }) {
  const { notebook, notebookId, document } = opened
  const { things } = notebook.books
  const names = shareNames(notebook)
  const items = placesOf(figures.notebook).map(({ item, kind }) => ({
    value: item.id,
    label: itemTitle({ kind, name: item.name, key: `item:${item.id}` }),
  }))
  return (
    <Panel heading="Tools, leftovers and salvage" id="things">
      {things.length === 0 ? (
        <p>
          Nothing is written down yet: what was borrowed or hired, whose a tool is afterwards, what was left
          over, what the old fence brought.
        </p>
      ) : (
        <ul className="item-rows">
          {things.map((thing, index) => {
            const stored = thingAt(document, index) ?? {}
            const fingerprint = fingerprintOf(thingWithoutMarks(stored))
            return (
              <ThingInBooks
                key={fingerprintOf([index, stored])}
                opened={opened}
                figures={figures}
                thing={thing}
                place={{ index, fingerprint }}
              >
                <FoldedPart summary={`Change this: ${thing.what}`}>
                  <ThingForm
                    initial={thingWithoutMarks(stored)}
                    base={fingerprint}
                    save={saveThing.bind(null, notebookId, index)}
                    names={names}
                    items={items}
                    form={`thing-${index}`}
                  />
                </FoldedPart>
              </ThingInBooks>
            )
          })}
        </ul>
      )}
      <FoldedPart summary="Write down a tool, a leftover or salvage">
        <ThingForm
          key={things.length}
          initial={{ kind: 'borrowed', what: '', from: '', on: today(), due: '', returned: '' }}
          base="new"
          save={saveThing.bind(null, notebookId, undefined)}
          names={names}
          items={items}
          form="new-thing"
        />
      </FoldedPart>
    </Panel>
  )
}
