import { listOfKind } from '../../../lib/forms/parts.ts'
import type { NotebookDocument } from '../../../lib/forms/readNotebook.ts'
import { faultOfItem } from '../../../lib/words/itemWords.ts'
import type { Fault as FieldFault } from '../../ui/draft/saveAnswer.ts'
import { itemTitles } from './itemTitles.ts'
import { typedText } from './typedText.ts'

const itemPath = new RegExp(`^(${Object.values(listOfKind).join('|')})\\[([0-9]+)\\]`)

/**
 * A fault of a section, gate or common cost that stands outside the part which is being saved, with the item's name before
 * it: the form has no field for it. One currency for another is refused so, where amounts of money do not fit it.
 */
export function namedElsewhere(document: NotebookDocument, fault: FieldFault): FieldFault {
  const [, list = '', index = ''] = itemPath.exec(fault.path) ?? []
  const items = document[list]
  const id = Array.isArray(items) ? typedText(items[Number(index)]?.id) : ''
  return id === '' ? fault : { ...fault, message: faultOfItem(itemTitles(document)(id), fault.message) }
}
