import type { ReactNode } from 'react'
import type { Thing, ThingState } from '../../../../lib/core/agreement/notebook.ts'
import { minorUnits } from '../../../../lib/core/amounts/money.ts'
import { canBeMarked, mayHaveValue, standingOfThing } from '../../../../lib/core/ledger/things.ts'
import { placesOf } from '../../../../lib/core/shares/itemShares.ts'
import { digitsOf } from '../../../../lib/core/shares/statement.ts'
import { marksWords } from '../../../../lib/words/booksText.ts'
import { itemTitle } from '../../../../lib/words/itemWords.ts'
import { moneyWords } from '../../../../lib/words/money.ts'
import { shareNames } from '../../../../lib/words/shareText.ts'
import {
  thingAgreedWords,
  thingKindWords,
  thingPressWords,
  thingStanding,
  thingValueWords,
  thingWords,
} from '../../../../lib/words/thingText.ts'
import { Status } from '../../../ui/Status.tsx'
import type { BooksFigures } from '../booksFigures.ts'
import type { Opened } from '../opened.ts'
import { today } from '../today.ts'
import { ThingPresses } from './ThingPresses.tsx'

const looks = { agreed: 'agreed', changed: 'changed', going: 'changed', open: 'open', gone: 'open' } as const

/** One thing: what it is, where it is from, who keeps it at what value, what both marked of it. `children` change it. */
export function ThingInBooks({
  opened,
  figures: { notebook },
  thing,
  place,
  children,
}: {
  opened: Opened
  figures: BooksFigures
  thing: Thing
  place: { readonly index: number; readonly fingerprint: string }
  children?: ReactNode
}) {
  const names = shareNames(notebook)
  const standing = standingOfThing(thing)
  const { agreed, off } = thing
  const worthOf = ({ kind, value }: ThingState) =>
    mayHaveValue(kind) && value !== ''
      ? moneyWords(minorUnits(value, digitsOf(notebook)), notebook.currency)
      : undefined
  const titleOf = (id: string) => {
    const at = placesOf(notebook).find(({ item }) => item.id === id)
    return at && itemTitle({ kind: at.kind, name: at.item.name, key: `item:${id}` })
  }
  const value = worthOf(thing)
  const before = standing === 'changed' || standing === 'going' ? agreed : undefined
  const listed = standing !== 'going' && standing !== 'gone'
  return (
    <li className="book-entry">
      <p className="book-entry-head">
        <strong>
          {thingKindWords[thing.kind]}: {thing.what}
        </strong>
        {canBeMarked(thing) || value !== undefined ? (
          <Status kind={looks[standing]} text={thingStanding(thing, opened.household, names)} />
        ) : null}
      </p>
      <p>{thingWords(thing, names, today())}</p>
      {off === undefined ? null : <p>{thingPressWords.offBy(names[off.by], off.on)}</p>}
      {value === undefined || !listed ? null : (
        <p>{thingValueWords(thing, value, titleOf(thing.item), names)}</p>
      )}
      {before === undefined ? null : (
        <p>{thingAgreedWords(before, worthOf(before), titleOf(before.item), names, standing === 'going')}</p>
      )}
      {(listed ? marksWords(thing.marks, names) : []).map((sentence) => (
        <p key={sentence} className="quiet">
          {sentence}
        </p>
      ))}
      {children}
      <ThingPresses opened={opened} thing={thing} value={value} place={place} />
    </li>
  )
}
