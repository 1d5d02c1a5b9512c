import { expect, test } from 'vitest'
import { changesOf } from '../../lib/store/changes.ts'
import { haveSeen, seenUpTo } from '../../lib/store/looks.ts'
import { sayBesideItem } from '../../lib/store/messages.ts'
import { createNotebook } from '../../lib/store/notebooks.ts'
import { pulseOf } from '../../lib/store/pulse.ts'
import { temporaryDatabaseForEachTest } from './temporaryDatabase.ts'

temporaryDatabaseForEachTest()
const at = new Date('2027-03-01T19:00:00Z')

async function made(): Promise<string> {
  return (await createNotebook({ document: '{}', example: false, at })).id
}

/** Says something, and gives the number of the entry that it left in the log. */
async function said(notebookId: string): Promise<number> {
  await sayBesideItem({ notebookId, itemKey: 'line', household: 'a', kind: 'remark', text: 'Seen.', at })
  return (await changesOf(notebookId, { happenings: true }))[0]?.id ?? 0
}

test('what a household has seen is its own, and never goes back', async () => {
  const notebookId = await made()
  const [first, second] = [await said(notebookId), await said(notebookId)]
  expect(await seenUpTo(notebookId, 'b')).toBe(0)
  await haveSeen({ notebookId, household: 'b', newest: second, at })
  await haveSeen({ notebookId, household: 'b', newest: first, at })
  expect(await seenUpTo(notebookId, 'b')).toBe(second)
  expect(await seenUpTo(notebookId, 'a')).toBe(0)
})

test('an entry that the notebook’s log has not can’t have been seen', async () => {
  const notebookId = await made()
  const elsewhere = await said(await made())
  await haveSeen({ notebookId, household: 'b', newest: elsewhere, at })
  await haveSeen({ notebookId, household: 'b', newest: 999, at })
  expect(await seenUpTo(notebookId, 'b')).toBe(0)
})

test('a notebook’s pulse is another one after anything that goes on record, and there is none of no notebook', async () => {
  const notebookId = await made()
  const before = await pulseOf(notebookId)
  await said(notebookId)
  const after = await pulseOf(notebookId)
  expect(after?.text).not.toBe(before?.text)
  expect(after?.newest).toEqual({ household: 'a', itemKey: 'line', kind: 'message' })
  expect(await pulseOf('AAAAAAAAAAAAAAAAAAAAAA')).toBeUndefined()
})
