import { letterFaults } from '../../../lib/core/agreement/firstLetter.ts'
import { type NotebookDocument, readDocument } from '../../../lib/forms/readNotebook.ts'
import { letterFaultText } from '../../../lib/words/letter/letterFaultText.ts'
import type { Fault } from '../../ui/draft/saveAnswer.ts'

/** What the form of the first letter asks about before it is saved; nothing where the file itself is at fault. */
export function letterFaultsOf(next: NotebookDocument): readonly Fault[] {
  const read = readDocument(next)
  const letter = read.ok ? read.value.notebook.letter : undefined
  if (letter === undefined) return []
  return letterFaults(letter).map((fault) => ({ path: fault.path, message: letterFaultText(fault) }))
}
