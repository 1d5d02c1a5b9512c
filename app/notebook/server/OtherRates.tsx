import type { Notebook } from '../../../lib/core/agreement/notebook.ts'
import { hoursAtOtherRates } from '../../../lib/core/hours/otherRates.ts'
import { placesOf } from '../../../lib/core/shares/itemShares.ts'
import { itemTitle } from '../../../lib/words/itemWords.ts'
import { otherRatesLead, otherRateWords } from '../../../lib/words/otherRateText.ts'

/** Hours in the book at another rate than the agreed one, each by itself; nothing where there are none. */
export function OtherRates({ notebook }: { notebook: Notebook }) {
  const found = hoursAtOtherRates(notebook)
  if (found.length === 0) return null
  const titleOf = (id: string) => {
    const place = placesOf(notebook).find(({ item }) => item.id === id)
    return place ? itemTitle({ kind: place.kind, name: place.item.name, key: `item:${id}` }) : ''
  }
  return (
    <div className="apart" role="note">
      <p>{otherRatesLead}</p>
      <ul>
        {found.map((one) => (
          <li key={one.index}>{otherRateWords(notebook, one, titleOf(one.entry.for))}</li>
        ))}
      </ul>
    </div>
  )
}
