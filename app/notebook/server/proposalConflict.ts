import { readPart } from '../../../lib/forms/parts.ts'
import type { NotebookDocument } from '../../../lib/forms/readNotebook.ts'
import { fingerprintOf } from '../../../lib/store/fingerprint.ts'
import type { Proposal } from '../../../lib/store/proposals.ts'
import type { Conflict } from '../../ui/draft/saveAnswer.ts'
import { changedSinceFingerprint } from './changedItem.ts'
import { itemTitles } from './itemTitles.ts'
import { itemsBase, type ProposalDraft, startingDraft } from './proposalDraft.ts'

/** What changed in the items of a form since it was opened, for the household to choose; undefined where nothing did. */
export async function changedSinceOpened(
  notebookId: string,
  document: NotebookDocument,
  form: ProposalDraft,
  answered: Proposal | undefined,
): Promise<Conflict | undefined> {
  const changed = form.items.filter((one) => {
    const now = readPart(document, { part: 'item', id: one.id })
    return one.in && now !== undefined && fingerprintOf(now) !== one.fingerprint
  })
  if (changed.length === 0) return undefined
  const titleOf = itemTitles(document)
  const rows = await Promise.all(
    changed.map(async ({ id, fingerprint }) => {
      const found = await changedSinceFingerprint(notebookId, document, id, fingerprint)
      return found.map(({ label, before, after }) => ({
        label: `${titleOf(id)}: ${label}`,
        theirs: after,
        yours: before,
      }))
    }),
  )
  const picked = form.items.filter((one) => one.in).map(({ id }) => id)
  return {
    theirs: { ...startingDraft(document, picked, answered), text: form.text },
    theirsBase: itemsBase(document),
    rows: rows.flat(),
    words: {
      title: 'An item changed after you opened this page',
      lead: 'Nothing was sent, and nothing of yours is lost. Read what changed, then choose.',
      theirs: 'Now',
      yours: 'When you opened it',
      takeTheirs: 'Start again from the items as they are now',
      writeOver: 'Send mine for the items as they are now',
    },
  }
}
