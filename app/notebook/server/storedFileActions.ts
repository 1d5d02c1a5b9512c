'use server'

import { redirect } from 'next/navigation'
import { requireHousehold } from '../../../lib/access/whoAsks.ts'
import { fileLimits } from '../../../lib/core/agreement/attachedFile.ts'
import { oneAtATime } from '../../../lib/files/oneAtATime.ts'
import { filesOf, findFile, isSameFile, recordFile, takeFileAway } from '../../../lib/store/storedFiles.ts'
import {
  fileAwayRefusals,
  fileBackRefusals,
  fileRefusalText,
  fileSentRefusals,
} from '../../../lib/words/fileText.ts'
import type { PressAnswer } from '../../ui/draft/PressForm.tsx'
import { pressFields } from './pressFields.ts'
import { addFile } from './storedFileAdding.ts'

/** Adds the files of a form sent without script; with script each goes to `files/upload`, which tells how far it is. */
export async function addFiles(
  notebookId: string,
  _previous: PressAnswer,
  form: FormData,
): Promise<PressAnswer> {
  const asker = await requireHousehold(notebookId)
  const { kind, caption, item } = pressFields(form)
  const sent = form instanceof FormData ? form.getAll('file').filter((file) => file instanceof File) : []
  if (sent.length === 0) return { refused: fileSentRefusals.none }
  const refusals: string[] = []
  for (const file of sent) {
    const about = { name: file.name, kind, caption, item }
    const { name, refused } = await addFile(asker, about, new Uint8Array(await file.arrayBuffer()))
    if (refused) refusals.push(fileRefusalText(name, refused))
  }
  if (refusals.length > 0) return { refused: refusals.join('\n') }
  redirect(`/notebook/${notebookId}/files`)
}

/** Takes a file away that the household added itself. It stays on record, and its bytes stay on disk. */
export async function takeAwayFile(
  notebookId: string,
  _previous: PressAnswer,
  form: FormData,
): Promise<PressAnswer> {
  const { household } = await requireHousehold(notebookId)
  const { id } = pressFields(form)
  const file = typeof id === 'string' ? await findFile(notebookId, id) : undefined
  if (file === undefined) return { refused: fileAwayRefusals.gone }
  if (file.household !== household) return { refused: fileAwayRefusals.notYours }
  await takeFileAway({ notebookId, id: file.id, household, at: new Date() })
  redirect(`/notebook/${notebookId}/files`)
}

/** Puts a file back that the household itself took away: on record anew, with the bytes that stayed on disk. */
export async function putFileBack(
  notebookId: string,
  _previous: PressAnswer,
  form: FormData,
): Promise<PressAnswer> {
  const { household } = await requireHousehold(notebookId)
  const { id } = pressFields(form)
  const refused = await oneAtATime(async () => {
    const all = await filesOf(notebookId, true)
    const taken = all.find((one) => one.id === id && one.removedBy === household)
    if (taken === undefined) return fileBackRefusals.notYours
    const there = all.filter(({ removedAt }) => removedAt === undefined)
    if (there.some((one) => isSameFile(one, taken))) return fileBackRefusals.thereAlready
    if (there.length >= fileLimits.files)
      return fileRefusalText(taken.name, { kind: 'too-many-files', limit: fileLimits.files })
    const { id: _its, removedAt: _then, removedBy: _whom, addedAt: _first, ...file } = taken
    await recordFile({ ...file, notebookId, household, at: new Date() })
    return undefined
  })
  if (refused !== undefined) return { refused }
  redirect(`/notebook/${notebookId}/files`)
}
