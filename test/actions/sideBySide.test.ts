import type { ReactNode } from 'react'
import { describe, expect, test, vi } from 'vitest'
import { draftedItems } from '../../app/notebook/server/proposalDraft.ts'
import { chooseWay } from '../../app/notebook/server/sideBySideActions.ts'
import { wayShares } from '../../app/notebook/server/wayShares.ts'
import { itemSideBySide } from '../../lib/core/shares/sideBySide.ts'
import { documentText } from '../../lib/forms/parts.ts'
import { readDocument } from '../../lib/forms/readNotebook.ts'
import { marksOf } from '../../lib/store/marks.ts'
import { editNotebook } from '../../lib/store/notebooks.ts'
import { moneyWords } from '../../lib/words/money.ts'
import { shownMarkup } from '../shownMarkup.ts'
import { everyTable } from './everyTable.ts'
import { chooseForm } from './givenForms.ts'
import { outcomeOf } from './outcome.ts'
import { type AnyFunction, everyAddress } from './serverFiles.ts'
import { browseAs, documentOf, markEverything, worldForEachTest } from './world.ts'

vi.mock('next/headers', () => import('./browser.ts'))
vi.mock('next/navigation', async (original) => ({
  ...(await original<object>()),
  useRouter: () => ({}),
  usePathname: () => '/',
}))
const world = worldForEachTest()

async function page(
  name: string,
  names: Record<string, string> = {},
  asks: Record<string, string> = {},
): Promise<string> {
  const show = (await everyAddress()).get(`app/notebook/[notebookId]/${name}/page.tsx#default`) as AnyFunction
  const params = Promise.resolve({ notebookId: world().notebook.id, ...names })
  const end = await outcomeOf(() => show({ params, searchParams: Promise.resolve(asks) }))
  if (end.kind !== 'answer') throw new Error(`no page: ${end.kind}`)
  return shownMarkup(end.answer as ReactNode)
}

async function shareOf(id: string): Promise<unknown> {
  const { sections } = (await documentOf(world().notebook.id)) as {
    sections: { id: string; share: unknown }[]
  }
  return sections.find((section) => section.id === id)?.share
}

async function press(form: FormData) {
  const { id } = world().notebook
  return outcomeOf(() => chooseWay(id, {}, form))
}

const halves = { materials: { principle: 'equal' }, labour: { principle: 'equal' } }

describe('choosing a way with one press', () => {
  test('puts it into the item, from the item’s own figures, and takes both marks off that item alone', async () => {
    const { id } = world().notebook
    browseAs(world(), 'b')
    await markEverything(id)
    const before = await marksOf(id)
    const lengths = { principle: 'length', a: '32 ft', b: '28 ft' }
    expect(await press(await chooseForm(id, 's2', 'length'))).toEqual({
      kind: 'redirect',
      to: `/notebook/${id}/side-by-side/s2`,
    })
    expect(await shareOf('s2')).toEqual({ materials: lengths, labour: lengths })
    const gone = before.filter(({ itemKey }) => itemKey === 'item:s2')
    expect(gone).toHaveLength(2)
    expect(await marksOf(id)).toEqual(before.filter((mark) => !gone.includes(mark)))
  })

  test('is refused with words, and changes nothing, where the item was changed or removed since', async () => {
    const { id } = world().notebook
    browseAs(world(), 'a')
    const [form, again] = [await chooseForm(id, 's1', 'equal'), await chooseForm(id, 's1', 'one-a')]
    await press(form)
    expect(await shareOf('s1')).toEqual(halves)
    const before = await everyTable()
    expect(await press(again)).toEqual({
      kind: 'answer',
      answer: { refused: expect.stringMatching(/^This item was changed since/) },
    })
    again.set('id', 's99')
    expect(await press(again)).toEqual({
      kind: 'answer',
      answer: { refused: expect.stringContaining('This item was removed in the meantime.') },
    })
    expect(await everyTable()).toEqual(before)
  })

  test('is refused where the item lacks the figures for it', async () => {
    const { id } = world().notebook
    browseAs(world(), 'a')
    const before = await everyTable()
    expect(await press(await chooseForm(id, 's1', 'benefit'))).toMatchObject({
      answer: { refused: expect.stringMatching(/can’t be used/) },
    })
    expect(await press(await chooseForm(id, 's1', 'use'))).toMatchObject({
      answer: { refused: expect.stringMatching(/can’t be used/) },
    })
    expect(await everyTable()).toEqual(before)
  })
})

describe('the pages', () => {
  test('show every usable way with the core’s figures, the middle, the steps and why others can’t be used', async () => {
    const read = readDocument(await documentOf(world().notebook.id))
    if (!read.ok) throw new Error('the notebook holds')
    const { notebook } = read.value
    const found = itemSideBySide(notebook, 's1')
    browseAs(world(), 'a')
    const html = await page('side-by-side/[itemId]', { itemId: 's1' })
    const figures = [...(found?.ways ?? []).map(({ shares }) => shares), found?.range?.middle]
    expect(figures.length).toBeGreaterThan(3)
    for (const one of figures)
      for (const amount of [one?.a ?? -1n, one?.b ?? -1n])
        expect(html).toContain(moneyWords(amount, notebook.currency))
    expect(html.match(/Why: every step/g)).toHaveLength(found?.ways.length ?? 0)
    expect(html.match(/Choose this/g)).toHaveLength((found?.ways.length ?? 0) - 1)
    expect(html).toContain('Only a gate has passages to count.')
    expect(html).toContain('way-bar-middle')
    expect(html.match(/class="way-bar-foot"/g)).toHaveLength(1)
  })

  test('show an item that is shared by two ways as it is now, beside the ways', async () => {
    browseAs(world(), 'b')
    const html = await page('side-by-side/[itemId]', { itemId: 's2' })
    expect(html).toContain('As it is now')
    expect(html.match(/class="way-bar-foot"/g)).toHaveLength(1)
  })

  test('show the whole fence, or say what keeps it from being shared', async () => {
    const { id } = world().notebook
    browseAs(world(), 'a')
    await markEverything(id)
    const whole = await page('side-by-side')
    expect(whole).toContain('Items that follow it')
    expect(whole).toContain('Before caps')
    expect(whole.match(/\(chosen now\)/g)).toHaveLength(1)
    await editNotebook({
      id,
      household: 'a',
      at: new Date('2027-03-01T10:00:00Z'),
      change: (document) => ({
        document: documentText({ ...JSON.parse(document), caps: { a: '1', b: '1' } }),
        changed: [],
        kept: undefined,
      }),
    })
    await markEverything(id)
    const html = await page('side-by-side')
    expect(html).toContain('fall')
    expect(html).not.toContain('Items that follow it')
  })

  test('the item’s page and Shares open their figures into steps', async () => {
    browseAs(world(), 'a')
    expect(await page('item/[itemId]', { itemId: 's1' })).toContain('Sharing the materials')
    expect(await page('shares')).toContain('All items together ask for')
  })
})

/** The document with this common cost as its last, in the place of one with the same id. */
async function withCommon(added: { readonly id: string; readonly spread: string }): Promise<void> {
  await editNotebook({
    id: world().notebook.id,
    household: 'a',
    at: new Date('2027-03-01T10:00:00Z'),
    change: (document) => {
      const { common, ...rest } = JSON.parse(document) as { common: { id: string }[] }
      const others = common.filter(({ id }) => id !== added.id)
      return { document: documentText({ ...rest, common: [...others, added] }), changed: [], kept: undefined }
    },
  })
}

describe('a common cost that is laid on the sections and gates', () => {
  const auger = {
    id: 'laid',
    name: 'Auger',
    materials: [{ what: 'auger', quantity: '1', unitPrice: '90.00', suppliedBy: 'bought' }],
    share: halves,
    spread: 'length',
  }

  test('has no ways to choose from, says why, and refuses one that is pressed all the same', async () => {
    const { id } = world().notebook
    await withCommon(auger)
    browseAs(world(), 'a')
    const html = await page('side-by-side/[itemId]', { itemId: 'laid' })
    expect(html).toContain('This cost is laid on the sections and gates by length.')
    expect(html).not.toContain('Choose this')
    const before = await everyTable()
    expect(await press(await chooseForm(id, 'laid', 'one-a'))).toMatchObject({
      answer: { refused: expect.stringMatching(/^This cost is laid on the sections and gates by length/) },
    })
    expect(await everyTable()).toEqual(before)
  })

  test('brings the table of each item with its part to the Shares page, and its steps beside it', async () => {
    await withCommon(auger)
    browseAs(world(), 'b')
    expect(await page('shares')).toContain('Each item with its part of the common costs')
    expect(await page('side-by-side/[itemId]', { itemId: 'laid' })).toContain(
      'Laid on the sections and gates by length.',
    )
    await withCommon({ ...auger, spread: '' })
    expect(await page('shares')).not.toContain('Each item with its part of the common costs')
  })

  test('is shared by itself where a way to share is proposed for it', async () => {
    await withCommon(auger)
    const document = await documentOf(world().notebook.id)
    const one = {
      id: 'laid',
      in: true,
      fingerprint: '',
      theirs: false,
      share: { together: { principle: 'equal' } },
    }
    const draft = { manner: 'each', share: {}, text: '', items: [one] } as const
    const [drafted] = draftedItems(document, draft, undefined)
    expect(drafted?.item).toMatchObject({ id: 'laid', share: { together: { principle: 'equal' } } })
    expect(drafted?.item).not.toHaveProperty('spread')
  })
})

describe('proposing a way with one press', () => {
  test('leads from each way that is not chosen into a new proposal that begins with it', async () => {
    const { id } = world().notebook
    browseAs(world(), 'b')
    const html = await page('side-by-side/[itemId]', { itemId: 's2' })
    expect(html).toContain(`/notebook/${id}/proposals/new?way=length&amp;item=s2`)
    const form = await page('proposals/new', {}, { way: 'length', item: 's2' })
    expect(form).toContain('value="32 ft"')
    expect(form).toContain('value="28 ft"')
    expect(form.match(/type="checkbox"[^>]*checked=""/g)).toHaveLength(1)
  })

  test('begins with blank figures where none stand in the item', async () => {
    browseAs(world(), 'b')
    const html = await page('side-by-side/[itemId]', { itemId: 's1' })
    expect(html).toMatch(/way=benefit&amp;item=s1"[^>]*>Or propose it with figures/)
    const form = await page('proposals/new', {}, { way: 'benefit', item: 's1' })
    expect(form).toMatch(/<option value="benefit" selected="">/)
  })

  test('of the whole fence takes every item that can follow it and is not shared so now', async () => {
    const { id } = world().notebook
    browseAs(world(), 'a')
    expect(await page('side-by-side')).toContain(`/notebook/${id}/proposals/new?way=equal"`)
    const read = readDocument(await documentOf(id))
    if (!read.ok) throw new Error('the example holds')
    const { notebook } = read.value
    const all = [...notebook.sections, ...notebook.gates, ...notebook.common]
    const other = all.filter((item) => {
      const pots =
        'together' in item.share ? [item.share.together] : [item.share.materials, item.share.labour]
      return pots.some(({ principle }) => principle !== 'equal')
    })
    const shares = wayShares(notebook, 'equal', undefined)
    expect([...shares.keys()].sort()).toEqual(other.map((item) => item.id).sort())
    const form = await page('proposals/new', {}, { way: 'equal' })
    expect(form.match(/type="checkbox"[^>]*checked=""/g)).toHaveLength(other.length)
  })

  test('of the whole fence is not offered where all that can follow it do already', async () => {
    const { id } = world().notebook
    browseAs(world(), 'a')
    const read = readDocument(await documentOf(id))
    if (!read.ok) throw new Error('the example holds')
    expect(wayShares(read.value.notebook, 'saving', undefined).size).toBe(0)
    const html = await page('side-by-side')
    expect(html).not.toContain('proposals/new?way=saving')
    expect(html).toContain('They follow it already')
  })

  test('of no known way begins as any proposal does', async () => {
    browseAs(world(), 'a')
    const form = await page('proposals/new', {}, { way: 'by-whim', item: 's1' })
    expect(form.match(/type="checkbox"[^>]*checked=""/g)).toHaveLength(1)
  })
})
