import { writerOf } from '../../../lib/forms/book.ts'
import { bothMarked } from '../../../lib/forms/booksLists.ts'
import { isObject } from '../../../lib/forms/readNotebook.ts'
import { confirmedByOther } from '../../../lib/forms/transfers.ts'
import { booksRefusals } from '../../../lib/words/booksText.ts'
import { takeBackRefusals } from '../../../lib/words/entryText.ts'

/**
 * Why an entry is not taken back by the one who wrote it: the other household confirmed it, or both marked that goods of the
 * other household count whole. Undefined where nothing stands against it.
 */
export function whyItStays(entry: Readonly<Record<string, unknown>>): string | undefined {
  if (confirmedByOther(entry)) return takeBackRefusals.confirmed
  const valued = isObject(entry.valuation) && bothMarked(entry.valuation)
  return valued && entry.household !== writerOf(entry) ? booksRefusals.valueStays : undefined
}
