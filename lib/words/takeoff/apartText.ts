import type { Units } from '../../core/agreement/notebook.ts'
import type { ApartLine } from '../../core/takeoff/apartFromTakeOff.ts'
import { inUnitsOf } from '../../core/takeoff/otherUnits.ts'
import { quantityWords } from '../quantityWords.ts'
import { spokenList } from '../summary/names.ts'
import { quantityText } from './quantityText.ts'

/**
 * One sentence for a cost line that does not say what the take-off says; in the units that are shown too, where those are
 * not the ones that the lines are written in.
 */
export function apartText({ line, offered }: ApartLine, shown: Units): string {
  const words = (quantity: string, unit: string) => {
    const also = inUnitsOf(shown, { quantity, unit })
    const typed = quantityWords(quantity, unit)
    return also === undefined ? typed : `${typed} (${quantityWords(also.quantity, also.unit)})`
  }
  const now = offered && words(offered.quantity, offered.unit)
  if (line === undefined)
    return `${offered ? quantityText(offered.name) : ''}: ${now} in the take-off, on no cost line yet.`
  const name = line.what.trim() || (offered ? quantityText(offered.name) : 'A cost line')
  const stands = words(line.quantity, line.unit)
  const byHand = line.changed ? ' It was changed by hand and stays as it is.' : ''
  return now === undefined
    ? `${name}: ${stands} here, nothing of it in the take-off any more.${byHand}`
    : `${name}: ${stands} here, ${now} in the take-off.${byHand}`
}

/** Why the cost lines of these items name other quantities than the take-off does; one line, wherever both are read. */
export function typedByHandWords(titles: readonly string[] | 'this part'): string {
  const which =
    titles === 'this part'
      ? 'The cost lines of this part were typed by hand.'
      : `These cost lines were typed by hand: ${spokenList(titles)}.`
  return `${which} They are what is priced and shared. The take-off comes from the build-ups and moves none of them. So the two can name other quantities for the same thing.`
}

/** What to do about it. */
export const apartAdvice =
  'The cost lines and the take-off have come apart. To take over what it says now, open Build-up and quantities and put them among the cost lines again; prices stay.'
