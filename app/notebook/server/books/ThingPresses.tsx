import type { Thing } from '../../../../lib/core/agreement/notebook.ts'
import { canBeMarked, standingOfThing } from '../../../../lib/core/ledger/things.ts'
import { thingPressWords as words } from '../../../../lib/words/thingText.ts'
import { PressForm } from '../../../ui/draft/PressForm.tsx'
import type { Opened } from '../opened.ts'
import { markThingValue, putThingOnListAgain, takeThingAway, takeThingMarkBack } from '../thingMarkActions.ts'

/**
 * What a household can press at a thing: its own mark to set, or to take while it waits for the other's; off the list, or
 * back on it. What both marked has no press that undoes it.
 */
export function ThingPresses({
  opened: { household, notebookId },
  thing,
  value,
  place,
}: {
  opened: Opened
  thing: Thing
  /** In money words; undefined where it has none. */
  value: string | undefined
  place: { readonly index: number; readonly fingerprint: string }
}) {
  const standing = standingOfThing(thing)
  const mine = thing.marks[household] !== undefined
  const meant = (
    <>
      <input type="hidden" name="index" value={place.index} />
      <input type="hidden" name="fingerprint" value={place.fingerprint} />
    </>
  )
  const agree =
    standing === 'going'
      ? words.agreeOff
      : standing === 'open' && value !== undefined
        ? words.agreeTo(value)
        : words.agreeChange
  return (
    <div className="button-row">
      {canBeMarked(thing) && !mine ? (
        <PressForm
          action={markThingValue.bind(null, notebookId)}
          label={agree}
          labelFor={thing.what}
          weight="main"
        >
          {meant}
        </PressForm>
      ) : null}
      {mine && (standing === 'open' || standing === 'changed') ? (
        <PressForm
          action={takeThingMarkBack.bind(null, notebookId)}
          label={words.unmark}
          labelFor={thing.what}
        >
          {meant}
        </PressForm>
      ) : null}
      {thing.off === undefined ? (
        <PressForm
          action={takeThingAway.bind(null, notebookId)}
          label={words.takeOff}
          labelFor={thing.what}
          weight="grave"
          confirm={standing === 'open' ? words.takeOffAsk : words.takeOffAgreedAsk}
        >
          {meant}
        </PressForm>
      ) : (
        <PressForm
          action={putThingOnListAgain.bind(null, notebookId)}
          label={words.putBack}
          labelFor={thing.what}
        >
          {meant}
        </PressForm>
      )}
    </div>
  )
}
