import { withPassages } from '../../lib/forms/gatePassages.ts'
import { documentText } from '../../lib/forms/parts.ts'
import { type NotebookDocument, readDocument } from '../../lib/forms/readNotebook.ts'
import { editNotebook } from '../../lib/store/notebooks.ts'
import { formOf, openedPart } from './givenForms.ts'

/** Two counts of one gate that differ stand side by side, as after both households have counted. */
export async function countsApartAt(notebookId: string, gateId = 'g3'): Promise<void> {
  const counts = { a: { a: '4', b: '9' }, b: { a: '6', b: '6' }, takes: {} }
  await editNotebook({
    id: notebookId,
    household: 'a',
    at: new Date('2027-04-02T10:00:00Z'),
    change: (stored) => {
      const before = JSON.parse(stored) as NotebookDocument
      const next = withPassages(before, gateId, { uses: { a: '', b: '' }, passages: counts })
      if (!readDocument(next).ok) throw new Error('the counts hold')
      return {
        document: documentText(next),
        changed: [{ itemKey: `item:${gateId}`, before: {}, after: {} }],
        kept: undefined,
      }
    },
  })
}

/** The form that takes one of two counts, as the gate stands. */
export async function takeForm(notebookId: string, count: string, id = 'g3'): Promise<FormData> {
  const { base } = await openedPart(notebookId, { part: 'item', id })
  return formOf({ id, count, fingerprint: base })
}

/** A household's needs as their form sends them. */
export function needsForm(words = ''): Record<string, unknown> {
  return { kinds: { privacy: { weight: 'must', words }, light: { weight: '', words: '' } }, own: [] }
}
