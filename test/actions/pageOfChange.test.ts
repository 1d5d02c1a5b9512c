import { beforeEach, expect, test, vi } from 'vitest'
import { type Opened, openNotebook } from '../../app/notebook/server/opened.ts'
import { pageOfChange } from '../../app/notebook/server/pageOfChange.ts'
import { toldTogether } from '../../app/notebook/server/toldTogether.ts'
import { wholeNotebook } from '../../lib/core/agreement/agreedItems.ts'
import type { Change } from '../../lib/store/changes.ts'
import { happenings } from '../../lib/store/happenings.ts'
import { everyAddress } from './serverFiles.ts'
import { browseAs, worldForEachTest } from './world.ts'

vi.mock('next/headers', () => import('./browser.ts'))
const world = worldForEachTest()
let opened: Opened
beforeEach(async () => {
  browseAs(world(), 'a')
  opened = await openNotebook(world().notebook.id)
})

const place = (kind: Change['kind'], itemKey: string, detail: Record<string, unknown> = {}) =>
  pageOfChange(opened, { kind, itemKey, detail })?.replace(`/notebook/${world().notebook.id}`, '')

test('everything that goes on record leads to a page that there is', async () => {
  const pages = [...(await everyAddress()).keys()]
  const steps = ['entered', 'bought', 'confirmed', 'conversion', 'thing', 'valuation']
  const details = [{}, { proposal: 3 }, ...steps.map((books) => ({ books, index: undefined }))]
  for (const kind of [...happenings, 'edit'] as const)
    for (const detail of details)
      for (const key of [wholeNotebook, 'item:s1', 'item:g1', 'line', 'parties', 'caps', 'terms', 'checks']) {
        const to = (place(kind, key, detail) ?? '').split('#')[0] ?? ''
        const name = to.startsWith('/item/') ? '/item/[itemId]' : to
        expect(pages).toContain(`app/notebook/[notebookId]${name}/page.tsx#default`)
      }
})

test('an entry of the book, a proposal and a thing each have a place on their page', () => {
  expect(place('books', 'item:s1', { books: 'entered', index: '7' })).toBe('/money#book-entry-7')
  expect(place('books', wholeNotebook, { books: 'thing changed' })).toBe('/books#things')
  expect(place('reply', wholeNotebook, { proposal: 2 })).toBe('/proposals#proposal-2')
  expect(place('held back', wholeNotebook)).toBe('/needs')
})

test('what is about an item that is gone leads nowhere', () => {
  expect(place('edit', 'item:s99')).toBeUndefined()
})

const change = (id: number, kind: Change['kind']) => ({ id, kind }) as Change

test('only three and more of one kind, one after the other, are told in one line, and none is lost', () => {
  const list = [
    change(9, 'books'),
    change(8, 'books'),
    change(7, 'books'),
    change(6, 'edit'),
    change(5, 'mark'),
    change(4, 'mark'),
    change(3, 'edit'),
    change(2, 'edit'),
    change(1, 'edit'),
  ]
  const told = toldTogether(list)
  expect(told.map(({ newest, more }) => [newest.id, more.map(({ id }) => id)])).toEqual([
    [9, [8, 7]],
    [6, []],
    [5, []],
    [4, []],
    [3, []],
    [2, []],
    [1, []],
  ])
})
