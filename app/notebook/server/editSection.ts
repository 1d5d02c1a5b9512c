import type { Notebook, Section } from '../../../lib/core/agreement/notebook.ts'
import type { Household } from '../../../lib/core/people/household.ts'
import { readPart, writePart } from '../../../lib/forms/parts.ts'
import { readDocument } from '../../../lib/forms/readNotebook.ts'
import { fingerprintOf } from '../../../lib/store/fingerprint.ts'
import { basicFenceRefusals } from '../../../lib/words/basicFenceText.ts'
import type { PressAnswer } from '../../ui/draft/PressForm.tsx'
import { editDocument } from './savePart.ts'

type Found = { readonly notebook: Notebook; readonly section: Section; readonly index: number }
type Item = Record<string, unknown>

/**
 * Edits one section as it was when the page was opened: by its id and the fingerprint of what the page showed. `change`
 * gives the section's next state, or why there is none. Gives the refusal, or nothing where it is saved.
 */
export async function editSection(
  notebookId: string,
  household: Household,
  { id, fingerprint }: { readonly id: string; readonly fingerprint: string },
  by: 'hand' | 'take-off',
  change: (found: Found, item: Item) => Item | string,
): Promise<PressAnswer | undefined> {
  const part = { part: 'item', id } as const
  const gone = (message: string) => ({ gone: true, message }) as const
  const answer = await editDocument(notebookId, household, (document) => {
    const item = readPart(document, part)
    const checked = readDocument(document)
    const notebook = checked.ok ? checked.value.notebook : undefined
    const index = notebook?.sections.findIndex((section) => section.id === id) ?? -1
    const section = notebook?.sections[index]
    if (item === undefined || notebook === undefined || section === undefined)
      return gone(basicFenceRefusals.removed)
    if (fingerprintOf(item) !== fingerprint) return gone(basicFenceRefusals.changed)
    const changed = change({ notebook, section, index }, item)
    return typeof changed === 'string' ? gone(changed) : { next: writePart(document, part, changed, by) }
  })
  if ('saved' in answer) return undefined
  if ('gone' in answer) return { refused: answer.message }
  return { refused: 'faults' in answer ? answer.faults.map(({ message }) => message).join(' ') : '' }
}
