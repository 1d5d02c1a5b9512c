import { canonicalText } from '../../../lib/core/agreement/canonicalText.ts'
import type { NotebookDocument } from '../../../lib/forms/readNotebook.ts'
import { restOfFile } from '../../../lib/forms/restOfFile.ts'
import type { ItemChange } from '../../../lib/store/notebooks.ts'

/**
 * What goes on record besides the items where a whole file takes a notebook's place: any difference of the book, of the
 * books, and of what no item stands for. So that it is told, and can be put back as it was.
 */
export function wholeFileChanges(before: NotebookDocument, after: NotebookDocument): ItemChange[] {
  const [was, is] = [beside(before), beside(after)]
  return (['contributions', 'books', 'file'] as const)
    .filter((key) => canonicalText(was[key]) !== canonicalText(is[key]))
    .map((key) => ({ itemKey: key, before: was[key], after: is[key] }))
}

function beside(document: NotebookDocument) {
  return {
    contributions: document.contributions ?? [],
    books: document.books ?? {},
    file: restOfFile(document),
  }
}
