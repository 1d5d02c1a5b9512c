'use server'

import { z } from 'zod'
import { requireHousehold } from '../../../lib/access/whoAsks.ts'
import { inFormatOrder, kindOf, readPart } from '../../../lib/forms/parts.ts'
import { isObject } from '../../../lib/forms/readNotebook.ts'
import { buildUpRefusals, itemRefusals } from '../../../lib/words/pressText.ts'
import type { SaveAnswer } from '../../ui/draft/saveAnswer.ts'
import { keptBuildUps, nameFaults } from './keptBuildUps.ts'
import { readDraft, refusedDraft } from './readDraft.ts'
import { editDocument } from './savePart.ts'

const keepSchema = z.object({ id: z.string().min(1).max(200_000), draft: readDraft })

/**
 * Keeps the build-up of a section or gate, as it is saved, under a name of its own, to begin others from. `draft` holds
 * the `name`; one that is missing or there already refuses it.
 */
export async function keepBuildUp(
  notebookId: string,
  id: string,
  _base: string,
  draft: unknown,
): Promise<SaveAnswer> {
  const { household } = await requireHousehold(notebookId)
  const read = keepSchema.safeParse({ id, draft })
  if (!read.success) return refusedDraft
  const name = typeof read.data.draft.name === 'string' ? read.data.draft.name.trim() : ''
  const answer = await editDocument(notebookId, household, (document) => {
    const kind = kindOf(document, id)
    const item = readPart(document, { part: 'item', id })
    if (item === undefined || kind === undefined || kind === 'common')
      return { gone: true, message: itemRefusals.removed }
    if (!isObject(item.buildUp)) return { faults: [{ path: '', message: buildUpRefusals.nothingToKeep }] }
    const standing = keptBuildUps(document)
    const kept = [...standing, { name, household, [kind]: { ...item.buildUp, name } }]
    const faults = nameFaults(kept, (index) => (index === standing.length ? 'name' : ''))
    // Names that an imported file brought are no fault of this one.
    const own = faults.filter(({ path }) => path === 'name')
    if (own.length > 0) return { faults: own }
    return { next: inFormatOrder({ ...document, buildUps: kept }) }
  })
  return 'saved' in answer
    ? { ...answer, note: `Kept as “${name}”. Sections and gates can begin from it.` }
    : answer
}
