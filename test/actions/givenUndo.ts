import { itemChanges } from '../../app/notebook/server/itemChanges.ts'
import type { Household } from '../../lib/core/people/household.ts'
import { strikeContribution, writerOf } from '../../lib/forms/book.ts'
import { documentText } from '../../lib/forms/parts.ts'
import type { NotebookDocument } from '../../lib/forms/readNotebook.ts'
import { changesOf } from '../../lib/store/changes.ts'
import { fingerprintOf } from '../../lib/store/fingerprint.ts'
import { editNotebook } from '../../lib/store/notebooks.ts'
import { formOf } from './givenForms.ts'
import { documentOf } from './world.ts'

/** Edits a notebook as one household, with what goes on record of it. */
export async function editedBy(
  id: string,
  household: Household,
  change: (document: NotebookDocument) => NotebookDocument,
  at = new Date(),
): Promise<void> {
  await editNotebook({
    id,
    household,
    at,
    change: (stored) => {
      const document = JSON.parse(stored) as NotebookDocument
      const next = change(document)
      return { document: documentText(next), changed: itemChanges(document, next), kept: undefined }
    },
  })
}

/** Household a takes out the terms, household b the dates, just now. */
export async function takenOutByEach(id: string): Promise<void> {
  await editedBy(id, 'a', (document) => ({ ...document, terms: [] }))
  await editedBy(id, 'b', (document) => ({ ...document, dates: [] }))
}

/** The form that takes a household's newest edit back. */
export async function undoForm(id: string, household: Household): Promise<FormData> {
  const newest = (await changesOf(id)).find((change) => change.household === household)
  return formOf({ edit: String(newest?.edit ?? 0) })
}

type Entry = Readonly<Record<string, unknown>>
const entriesOf = (document: NotebookDocument) => (document.contributions ?? []) as readonly Entry[]

/** Each household takes back what it had just entered. */
export async function struckByEach(id: string): Promise<void> {
  for (const household of ['a', 'b'] as const)
    await editedBy(id, household, (document) => {
      const struck = { on: '2027-05-01', by: household, why: 'by mistake' }
      const given = { household, kind: 'cash', date: '2026-11-20', amount: '12.00', enteredBy: household }
      const entered = { ...document, contributions: [...entriesOf(document), given] }
      const next = strikeContribution(entered, entriesOf(document).length, struck, () => true)
      if (next === undefined) throw new Error(`Household ${household} has no entry to take back.`)
      return next
    })
}

/** The form that enters once more what a household took back. */
export async function againForm(id: string, household: Household): Promise<FormData> {
  const all = entriesOf(await documentOf(id))
  const index = all.findLastIndex((entry) => 'struck' in entry && writerOf(entry) === household)
  return formOf({ index: String(index), fingerprint: fingerprintOf(all[index]) })
}
