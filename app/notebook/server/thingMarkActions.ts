'use server'

import { canBeMarked, standingOfThing } from '../../../lib/core/ledger/things.ts'
import { markThing, putThingBack, takeThingOff, unmarkThing } from '../../../lib/forms/things.ts'
import { booksRefusals } from '../../../lib/words/booksText.ts'
import type { PressAnswer } from '../../ui/draft/PressForm.tsx'
import { pressThing } from './thingPress.ts'
import { today } from './today.ts'

/** Marks a thing as it stands, changed or taken off included: for the household that asks, never for the other. */
export async function markThingValue(
  id: string,
  _previous: PressAnswer,
  form: FormData,
): Promise<PressAnswer> {
  return pressThing(
    id,
    form,
    'thing marked',
    (thing) => (canBeMarked(thing) ? undefined : booksRefusals.changed),
    (document, index, household) => markThing(document, index, { household, on: today() }),
  )
}

/** Takes the household's own mark off a thing, while it waits for the other's: what both marked is not undone by one. */
export async function takeThingMarkBack(
  id: string,
  _before: PressAnswer,
  form: FormData,
): Promise<PressAnswer> {
  return pressThing(
    id,
    form,
    'thing unmarked',
    (thing) => {
      const standing = standingOfThing(thing)
      if (standing === 'agreed') return booksRefusals.thingHeld
      return standing === 'open' || standing === 'changed' ? undefined : booksRefusals.changed
    },
    unmarkThing,
  )
}

/** Takes a thing off the list. It can be put back; what both marked of it counts until both mark that it is off. */
export async function takeThingAway(
  id: string,
  _previous: PressAnswer,
  form: FormData,
): Promise<PressAnswer> {
  return pressThing(
    id,
    form,
    'thing taken away',
    ({ off }) => (off === undefined ? undefined : booksRefusals.changed),
    (document, index, household) => takeThingOff(document, index, { household, on: today() }),
  )
}

/** Puts a thing back on the list that was taken off it. What was undone by both counts again once both mark it. */
export async function putThingOnListAgain(
  id: string,
  _previous: PressAnswer,
  form: FormData,
): Promise<PressAnswer> {
  return pressThing(
    id,
    form,
    'thing put back',
    ({ off }) => (off === undefined ? booksRefusals.changed : undefined),
    putThingBack,
  )
}
