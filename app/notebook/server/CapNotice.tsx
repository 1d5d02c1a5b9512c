import { capsReached } from '../../../lib/core/shares/capReached.ts'
import { placesOf } from '../../../lib/core/shares/itemShares.ts'
import { reachedCapSentences, whichCapsWords } from '../../../lib/words/capText.ts'
import { shareNames } from '../../../lib/words/shareText.ts'
import { spokenList } from '../../../lib/words/summary/names.ts'
import { Caution } from '../../ui/Caution.tsx'
import { booksFigures } from './booksFigures.ts'
import { heldCaps, sameCaps } from './heldCaps.ts'
import type { Opened } from './opened.ts'

/**
 * Where a cap is reached: that buying pauses on the items that its household bears a part of, or on this one; and which
 * caps it goes by. A purchase is held against the same ones (`capFaults`).
 */
export function CapNotice({ opened, itemId }: { opened: Opened; itemId?: string }) {
  const { notebook: books, signed } = booksFigures(opened)
  const draft = { caps: opened.notebook.caps, marked: opened.capsMarked }
  const held = heldCaps(books, signed !== undefined, draft)
  const notebook = { ...books, caps: held.caps }
  const reached = capsReached(notebook, held.marked).filter(
    ({ items }) => items.length > 0 && (itemId === undefined || items.includes(itemId)),
  )
  const names = shareNames(notebook)
  const whichCaps = whichCapsWords(held, { signed, draftDiffers: !sameCaps(draft.caps, held.caps) }, names)
  const titles = new Map(placesOf(notebook).map(({ item }) => [item.id, item.name.trim() || item.id]))
  return reached.map((one) => (
    <Caution key={one.household} title={one.pauses ? 'Buying pauses' : 'A cap is reached'}>
      {reachedCapSentences(
        one,
        names,
        itemId === undefined ? spokenList(one.items.map((id) => titles.get(id) ?? id)) : 'this item',
      ).map((sentence) => (
        <p key={sentence}>{sentence}</p>
      ))}
      <p>{whichCaps}</p>
    </Caution>
  ))
}
