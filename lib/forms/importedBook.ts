import { canonicalText } from '../core/agreement/canonicalText.ts'
import type { Household } from '../core/people/household.ts'
import { writerOf } from './book.ts'
import type { Json } from './booksLists.ts'
import { isObject, type NotebookDocument } from './readNotebook.ts'
import { entryWithoutMarks } from './withoutMarks.ts'

/**
 * A file's document with its book as household `by` can bring it. An entry that stands in the notebook stays as it stands
 * there, so that a file neither takes back the other household's entries nor gives any back. Every other one is entered by
 * the one who brings it, is taken back by nobody else, and waits where it is a payment of that household.
 *
 * @param file without marks; `standing` is the notebook that it takes the place of
 */
export function withBookBroughtBy(
  by: Household,
  file: NotebookDocument,
  standing: NotebookDocument,
): NotebookDocument {
  if (!Array.isArray(file.contributions)) return file
  const take = takerOf(standing)
  const exactly = file.contributions.map((entry) => take(entry))
  const contributions = file.contributions.map((entry, index) => {
    if (exactly[index] !== undefined || !isObject(entry)) return exactly[index] ?? entry
    const { struck, ...unstruck } = entry
    const isOwn = isObject(struck) && struck.by === by && writerOf(entry) === by
    const stands = struck === undefined || isOwn ? undefined : take(unstruck)
    return stands ?? enteredBy(by, entry)
  })
  return { ...file, contributions }
}

/** Finds what stands in the book and says the same, each entry once. */
function takerOf({ contributions }: NotebookDocument): (entry: unknown) => unknown {
  const left = (Array.isArray(contributions) ? contributions : []).map((stands) => ({
    stands,
    says: canonicalText(entryWithoutMarks(stands)),
  }))
  return (entry) => {
    const says = canonicalText(entry)
    const index = left.findIndex((one) => one.says === says)
    return index < 0 ? undefined : left.splice(index, 1)[0]?.stands
  }
}

function enteredBy(by: Household, entry: Json): Json {
  const { struck } = entry
  return {
    ...entry,
    ...(writerOf(entry) === by ? {} : { enteredBy: by }),
    ...(isObject(struck) ? { struck: { ...struck, by } } : {}),
    ...(entry.kind === 'transfer' && entry.household === by ? { waits: true } : {}),
  }
}
