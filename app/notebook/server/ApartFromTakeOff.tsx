import type { CostLine, Notebook } from '../../../lib/core/agreement/notebook.ts'
import { apartFromTakeOff } from '../../../lib/core/takeoff/apartFromTakeOff.ts'
import { offeredLines } from '../../../lib/core/takeoff/offeredLines.ts'
import type { TakeOff } from '../../../lib/core/takeoff/takeOff.ts'
import { apartAdvice, apartText } from '../../../lib/words/takeoff/apartText.ts'

/** Says where an item's cost lines no longer follow the take-off; nothing where they do. */
export function ApartFromTakeOff({
  notebook,
  found,
  item,
}: {
  notebook: Notebook
  found: TakeOff
  item: { readonly id: string; readonly materials: readonly CostLine[] }
}) {
  const offered = offeredLines(found).filter(
    ({ item: place }) => notebook[place.list][place.index]?.id === item.id,
  )
  const apart = apartFromTakeOff(item.materials, offered)
  if (apart.length === 0) return null
  return (
    <div className="apart" role="note">
      <p>{apartAdvice}</p>
      <ul>
        {apart.map((one) => (
          <li key={`${one.line?.from ?? ''} ${one.offered?.from ?? ''} ${apartText(one)}`}>
            {apartText(one)}
          </li>
        ))}
      </ul>
    </div>
  )
}
