import { readyBuildUps } from '../../lib/core/takeoff/readyBuildUps.ts'
import { documentText } from '../../lib/forms/parts.ts'
import { editNotebook } from '../../lib/store/notebooks.ts'
import { formOf, openedPart } from './givenForms.ts'

/** Farm wire in the place of what is built, priced by the bay, with a day of work. */
export const plainerFence = {
  height: '4 ft',
  infill: 'farm wire',
  buildUp: readyBuildUps.find(({ key }) => key === 'farm-wire')?.section,
  materials: [
    { what: 'posts and wire', quantity: '12', unit: 'bay', unitPrice: '20.05', suppliedBy: 'bought' },
  ],
  labour: [{ task: 'set posts', hours: '8', rate: '25.00', by: 'a' }],
}

/** Gives a section a basic fence, as if household a had saved it, with other keys of the section beside it. */
export async function aBasicFence(
  notebookId: string,
  itemId: string,
  more: Record<string, unknown> = {},
): Promise<void> {
  await editNotebook({
    id: notebookId,
    household: 'a',
    at: new Date('2027-03-01T10:00:00Z'),
    change: (stored) => {
      const document = JSON.parse(stored) as { sections: { id: string }[] }
      const sections = document.sections.map((one) =>
        one.id === itemId ? { ...one, basicFence: plainerFence, ...more } : one,
      )
      return {
        document: documentText({ ...document, sections }),
        changed: [{ itemKey: `item:${itemId}`, before: undefined, after: plainerFence }],
        kept: undefined,
      }
    },
  })
}

/** The form of a press on a section as it stands. */
export async function sectionForm(
  notebookId: string,
  id: string,
  fields: Readonly<Record<string, string>> = {},
): Promise<FormData> {
  const { base } = await openedPart(notebookId, { part: 'item', id })
  return formOf({ id, fingerprint: base, ...fields })
}
