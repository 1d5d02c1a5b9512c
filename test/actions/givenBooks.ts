import type { Household } from '../../lib/core/people/household.ts'
import { lineValue } from '../../lib/forms/entryDraft.ts'
import { documentText } from '../../lib/forms/parts.ts'
import type { NotebookDocument } from '../../lib/forms/readNotebook.ts'
import { thingWithoutMarks } from '../../lib/forms/things.ts'
import { fingerprintOf } from '../../lib/store/fingerprint.ts'
import { editNotebook } from '../../lib/store/notebooks.ts'
import { formOf } from './givenForms.ts'
import { documentOf } from './world.ts'

/** Today, as a date field sends it. */
export function todaysDay(): string {
  return new Date().toISOString().slice(0, 10)
}

/**
 * An entry in the book of today, as its form sends it. The notebooks of these tests were started on a day of their own,
 * so it says that its day is meant.
 */
export function anEntry(more: Readonly<Record<string, unknown>> = {}): Record<string, unknown> {
  return { household: 'b', kind: 'cash', amount: '12.50', date: todaysDay(), earlierIsMeant: true, ...more }
}

/** A line of the example's plan: the hire of the auger. */
export const augerHire = { item: 'c1', pot: 'materials', what: 'auger hire', place: '1' } as const

/** A line that the example's plan has not. */
export const goneLine = { item: 's1', pot: 'materials', what: 'barbed wire', place: '9' } as const

/** Writes books straight into the document, as somebody's edits would have left them. */
export async function withBooks(
  notebookId: string,
  change: (document: NotebookDocument) => NotebookDocument,
): Promise<void> {
  await editNotebook({
    id: notebookId,
    household: 'a',
    at: new Date('2027-04-03T10:00:00Z'),
    change: (stored) => ({
      document: documentText(change(JSON.parse(stored))),
      changed: [],
      kept: undefined,
    }),
  })
}

export const markedBy = (...households: readonly Household[]) =>
  Object.fromEntries(households.map((household) => [household, { on: '2027-04-03' }]))

/** A receipt of each household for the hire of the auger, one of each for a line that is gone, and goods above their value. */
export async function withReceipts(notebookId: string): Promise<void> {
  const receipt = (household: Household, line: object, note: string) => ({
    household,
    kind: 'cash',
    amount: '60.00',
    date: '2027-04-01',
    for: 'c1',
    note,
    enteredBy: household,
    lines: [{ ...line, amount: '60.00' }],
  })
  const goods = {
    household: 'a',
    kind: 'material',
    amount: '90.00',
    date: '2027-04-01',
    for: 's2',
    note: 'pipe from the yard',
    enteredBy: 'a',
    valuation: { documented: '80.00', weight: '200', unit: 'lb', yardPrice: '0.30', saidBy: 'the yard' },
  }
  await withBooks(notebookId, (document) => ({
    ...document,
    contributions: [
      ...(document.contributions as unknown[]),
      receipt('a', augerHire, 'auger, first day'),
      receipt('b', augerHire, 'auger, second day'),
      receipt('a', goneLine, 'wire of a'),
      receipt('b', goneLine, 'wire of b'),
      goods,
    ],
  }))
}

/** A leftover that household b is to keep. */
export const leftover = { kind: 'leftover', what: 'mesh, 12 ft', item: 's2', household: 'b', value: '20.00' }

/** The leftover, marked by these. */
export async function withThing(notebookId: string, marks: object = {}): Promise<void> {
  await withThings(notebookId, { ...leftover, marks })
}

export async function withThings(notebookId: string, ...things: readonly object[]): Promise<void> {
  await withBooks(notebookId, (document) => ({
    ...document,
    books: { ...(document.books as object), things },
  }))
}

/** The leftover, and the same once more, which household a has taken off the list. */
export async function withThingTakenOff(notebookId: string, marks: object = {}): Promise<void> {
  await withThings(notebookId, { ...leftover, marks }, { ...leftover, off: { on: '2027-04-03', by: 'a' } })
}

/** The press that marks the hire of the auger. */
export function boughtForm(amount = '120.00'): FormData {
  return formOf({ line: lineValue(augerHire), amount })
}

export async function thingForm(notebookId: string, index = 0): Promise<FormData> {
  const { books } = await documentOf(notebookId)
  const thing = (books as { things: Record<string, unknown>[] }).things[index] ?? {}
  return formOf({ index: String(index), fingerprint: fingerprintOf(thingWithoutMarks(thing)) })
}

/** The place of an entry in the book, by its note, and what stands there. */
async function entryNamed(notebookId: string, note: string) {
  const { contributions } = await documentOf(notebookId)
  const entries = contributions as readonly { readonly note?: string }[]
  const index = entries.findIndex((entry) => entry.note === note)
  return { index: String(index), fingerprint: fingerprintOf(entries[index]) }
}

/** The press that puts an entry's line on the hire of the auger. */
export async function moveForm(notebookId: string, household: Household, to = lineValue(augerHire)) {
  return formOf({ ...(await entryNamed(notebookId, `wire of ${household}`)), line: '0', to })
}

/** The press on an entry of the book that has this note. */
export async function entryForm(notebookId: string, note: string): Promise<FormData> {
  return formOf(await entryNamed(notebookId, note))
}

export async function valuationForm(notebookId: string, note = 'pipe from the yard'): Promise<FormData> {
  return entryForm(notebookId, note)
}
