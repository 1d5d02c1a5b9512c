import type { CostLine, Notebook } from '../../../lib/core/agreement/notebook.ts'
import { apartFromTakeOff } from '../../../lib/core/takeoff/apartFromTakeOff.ts'
import { offeredLines } from '../../../lib/core/takeoff/offeredLines.ts'
import type { TakeOff } from '../../../lib/core/takeoff/takeOff.ts'
import { typedBesideTakeOff } from '../../../lib/core/takeoff/typedBesideTakeOff.ts'
import { apartAdvice, apartText, typedByHandWords } from '../../../lib/words/takeoff/apartText.ts'

/** Says where an item's cost lines no longer follow the take-off; nothing where they do. */
export function ApartFromTakeOff({
  notebook,
  found,
  item,
  alone = false,
}: {
  notebook: Notebook
  /** What the lines follow: `followedTakeOff`. */
  found: TakeOff
  item: { readonly id: string; readonly materials: readonly CostLine[] }
  /** It is the only item of its page, so that why the two differ is said here. */
  alone?: boolean
}) {
  const offered = offeredLines(found).filter(
    ({ item: place }) => notebook[place.list][place.index]?.id === item.id,
  )
  const apart = apartFromTakeOff(item.materials, offered)
  if (apart.length === 0)
    return alone && isTyped(notebook, found, item.id) ? (
      <p className="quiet">{typedByHandWords('this part')}</p>
    ) : null
  return (
    <div className="apart" role="note">
      <p>{apartAdvice}</p>
      <ul>
        {apart.map((one) => (
          <li key={`${one.line?.from ?? ''} ${one.offered?.from ?? ''} ${apartText(one, notebook.units)}`}>
            {apartText(one, notebook.units)}
          </li>
        ))}
      </ul>
    </div>
  )
}

function isTyped(notebook: Notebook, found: TakeOff, id: string): boolean {
  return typedBesideTakeOff(notebook, found).some(({ list, index }) => notebook[list][index]?.id === id)
}
