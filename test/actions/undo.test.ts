import { describe, expect, test, vi } from 'vitest'
import { takeEntryBack } from '../../app/notebook/server/bookActions.ts'
import { markLineBought } from '../../app/notebook/server/boughtActions.ts'
import { enterAgain } from '../../app/notebook/server/entryAgainActions.ts'
import { replaceByFile } from '../../app/notebook/server/fileActions.ts'
import { undoEdit } from '../../app/notebook/server/undoActions.ts'
import { undoableEdits } from '../../app/notebook/server/undoableEdits.ts'
import { exampleDocument } from '../../lib/forms/exampleNotebook.ts'
import { documentText } from '../../lib/forms/parts.ts'
import type { NotebookDocument } from '../../lib/forms/readNotebook.ts'
import { changesOf } from '../../lib/store/changes.ts'
import { everyTable } from './everyTable.ts'
import { settledBooks } from './givenAccount.ts'
import { leftover, markedBy, withBooks, withThings } from './givenBooks.ts'
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
const borrowed = { kind: 'borrowed', what: 'auger of a cousin', item: '', household: 'a' }
const entryOfA = { household: 'a', kind: 'cash', date: '2026-11-20', amount: '777.00', enteredBy: 'a' }
const decisionsOf = ({ decisions }: NotebookDocument) => ({
  decisions: [{ text: 'Another', date: '2026-11-20' }, ...(decisions as object[]).slice(1).toReversed()],
})

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
    await withThings(id(), borrowed, { ...leftover, marks: markedBy('b') })
    await withBooks(id(), (document) => ({ ...document, colourOfGate: 'grey' }))
    const before = await documentOf(id())
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
    expect(documentText(await documentOf(id()))).toBe(documentText(before))
    expect(await undo('a')).toMatchObject({ kind: 'redirect' })
    expect((await documentOf(id())).title).toBe('Another fence')
  })

  test.each<[string, (document: NotebookDocument) => object]>([
    ['entries alone', (document) => ({ contributions: [...(document.contributions as object[]), entryOfA] })],
    ['things alone', () => ({ books: { things: [{ ...borrowed, what: 'ladder' }] } })],
    ['an order alone', (document) => ({ sections: (document.sections as object[]).toReversed() })],
    ['other keys alone', () => ({ colourOfGate: 'white' })],
    ['other decisions in another order', (document) => decisionsOf(document)],
  ])('by which a file brought %s is put back as it was, by who brought it, once', async (_what, changed) => {
    await withThings(id(), borrowed)
    const before = await documentOf(id())
    browseAs(world(), 'a')
    await outcomeOf(() =>
      replaceByFile(id(), {}, formWithFile(documentText({ ...before, ...changed(before) }))),
    )
    expect(await documentOf(id())).not.toEqual(before)
    const form = await undoForm(id(), 'a')
    expect(await undo('a', form)).toMatchObject({ kind: 'redirect' })
    expect(await documentOf(id())).toEqual(before)
    expect(refusalOf(await undo('a', form))).toContain('Nothing was changed')
  })

  test.each<[string, (document: NotebookDocument) => NotebookDocument]>([
    [
      'an entry came in',
      (document) => ({ ...document, contributions: [...(document.contributions as object[]), entryOfA] }),
    ],
    ['a thing came in', (document) => ({ ...document, books: { things: [borrowed, borrowed] } })],
    ['the currency became another', (document) => ({ ...document, currency: 'EUR' })],
  ])(
    'that put a file in the notebook’s place stays where %s since, and is not offered',
    async (_what, since) => {
      await withThings(id(), borrowed)
      const file = { ...(await documentOf(id())), contributions: [], books: {} }
      browseAs(world(), 'a')
      await outcomeOf(() => replaceByFile(id(), {}, formWithFile(documentText(file))))
      const form = await undoForm(id(), 'a')
      await editedBy(id(), 'b', since)
      expect([...(await undoableEdits(id(), 'a', new Date())).keys()]).toEqual([])
      const before = await everyTable()
      expect(refusalOf(await undo('a', form))).toContain('Nothing was changed')
      expect(await everyTable()).toEqual(before)
    },
  )

  test('of the books, which changed no item itself, is not offered and not put back', async () => {
    const wire = { item: 's1', pot: 'materials', what: 'wire', place: '1' }
    const lines = [{ ...wire, amount: '150.00' }]
    const receipt = { household: 'a', kind: 'cash', amount: '150.00', date: '2027-05-03', for: 's1', lines }
    const bought = [{ ...wire, amount: '150.00', marks: { a: { on: '2027-05-20' } } }]
    await settledBooks(id(), { contributions: [receipt], books: { bought } })
    browseAs(world(), 'b')
    const mark = formOf({ line: JSON.stringify(wire), amount: '150.00' })
    expect(await outcomeOf(() => markLineBought(id(), {}, mark))).toMatchObject({ kind: 'redirect' })
    expect(await changesOf(id())).toMatchObject([{ itemKey: 'item:s1', household: 'b' }])
    expect((await undoableEdits(id(), 'b', new Date())).size).toBe(0)
    const before = await everyTable()
    expect(refusalOf(await undo('b'))).toContain('it stands already as it stood before')
    expect(await everyTable()).toEqual(before)
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

  test('is entered again once, however often the same form is sent, and anew after it was taken back again', async () => {
    await entered()
    const index = (await entries()).length - 1
    browseAs(world(), 'a')
    await takeBack(index)
    const form = await againForm(id(), 'a')
    const again = () => outcomeOf(() => enterAgain(id(), {}, form))
    expect((await Promise.all([again(), again()])).map(({ kind }) => kind).sort()).toEqual([
      'answer',
      'redirect',
    ])
    const before = await everyTable()
    expect(refusalOf(await again())).toContain('an entry that says the same stands in the book')
    expect(await everyTable()).toEqual(before)

    await takeBack(index + 1)
    expect(await again()).toMatchObject({ kind: 'redirect' })
    expect((await entries()).slice(index).map((entry) => 'struck' in entry)).toEqual([true, true, false])
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
