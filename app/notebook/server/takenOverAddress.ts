import type { TakenOver } from '../../../lib/core/takeoff/takenOver.ts'
import { fieldId } from '../../ui/draft/fieldId.ts'
import type { AddressFields } from './historyAsked.ts'

/** The note's id: one of the form's, which leads there. */
export const takenOverId = fieldId('field', 'materials.taken')

/** Where a press that puts quantities among an item's cost lines leads: to the lines, with what it came to. */
export function takenOverAddress(notebookId: string, itemId: string, { added, renewed }: TakenOver): string {
  const item = `/notebook/${notebookId}/item/${encodeURIComponent(itemId)}`
  return `${item}?added=${added}&renewed=${renewed}#${takenOverId}`
}

/** Reads what `takenOverAddress` wrote; undefined where nothing was put there just now. */
export function takenOverAsked({ added, renewed }: AddressFields): TakenOver | undefined {
  const count = (typed: AddressFields[string]) =>
    typeof typed === 'string' && /^[0-9]{1,6}$/.test(typed) ? Number(typed) : undefined
  const read = { added: count(added), renewed: count(renewed) }
  return read.added === undefined || read.renewed === undefined ? undefined : (read as TakenOver)
}
