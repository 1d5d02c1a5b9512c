import { itemKey } from '../../../lib/core/agreement/agreedItems.ts'
import { minorUnits } from '../../../lib/core/amounts/money.ts'
import { digitsOf } from '../../../lib/core/shares/statement.ts'
import { type NotebookDocument, readDocument } from '../../../lib/forms/readNotebook.ts'
import type { RecordedEdit } from '../../../lib/store/recordedEdits.ts'
import { moneyWords } from '../../../lib/words/money.ts'

/** A thing on the list or an entry of the book, by its place from 0; -1 is the newest. */
export type InBooks = { readonly thing: number } | { readonly entry: number }

/** What goes on record of it besides: the item that it belongs to, and its amount in words. */
export function recordAbout(
  document: NotebookDocument,
  about: InBooks | undefined,
  detail: Readonly<Record<string, string>>,
): Pick<RecordedEdit, 'itemKey' | 'detail'> {
  const read = about === undefined ? undefined : readDocument(document)
  if (about === undefined || !read?.ok) return { detail }
  const { notebook } = read.value
  const found = 'thing' in about ? notebook.books.things.at(about.thing) : notebook.contributions[about.entry]
  if (found === undefined) return { detail }
  const [item, amount] = 'value' in found ? [found.item, found.value] : [found.for, found.amount]
  const words =
    amount === '' ? undefined : moneyWords(minorUnits(amount, digitsOf(notebook)), notebook.currency)
  return {
    ...(item === '' ? {} : { itemKey: itemKey(item) }),
    detail: {
      ...detail,
      ...(words === undefined || 'amount' in detail ? {} : { amount: words }),
      ...('entry' in about ? { index: String(about.entry) } : {}),
    },
  }
}
