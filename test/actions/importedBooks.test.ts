import { describe, expect, test, vi } from 'vitest'
import { replaceByFile } from '../../app/notebook/server/fileActions.ts'
import { documentText } from '../../lib/forms/parts.ts'
import type { NotebookDocument } from '../../lib/forms/readNotebook.ts'
import { changesOf, changesOfOther } from '../../lib/store/changes.ts'
import { withThings } from './givenBooks.ts'
import { formWithFile } from './givenForms.ts'
import { outcomeOf } from './outcome.ts'
import { browseAs, documentOf, worldForEachTest } from './world.ts'

vi.mock('next/headers', () => import('./browser.ts'))
const world = worldForEachTest()
const id = () => world().notebook.id

type Entry = Readonly<Record<string, unknown>>
const entriesOf = (document: NotebookDocument) => document.contributions as readonly Entry[]

/** Household a puts what stands there, changed, in its own place; what is on record of it for b. */
async function bringing(change: (document: NotebookDocument) => object) {
  const document = await documentOf(id())
  browseAs(world(), 'a')
  const form = formWithFile(documentText({ ...document, ...change(document) }))
  expect(await outcomeOf(() => replaceByFile(id(), {}, form))).toMatchObject({ kind: 'redirect' })
  return changesOfOther({ notebookId: id(), household: 'b', after: 0, limit: 200 })
}

describe('a notebook file that changes the books', () => {
  test('with one entry more in b’s name has it entered by a, and b is told', async () => {
    const before = await documentOf(id())
    const given = { household: 'b', kind: 'cash', date: '2026-11-20', amount: '777.00' }
    const told = await bringing((document) => ({
      contributions: [...entriesOf(document), { ...given, enteredBy: 'b' }],
    }))
    const expected = [...entriesOf(before), { ...given, enteredBy: 'a' }]
    expect((await documentOf(id())).contributions).toEqual(expected)
    expect(told[0]).toMatchObject({
      itemKey: 'contributions',
      household: 'a',
      before: before.contributions,
      after: expected,
    })
    expect(await changesOf(id())).toContainEqual(told[0])
  })

  test('takes none of b’s receipts back', async () => {
    const before = await documentOf(id())
    const index = entriesOf(before).findIndex(({ household, struck }) => household === 'b' && !struck)
    const struck = { on: '2026-11-20', by: 'b', why: 'x' }
    await bringing((document) => ({
      contributions: entriesOf(document).with(index, { ...entriesOf(document)[index], struck }),
    }))
    expect(await documentOf(id())).toEqual(before)
    expect(index).toBeGreaterThanOrEqual(0)
  })

  test('with other things tells b what they were and are', async () => {
    await withThings(id(), { kind: 'borrowed', what: 'auger', item: '', household: 'a' })
    const was = (await documentOf(id())).books
    const [told] = await bringing(() => ({ books: {} }))
    expect(told).toMatchObject({ kind: 'edit', itemKey: 'books', before: was, after: {} })
  })
})
