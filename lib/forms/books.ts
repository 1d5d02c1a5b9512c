import type { LineOf } from '../core/agreement/notebook.ts'
import type { Household } from '../core/people/household.ts'
import { bothMarked, type Json, listIn, type Mark, marksIn, said, withList, withMark } from './booksLists.ts'
import type { NotebookDocument } from './readNotebook.ts'

/** Whether what the books call a line is the line that is meant: it may have been moved since. */
export type IsMeant = (line: LineOf) => boolean

/**
 * The document with one household's mark on a line at what it comes to now. Where the other has marked that amount, it gets
 * the second mark, and every other amount of the line leaves the list. Else what both marked before stays beside it, and
 * counts; a household has one mark of its own on a line at most.
 */
export function markBought(
  document: NotebookDocument,
  line: LineOf,
  isMeant: IsMeant,
  amount: string,
  mark: Mark,
): NotebookDocument {
  const bought = listIn(document, 'bought')
  const ofLine = (one: Json) => isMeant(lineIn(one))
  const same = bought.findLast((one) => ofLine(one) && one.amount === amount)
  const kept = bought.filter((one) => one !== same && !(ofLine(one) && isAlone(one, mark.household)))
  if (same !== undefined && marksIn(same)[mark.household] !== undefined)
    return bothMarked(same) ? withList(document, 'bought', [...kept, same]) : document
  const marked = withMark({ ...same, ...line, amount }, mark)
  const others = bothMarked(marked) ? kept.filter((one) => !ofLine(one)) : kept
  return withList(document, 'bought', [...others, marked])
}

/** The document without the mark that waits for the other household's. What both marked stays: nobody undoes it alone. */
export function unmarkBought(
  document: NotebookDocument,
  isMeant: IsMeant,
  household: Household,
): NotebookDocument {
  const bought = listIn(document, 'bought')
  const left = bought.filter((one) => !(isMeant(lineIn(one)) && isAlone(one, household)))
  return left.length === bought.length ? document : withList(document, 'bought', left)
}

/** Marked by this household and not by the other. */
function isAlone(one: Json, household: Household): boolean {
  return marksIn(one)[household] !== undefined && !bothMarked(one)
}

/** What an entry of `bought` calls its line. */
function lineIn(entry: Json): LineOf {
  const pot = entry.pot === 'labour' ? 'labour' : 'materials'
  return { item: said(entry.item), pot, what: said(entry.what), place: said(entry.place) }
}
