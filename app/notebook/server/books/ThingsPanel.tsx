import { standingOfThing } from '../../../../lib/core/ledger/things.ts'
import { placesOf } from '../../../../lib/core/shares/itemShares.ts'
import { thingAsTyped, thingAt, thingWithoutMarks } from '../../../../lib/forms/things.ts'
import { fingerprintOf } from '../../../../lib/store/fingerprint.ts'
import { itemTitle } from '../../../../lib/words/itemWords.ts'
import { shareNames } from '../../../../lib/words/shareText.ts'
import { thingPressWords } from '../../../../lib/words/thingText.ts'
import { FoldedPart } from '../../../ui/FoldedPart.tsx'
import { Panel } from '../../../ui/Panel.tsx'
import { ThingForm } from '../../forms/ThingForm.tsx'
import type { BooksFigures } from '../booksFigures.ts'
import type { Opened } from '../opened.ts'
import { saveThing } from '../thingActions.ts'
import { today } from '../today.ts'
import { ThingInBooks } from './ThingInBooks.tsx'

/** Tools, leftovers and salvage: what is still to go back, what somebody keeps at a value, and what was taken off the list. */
export function ThingsPanel({ opened, figures }: { opened: Opened; figures: BooksFigures }) {
  const { notebook, notebookId, document } = opened
  const things = notebook.books.things.map((thing, index) => {
    const stored = thingAt(document, index) ?? {}
    return { thing, stored, place: { index, fingerprint: fingerprintOf(thingWithoutMarks(stored)) } }
  })
  const listed = things.filter(({ thing }) => standingOfThing(thing) !== 'gone')
  const gone = things.filter(({ thing }) => standingOfThing(thing) === 'gone')
  const names = shareNames(notebook)
  const items = placesOf(figures.notebook).map(({ item, kind }) => ({
    value: item.id,
    label: itemTitle({ kind, name: item.name, key: `item:${item.id}` }),
  }))
  return (
    <Panel heading="Tools, leftovers and salvage" id="things">
      {listed.length === 0 ? (
        <p>
          Nothing is written down yet: what was borrowed or hired, whose a tool is afterwards, what was left
          over, what the old fence brought.
        </p>
      ) : (
        <ul className="item-rows">
          {listed.map(({ thing, stored, place }) => (
            <ThingInBooks
              key={fingerprintOf([place.index, stored])}
              opened={opened}
              figures={figures}
              thing={thing}
              place={place}
            >
              {thing.off !== undefined ? null : (
                <FoldedPart summary={`Change this: ${thing.what}`}>
                  <ThingForm
                    initial={thingAsTyped(stored)}
                    base={place.fingerprint}
                    save={saveThing.bind(null, notebookId, place.index)}
                    names={names}
                    items={items}
                    form={`thing-${place.index}`}
                  />
                </FoldedPart>
              )}
            </ThingInBooks>
          ))}
        </ul>
      )}
      {gone.length === 0 ? null : (
        <FoldedPart summary={thingPressWords.offSummary(gone.length)}>
          <ul className="item-rows">
            {gone.map(({ thing, stored, place }) => (
              <ThingInBooks
                key={fingerprintOf([place.index, stored])}
                opened={opened}
                figures={figures}
                thing={thing}
                place={place}
              />
            ))}
          </ul>
        </FoldedPart>
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
