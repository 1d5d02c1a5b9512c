import { sealsOf } from '../../../lib/store/sealedPapers.ts'
import type { ReaderOpening } from './opening.ts'

/**
 * Whether each revision that all have signed has its locked copy. While one waits to be made, a pack would make it, and
 * whoever only reads writes nothing.
 */
export async function everythingLocked({ link, revisions }: ReaderOpening): Promise<boolean> {
  const seals = await sealsOf(link.notebookId)
  return revisions.every(({ revision, stillToSign }) => stillToSign.length > 0 || seals.has(revision.id))
}
