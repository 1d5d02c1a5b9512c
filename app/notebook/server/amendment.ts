import { agreedItems } from '../../../lib/core/agreement/agreedItems.ts'
import type { NotebookDocument } from '../../../lib/forms/readNotebook.ts'
import { changedItemTitle } from '../../../lib/words/itemWords.ts'
import type { Amendment } from '../../../lib/words/summary/summaryInput.ts'
import { itemChanges, renamedDecisions } from './itemChanges.ts'
import { changeWords } from './MarkBox.tsx'
import { namesIn } from './namesIn.ts'
import type { FrozenRevision } from './standingRevision.ts'

/**
 * What a text amends: the newest revision before it that all have signed, with each item that differs, in words.
 * Undefined where nothing was signed before.
 *
 * @param newestFirst the revisions of the notebook
 * @param before the number that the revision must be below; undefined for the draft
 */
export function amendmentOf(
  text: NotebookDocument,
  newestFirst: readonly FrozenRevision[],
  before?: number,
): Amendment | undefined {
  const base = newestFirst.find(
    ({ revision, stillToSign }) =>
      stillToSign.length === 0 && (before === undefined || revision.number < before),
  )
  if (base === undefined) return undefined
  const was = JSON.parse(base.revision.canonicalText) as NotebookDocument
  // Receipts, what they came to, and the letter that first asked are no part of an agreement.
  const { contributions: _given, books: _books, letter: _letter, ...is } = text
  const names = namesIn(text)
  const items = [...agreedItems(is), ...agreedItems(was)]
  const changes = itemChanges(was, is, renamedDecisions(was, is)).map((change) => ({
    title: changedItemTitle({ ...change, before: change.before, after: change.after }, items),
    lines: changeWords(change.before, change.after, names),
  }))
  return { number: base.revision.number, changes }
}
