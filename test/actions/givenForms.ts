import { itemChanges } from '../../app/notebook/server/itemChanges.ts'
import { itemsBase, type ProposalDraft, startingDraft } from '../../app/notebook/server/proposalDraft.ts'
import { shownPrint, withSeen } from '../../app/notebook/server/proposalSeen.ts'
import type { Household } from '../../lib/core/people/household.ts'
import { exampleDocument } from '../../lib/forms/exampleNotebook.ts'
import { documentText, type Part, readPart, removeItem } from '../../lib/forms/parts.ts'
import { changesOf } from '../../lib/store/changes.ts'
import { fingerprintOf } from '../../lib/store/fingerprint.ts'
import { editNotebook } from '../../lib/store/notebooks.ts'
import { makeProposal, proposalsOf } from '../../lib/store/proposals.ts'
import { makeReaderLink, type ReaderContent, readerLinksOf } from '../../lib/store/readerLinks.ts'
import { newestRevision } from '../../lib/store/revisions.ts'
import { writtenLetter } from '../words/letter/writtenLetter.ts'
import { documentOf, fingerprintOfItem } from './world.ts'

/** A form as a browser sends it. */
export function formOf(fields: Readonly<Record<string, string | Blob>>): FormData {
  const form = new FormData()
  for (const [name, value] of Object.entries(fields)) form.set(name, value)
  return form
}

/** A form with a notebook file in it. */
export function formWithFile(content: string | Uint8Array<ArrayBuffer>, name = 'notebook.json'): FormData {
  return formOf({ file: new File([content], name, { type: 'application/json' }) })
}

/** The form for a mark on an item as it stands. */
export async function markForm(notebookId: string, itemKey: string): Promise<FormData> {
  const fingerprint = await fingerprintOfItem(notebookId, itemKey)
  return formOf({ itemKey, fingerprint, back: `/notebook/${notebookId}/line` })
}

/** A part as a form opens it: what stands there, and the name of that version. */
export async function openedPart<Draft = Record<string, unknown>>(
  notebookId: string,
  part: Part,
): Promise<{ draft: Draft; base: string }> {
  const draft = readPart(await documentOf(notebookId), part)
  return { draft: draft as Draft, base: fingerprintOf(draft) }
}

/** The form that shares an item, as it stands, by another way. */
export async function chooseForm(notebookId: string, id: string, way: string): Promise<FormData> {
  const { base } = await openedPart(notebookId, { part: 'item', id })
  return formOf({ id, way, fingerprint: base })
}

/** The form that takes an entry of the book back. */
export async function takeBackForm(notebookId: string, index: number): Promise<FormData> {
  const { contributions } = await documentOf(notebookId)
  const fingerprint = fingerprintOf((contributions as unknown[])[index])
  return formOf({ index: String(index), fingerprint, why: 'entered twice' })
}

/** Which text a party of this index signs: the revision that stands. */
export async function signingPlace(
  notebookId: string,
  partyIndex = 0,
): Promise<{ revisionId: string; sha256: string; partyIndex: number }> {
  const revision = await newestRevision(notebookId)
  if (revision === undefined) throw new Error('Nothing has been put up for signing.')
  return { revisionId: revision.id, sha256: revision.sha256, partyIndex }
}

/** Tomorrow, as a date field sends it. */
export function tomorrow(): string {
  return new Date(Date.now() + 86_400_000).toISOString().slice(0, 10)
}

/** Removes the last gate of the example, as household a would on its page. */
export async function gateRemovedFrom(id: string): Promise<void> {
  await editNotebook({
    id,
    household: 'a',
    at: new Date('2027-03-02T19:00:00Z'),
    change: (stored) => {
      const document = JSON.parse(stored)
      const next = removeItem(document, 'g4')
      return { document: documentText(next), changed: itemChanges(document, next), kept: undefined }
    },
  })
}

/** Writes the first letter of a notebook. */
export async function aLetterIn(id: string, changed: object = {}): Promise<void> {
  const letter = { ...writtenLetter, ...changed }
  await editNotebook({
    id,
    household: 'a',
    at: new Date('2027-03-01T19:00:00Z'),
    change: (stored) => ({
      document: documentText({ ...JSON.parse(stored), letter }),
      changed: [{ itemKey: 'letter', before: {}, after: letter }],
      kept: undefined,
    }),
  })
}

/** An item as it would be with these keys. */
async function proposedAs(notebookId: string, id: string, change: object) {
  const { draft, base } = await openedPart(notebookId, { part: 'item', id })
  return { id, fingerprint: base, was: draft, item: { ...draft, ...change } }
}

/** What a household proposes for an item, in the store; its id. */
export async function aProposal(
  notebookId: string,
  household: Household,
  id: string,
  change: object = { share: { together: { principle: 'equal' } } },
): Promise<number> {
  const items = withSeen(await documentOf(notebookId), [await proposedAs(notebookId, id, change)])
  const made = await makeProposal({
    notebookId,
    household,
    items,
    text: `as ${household} would have it`,
    at: new Date(),
    refusal: () => undefined,
  })
  if (typeof made === 'string' || 'refused' in made) throw new Error('This proposal was refused.')
  return made.id
}

/** Each household proposes something: a for s1, b for s2. */
export async function proposalsOfBoth(notebookId: string): Promise<void> {
  await aProposal(notebookId, 'a', 's1')
  await aProposal(notebookId, 'b', 's2')
}

/** The form about the newest proposal of a household. */
export async function proposalForm(
  notebookId: string,
  household: Household,
  fields: Readonly<Record<string, string>> = {},
): Promise<FormData> {
  const found = (await proposalsOf(notebookId)).findLast((one) => one.household === household)
  if (found === undefined) throw new Error('This household has proposed nothing.')
  const shown = shownPrint(await documentOf(notebookId), found.items)
  return formOf({ id: String(found.id), shown, ...fields })
}

/** A form that proposes halves of both pots together for these items, as it is opened. */
export async function proposingForm(
  notebookId: string,
  ids: readonly string[] = ['s1'],
  text = 'Simpler.',
): Promise<{ readonly base: string; readonly draft: ProposalDraft }> {
  const document = await documentOf(notebookId)
  const draft = startingDraft(document, ids, undefined)
  const items = draft.items.map((one) => ({ ...one, share: { together: { principle: 'equal' } } }))
  return { base: itemsBase(document), draft: { ...draft, items, text } }
}

/** Makes a reader's link to a notebook, and gives its token. */
export async function readersLink(notebookId: string, content: ReaderContent = 'costs'): Promise<string> {
  const at = new Date()
  const { token } = await makeReaderLink({
    notebookId,
    household: 'a',
    content,
    label: `reads ${content}`,
    expiresAt: new Date(at.getTime() + 86_400_000),
    at,
  })
  return token
}

/** The form that ends the newest reader's link of a notebook. */
export async function endingForm(notebookId: string): Promise<FormData> {
  const [link] = await readerLinksOf(notebookId)
  if (link === undefined) throw new Error('No link was made for a reader.')
  return formOf({ id: link.id })
}

/** The example as a file, with something in it that its notebook has not. */
export function changedFile(): string {
  return documentText({ ...exampleDocument(), title: 'The line, from a file', caps: {} })
}

/** A first split of 60 ft: 900.00 of materials and 20 hours at 15.00, in halves. */
export const aFirstSplit = {
  length: '60 ft',
  height: '5 ft',
  materials: '900.00',
  hours: '20',
  rate: '15.00',
  by: 'a',
  way: 'equal',
}

export const aNewSection = {
  name: 'Along the orchard',
  from: '132 ft',
  to: '150 ft',
  materials: [],
  labour: [],
  share: { materials: { principle: 'equal' }, labour: { principle: 'equal' } },
}

export const aHeading = {
  title: 'A new line',
  currency: 'USD',
  units: 'metric',
  households: { a: { name: 'The Alders' }, b: { name: 'The Birches' } },
}

/** The press that says that everything on record so far was seen. */
export async function seenForm(notebookId: string): Promise<FormData> {
  const [newest] = await changesOf(notebookId, { happenings: true, limit: 1 })
  return formOf({ newest: String(newest?.id ?? 0) })
}
