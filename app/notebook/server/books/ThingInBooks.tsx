import type { ReactNode } from 'react'
import type { Thing } from '../../../../lib/core/agreement/notebook.ts'
import { minorUnits } from '../../../../lib/core/amounts/money.ts'
import { mayHaveValue } from '../../../../lib/core/ledger/things.ts'
import { markedByBoth } from '../../../../lib/core/ledger/valuation.ts'
import { placesOf } from '../../../../lib/core/shares/itemShares.ts'
import { digitsOf } from '../../../../lib/core/shares/statement.ts'
import { marksWords } from '../../../../lib/words/booksText.ts'
import { itemTitle } from '../../../../lib/words/itemWords.ts'
import { moneyWords } from '../../../../lib/words/money.ts'
import { shareNames } from '../../../../lib/words/shareText.ts'
import {
  thingKindWords,
  thingStanding,
  thingValueWords,
  thingWords,
} from '../../../../lib/words/thingText.ts'
import { PressForm } from '../../../ui/draft/PressForm.tsx'
import { Status } from '../../../ui/Status.tsx'
import type { BooksFigures } from '../booksFigures.ts'
import type { Opened } from '../opened.ts'
import { markThingValue, takeThingAway, takeThingMarkBack } from '../thingActions.ts'
import { today } from '../today.ts'

/** One thing: what it is, where it is from, who keeps it at what value, both marks. `children` change it. */
export function ThingInBooks({
  opened: { household, notebookId },
  figures: { notebook },
  thing,
  place,
  children,
}: {
  opened: Opened
  figures: BooksFigures
  thing: Thing
  place: { readonly index: number; readonly fingerprint: string }
  children: ReactNode
}) {
  const names = shareNames(notebook)
  const valued = mayHaveValue(thing.kind) && thing.value !== ''
  const at = placesOf(notebook).find(({ item }) => item.id === thing.item)
  const title = at && itemTitle({ kind: at.kind, name: at.item.name, key: `item:${thing.item}` })
  const value = valued ? moneyWords(minorUnits(thing.value, digitsOf(notebook)), notebook.currency) : ''
  const mine = thing.marks[household] !== undefined
  const meant = (
    <>
      <input type="hidden" name="index" value={place.index} />
      <input type="hidden" name="fingerprint" value={place.fingerprint} />
    </>
  )
  return (
    <li className="book-entry">
      <p className="book-entry-head">
        <strong>
          {thingKindWords[thing.kind]}: {thing.what}
        </strong>
        {valued ? (
          <Status
            kind={markedByBoth(thing.marks) ? 'agreed' : 'open'}
            text={thingStanding(thing, household, names)}
          />
        ) : null}
      </p>
      <p>{thingWords(thing, names, today())}</p>
      {valued ? <p>{thingValueWords(thing, value, title, names)}</p> : null}
      {marksWords(thing.marks, names).map((sentence) => (
        <p key={sentence} className="quiet">
          {sentence}
        </p>
      ))}
      {valued && thing.household !== '' ? (
        <PressForm
          action={(mine ? takeThingMarkBack : markThingValue).bind(null, notebookId)}
          label={mine ? 'Take your mark off' : `Agree to ${value}`}
          labelFor={thing.what}
          weight={mine ? 'plain' : 'main'}
        >
          {meant}
        </PressForm>
      ) : null}
      {children}
      <PressForm
        action={takeThingAway.bind(null, notebookId)}
        label="Take it off the list"
        labelFor={thing.what}
        weight="grave"
        confirm="Take this off the list? What it was worth no longer counts. The record keeps that it was there."
      >
        {meant}
      </PressForm>
    </li>
  )
}
