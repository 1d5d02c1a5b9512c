import { agreementText } from '../../../lib/core/agreement/canonicalText.ts'
import type { Notebook } from '../../../lib/core/agreement/notebook.ts'
import { type PartyPlace, partiesStillToSign } from '../../../lib/core/agreement/revision.ts'
import { assert } from '../../../lib/core/assert.ts'
import { type NotebookDocument, readNotebook } from '../../../lib/forms/readNotebook.ts'
import { type Revision, revisionsOf, type Signature, signaturesOf } from '../../../lib/store/revisions.ts'

/** A revision as it was frozen, with its signatures. */
export type FrozenRevision = {
  readonly revision: Revision
  /** The frozen agreement, with the books as they are now: receipts are no part of what was signed. */
  readonly notebook: Notebook
  readonly signatures: readonly Signature[]
  readonly stillToSign: readonly PartyPlace[]
  /** Whether a newer one has taken its place. */
  readonly outdated: boolean
}

/** Every revision of a notebook, newest first. `current` is the notebook as it stands, for its books. */
export async function frozenRevisions(
  notebookId: string,
  current: Notebook,
): Promise<readonly FrozenRevision[]> {
  const revisions = await revisionsOf(notebookId)
  return Promise.all(revisions.map((revision, index) => freeze(current, revision, index > 0)))
}

async function freeze(current: Notebook, revision: Revision, outdated: boolean): Promise<FrozenRevision> {
  const read = readNotebook(revision.canonicalText)
  assert(read.ok, 'only agreements that hold are frozen')
  const frozen = read.value.notebook
  // Books in another currency than the revision's (after an import) can't be held against it.
  const { contributions, books } = frozen.currency === current.currency ? current : frozen
  const signatures = await signaturesOf(revision.id)
  return {
    revision,
    notebook: { ...frozen, contributions, books },
    signatures,
    stillToSign: partiesStillToSign(frozen, signatures),
    outdated,
  }
}

/** Whether the draft says something else than the revision. */
export function draftDiffers(
  opened: { readonly document: NotebookDocument },
  { revision }: FrozenRevision,
): boolean {
  return agreementText(opened.document) !== revision.canonicalText
}
