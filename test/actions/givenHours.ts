import { editDocument } from '../../app/notebook/server/savePart.ts'
import type { Household } from '../../lib/core/people/household.ts'
import { addConversion, conversionsIn } from '../../lib/forms/conversions.ts'
import { fingerprintOf } from '../../lib/store/fingerprint.ts'
import { formOf } from './givenForms.ts'
import { documentOf } from './world.ts'

/** Puts arrangements into a notebook, or takes them out, whatever stood there. Both marks come off them. */
export async function putArrangements(notebookId: string, arrangements: object | undefined): Promise<void> {
  await putInDocument(notebookId, (document) => {
    const { arrangements: _was, ...rest } = document
    return arrangements === undefined ? rest : { ...rest, arrangements }
  })
}

/** Changes the document as household a would. */
export async function putInDocument(
  notebookId: string,
  change: (document: Readonly<Record<string, unknown>>) => Readonly<Record<string, unknown>>,
): Promise<void> {
  const answer = await editDocument(notebookId, 'a', (document) => ({ next: change(document) }))
  if (!('saved' in answer)) throw new Error(`not put in: ${JSON.stringify(answer)}`)
}

/** What either household could ask: money for some of the hours that it is asked for on the second section. */
export const aConversion = { to: 'money', item: 's2', hours: '2.5', rate: '22', why: 'a bad back' }

/** A conversion that a household has asked for, and that waits for the other's mark. */
export async function waitingConversion(notebookId: string, by: Household): Promise<void> {
  await putInDocument(notebookId, (document) => addConversion(document, aConversion, by, '2027-04-01'))
}

/** The form for a press on the newest conversion of a household, as it stands. */
export async function conversionForm(notebookId: string, by: Household): Promise<FormData> {
  const all = conversionsIn(await documentOf(notebookId))
  const index = all.findLastIndex((one) => one.household === by)
  return formOf({ index: String(index), fingerprint: fingerprintOf(all[index]) })
}
