import { describe, expect, test, vi } from 'vitest'
import { takeEntryBack } from '../../app/notebook/server/bookActions.ts'
import { enterAgain } from '../../app/notebook/server/entryAgainActions.ts'
import { replaceByFile } from '../../app/notebook/server/fileActions.ts'
import { undoEdit } from '../../app/notebook/server/undoActions.ts'
import { undoableEdits } from '../../app/notebook/server/undoableEdits.ts'
import { exampleDocument } from '../../lib/forms/exampleNotebook.ts'
import { documentText } from '../../lib/forms/parts.ts'
import { changesOf } from '../../lib/store/changes.ts'
import { everyTable } from './everyTable.ts'
import { formOf, formWithFile, takeBackForm } from './givenForms.ts'
import { againForm, editedBy, takenOutByEach, undoForm } from './givenUndo.ts'
import { outcomeOf, refusalOf } from './outcome.ts'
import { browseAs, documentOf, markEverything, worldForEachTest } from './world.ts'

vi.mock('next/headers', () => import('./browser.ts'))
const world = worldForEachTest()
const id = () => world().notebook.id

const undo = async (household: 'a' | 'b', form?: FormData) => {
  browseAs(world(), household)
  const sent = form ?? (await undoForm(id(), household))
  return outcomeOf(() => undoEdit(id(), {}, sent))
}
const day = 86_400_000

describe('an own edit', () => {
  test('is taken back, each by who made it, as a new edit on record that takes marks off', async () => {
    const before = await documentOf(id())
    await takenOutByEach(id())
    await markEverything(id())
    expect(await undo('a')).toEqual({ kind: 'redirect', to: `/notebook/${id()}/changes` })
    expect((await documentOf(id())).terms).toEqual(before.terms)
    expect((await documentOf(id())).dates ?? []).toEqual([])
    const [newest] = await changesOf(id())
    expect(newest).toMatchObject({ kind: 'edit', household: 'a', itemKey: 'terms' })
    expect((await everyTable()).Mark).not.toContainEqual(
      expect.objectContaining({ notebookId: id(), itemKey: 'terms' }),
    )
    expect(await undo('b')).toMatchObject({ kind: 'redirect' })
    expect(await documentOf(id())).toEqual(before)
  })

  test('that put a whole file in the notebook’s place is taken back whole', async () => {
    await editedBy(
      id(),
      'b',
      (document) => ({ ...document, contributions: [] }),
      new Date('2027-01-01T08:00:00Z'),
    )
    const { contributions: _none, ...before } = await documentOf(id())
    browseAs(world(), 'a')
    const other = { ...exampleDocument(), title: 'Another fence', sections: [], gates: [], contributions: [] }
    const common = { ...other, common: [], caps: {}, currency: 'JPY' }
    const {
      arrangements: _unpriced,
      buildUps: _also,
      inventory: _too,
      ...bare
    } = common as Record<string, unknown>
    const text = documentText({ ...bare, households: { a: { name: 'A' }, b: { name: 'B' } } })
    expect(await outcomeOf(() => replaceByFile(id(), {}, formWithFile(text)))).toMatchObject({
      kind: 'redirect',
    })
    expect((await documentOf(id())).title).toBe('Another fence')
    expect(await undo('a')).toMatchObject({ kind: 'redirect' })
    const { contributions: _still, ...after } = await documentOf(id())
    expect(after).toEqual(before)
  })

  test.each<[string, () => Promise<FormData>]>([
    [
      'it is the other household’s',
      async () => {
        await editedBy(id(), 'b', (document) => ({ ...document, terms: [] }))
        return undoForm(id(), 'b')
      },
    ],
    [
      'it is older than a day',
      async () => {
        await editedBy(
          id(),
          'a',
          (document) => ({ ...document, terms: [] }),
          new Date(Date.now() - day - 1000),
        )
        return undoForm(id(), 'a')
      },
    ],
    [
      'the same was changed again since, by the other',
      async () => {
        await editedBy(id(), 'a', (document) => ({ ...document, terms: [] }))
        const form = await undoForm(id(), 'a')
        await editedBy(id(), 'b', (document) => ({ ...document, terms: [{ topic: 'x', text: 'y' }] }))
        return form
      },
    ],
    ['there is no such edit', async () => formOf({ edit: '999999' })],
  ])('is not taken back where %s, and nothing is changed', async (_why, given) => {
    const form = await given()
    const before = await everyTable()
    expect(refusalOf(await undo('a', form))).toContain('Nothing was changed')
    expect(await everyTable()).toEqual(before)
  })

  test('is offered to who made it, newest first, until it is changed again', async () => {
    await takenOutByEach(id())
    await editedBy(id(), 'a', (document) => ({ ...document, title: 'Other' }))
    const offered = async (household: 'a' | 'b') =>
      [...(await undoableEdits(id(), household, new Date())).values()].map((changes) =>
        changes.map(({ itemKey }) => itemKey),
      )
    expect(await offered('a')).toEqual([['heading'], ['terms']])
    expect(await offered('b')).toEqual([['dates']])
    await editedBy(id(), 'b', (document) => ({ ...document, title: 'Third' }))
    expect(await offered('a')).toEqual([['terms']])
  })
})

describe('an entry that was taken back', () => {
  const takeBack = async (index: number) => {
    const form = await takeBackForm(id(), index)
    expect(await outcomeOf(() => takeEntryBack(id(), {}, form))).toMatchObject({ kind: 'redirect' })
  }
  const stakes = {
    household: 'a',
    kind: 'cash',
    date: '2026-11-20',
    amount: '12.00',
    note: 'Stakes',
    enteredBy: 'a',
  }
  const entered = () =>
    editedBy(id(), 'a', (document) => ({
      ...document,
      contributions: [...(document.contributions as unknown[]), stakes],
    }))
  type Entries = Record<string, unknown>[]
  const entries = async () => (await documentOf(id())).contributions as Entries

  test('is entered again as it stood; the one that was taken back stays in the book', async () => {
    await entered()
    const before = await entries()
    const index = before.length - 1
    browseAs(world(), 'a')
    await takeBack(index)
    const form = await againForm(id(), 'a')
    expect(await outcomeOf(() => enterAgain(id(), {}, form))).toEqual({
      kind: 'redirect',
      to: `/notebook/${id()}/money`,
    })
    const after = await entries()
    expect(after).toHaveLength(before.length + 1)
    expect(after[index]).toMatchObject({ struck: { by: 'a' } })
    expect(after.at(-1)).toEqual(stakes)
  })

  test('is entered again by nobody else, and nothing that still stands is', async () => {
    await entered()
    browseAs(world(), 'a')
    const index = (await entries()).length - 1
    const standing = await takeBackForm(id(), index)
    expect(refusalOf(await outcomeOf(() => enterAgain(id(), {}, standing)))).toContain('Nothing was entered')
    await takeBack(index)
    const form = await againForm(id(), 'a')
    browseAs(world(), 'b')
    const before = await everyTable()
    expect(refusalOf(await outcomeOf(() => enterAgain(id(), {}, form)))).toContain('Nothing was entered')
    expect(await everyTable()).toEqual(before)
  })
})
