'use server'

import { redirect } from 'next/navigation'
import { newNotebook } from '../../lib/forms/newNotebook.ts'
import { issueFirstLink } from '../../lib/store/entryKeys.ts'
import { createNotebook } from '../../lib/store/notebooks.ts'
import { startRefusals } from '../../lib/words/startText.ts'
import { letIn, letInAndShowLink } from '../notebook/server/letIn.ts'
import { pressFields } from '../notebook/server/pressFields.ts'
import { readDraft, refusedDraft } from '../notebook/server/readDraft.ts'
import { fileFaults, readImport } from '../notebook/server/readImport.ts'
import { fieldFault } from '../notebook/server/savePart.ts'
import { toStore } from '../notebook/server/toStore.ts'
import type { PressAnswer } from '../ui/draft/PressForm.tsx'
import type { SaveAnswer } from '../ui/draft/saveAnswer.ts'
import { tellExample } from './exampleStory.ts'

/** Starts a notebook from its heading. The one who starts it is the first household. */
export async function startNotebook(_base: string, draft: unknown): Promise<SaveAnswer> {
  const read = readDraft.safeParse(draft)
  if (!read.success) return refusedDraft
  const checked = toStore(newNotebook(read.data))
  const unnamed = (['a', 'b'] as const).filter(
    (household) => !checked.ok || checked.value.notebook.households[household].name.trim() === '',
  )
  if (!checked.ok) return { faults: checked.faults.map((fault) => fieldFault(fault, '')) }
  if (unnamed.length > 0) {
    return {
      faults: unnamed.map((household) => ({
        path: `households.${household}.name`,
        message: startRefusals[household],
      })),
    }
  }
  return begin(checked.value.text)
}

/** Starts a notebook from a notebook file, sent with the form or just before to `start/import`. Marks, signatures and history never come with it. */
export async function startFromFile(_previous: PressAnswer, form: FormData): Promise<PressAnswer> {
  const read = await readImport(pressFields(form))
  if (!read.ok) return { refused: read.refused }
  const checked = toStore(read.value.document)
  if (!checked.ok) return { refused: fileFaults(checked.faults) }
  return begin(checked.value.text)
}

async function begin(document: string): Promise<never> {
  const at = new Date()
  const { id } = await createNotebook({ document, example: false, at })
  const { token } = await issueFirstLink({ notebookId: id, household: 'a', at })
  await letInAndShowLink(id, token)
  redirect(`/notebook/${id}/links`)
}

/** Opens a copy of the example, so that whoever looks at it can change it without disturbing anyone. */
export async function openExample(_previous: PressAnswer, form: FormData): Promise<PressAnswer> {
  const household = pressFields(form).household === 'b' ? 'b' : 'a'
  const { id, links } = await tellExample(new Date())
  await letIn(id, links[household])
  redirect(`/notebook/${id}`)
}
