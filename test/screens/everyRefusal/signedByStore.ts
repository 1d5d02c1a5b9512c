import { agreementText } from '../../../lib/core/agreement/canonicalText.ts'
import { signingParties } from '../../../lib/core/agreement/revision.ts'
import type { Household } from '../../../lib/core/people/household.ts'
import { readDocument } from '../../../lib/forms/readNotebook.ts'
import { freezeRevision, newestRevision, signRevision } from '../../../lib/store/revisions.ts'
import { sha256Hex } from '../../../lib/store/sha256.ts'
import { documentOf, markEverything } from '../../actions/world.ts'
import type { Table } from './refusalRow.ts'
import { notebookOf } from './storeBeside.ts'

/** Both households mark every item, and the first puts the notebook up for signing. */
export async function putUpNow(table: Table): Promise<void> {
  const id = notebookOf(table)
  await markEverything(id)
  const canonicalText = agreementText(await documentOf(id))
  await freezeRevision({
    id,
    household: 'a',
    at: new Date(),
    build: () => ({ canonicalText, sha256: sha256Hex(canonicalText) }),
  })
}

/** All parties of these households sign the revision that stands. */
export async function signedNow(table: Table, ...households: readonly Household[]): Promise<void> {
  const id = notebookOf(table)
  const revision = await newestRevision(id)
  const read = readDocument(await documentOf(id))
  if (revision === undefined || !read.ok) throw new Error('Nothing has been put up for signing.')
  for (const party of signingParties(read.value.notebook)) {
    if (!households.includes(party.household)) continue
    await signRevision({
      notebookId: id,
      revisionId: revision.id,
      sha256: revision.sha256,
      household: party.household,
      partyIndex: party.partyIndex,
      partyName: party.name,
      capacity: party.capacity,
      typedName: party.name,
      intent: 'I sign this agreement.',
      at: new Date(),
    })
  }
}
