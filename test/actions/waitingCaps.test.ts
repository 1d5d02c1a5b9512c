import { createElement, type ReactNode } from 'react'
import { describe, expect, test, vi } from 'vitest'
import { CapNotice } from '../../app/notebook/server/CapNotice.tsx'
import { capFindings } from '../../app/notebook/server/capFindings.ts'
import { openNotebook } from '../../app/notebook/server/opened.ts'
import { plannedStatement } from '../../lib/core/shares/statement.ts'
import { documentText } from '../../lib/forms/parts.ts'
import { readDocument } from '../../lib/forms/readNotebook.ts'
import { editNotebook } from '../../lib/store/notebooks.ts'
import { moneyWords } from '../../lib/words/money.ts'
import { shownMarkup } from '../shownMarkup.ts'
import { settledBooks } from './givenAccount.ts'
import { putInDocument } from './givenHours.ts'
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

async function page(name: string, names: Record<string, string> = {}): Promise<string> {
  const show = (await everyAddress()).get(`app/notebook/[notebookId]/${name}/page.tsx#default`) as AnyFunction
  const params = Promise.resolve({ notebookId: world().notebook.id, ...names })
  const end = await outcomeOf(() => show({ params, searchParams: Promise.resolve({}) }))
  if (end.kind !== 'answer') throw new Error(`no page: ${end.kind}`)
  return shownMarkup(end.answer as ReactNode)
}

/** What is told of caps that are reached, over the whole fence or on one item. */
async function notice(itemId?: string): Promise<string> {
  const opened = await openNotebook(world().notebook.id)
  return shownMarkup(createElement(CapNotice, { opened, ...(itemId === undefined ? {} : { itemId }) }))
}

const withCaps = (caps: object) =>
  editNotebook({
    id: world().notebook.id,
    household: 'b',
    at: new Date('2027-03-01T10:00:00Z'),
    change: (document) => ({
      document: documentText({ ...JSON.parse(document), caps }),
      changed: [],
      kept: undefined,
    }),
  })

/** Household b may be asked for no more than ten dollars; what lies above as money in words. */
async function capOfTen(): Promise<string> {
  await withCaps({ b: '10.00' })
  const read = readDocument(await documentOf(world().notebook.id))
  const statement = read.ok ? plannedStatement({ ...read.value.notebook, caps: {} }) : read
  if (!statement.ok) throw new Error('the made notebook can be shared')
  return moneyWords(statement.value.beforeCaps.b - 1_000n, statement.value.currency)
}

describe('a cap in a draft', () => {
  test('moves nothing while only its own household has marked it, and the page says what it would move', async () => {
    const above = await capOfTen()
    await markEverything(world().notebook.id, ['b'])
    browseAs(world(), 'a')
    const html = await page('shares')
    expect(html).toMatch(new RegExp(`would move ${above.replace('$', '\\$')} to .+ once .+ marks the caps`))
    expect(html).not.toContain('Before caps')
  })

  test('is found where it is typed to fall short of the total with the other, in money, and is saved all the same', async () => {
    await withCaps({ a: '20.00', b: '10.00' })
    const read = readDocument(await documentOf(world().notebook.id))
    const statement = read.ok ? plannedStatement({ ...read.value.notebook, caps: {} }) : read
    if (!statement.ok) throw new Error('the made notebook can be shared')
    const { total, currency } = statement.value
    browseAs(world(), 'a')
    const [found, ...more] = capFindings(await openNotebook(world().notebook.id))
    const message = found?.message ?? ''
    expect([found?.path, more]).toEqual(['caps.b', []])
    expect(message).toContain('$20.00')
    expect(message).toContain(`together fall ${moneyWords(total - 3_000n, currency)} short of the total`)
    expect(await page('shares')).toContain(message)
    await withCaps({ a: '20.00' })
    expect(capFindings(await openNotebook(world().notebook.id))).toEqual([])
  })

  test('moves what lies above it once the other household has marked it too', async () => {
    const above = await capOfTen()
    await markEverything(world().notebook.id, ['a'])
    browseAs(world(), 'b')
    const html = await page('shares')
    expect(html).toContain(`moves ${above}`)
    expect(html).toContain('Before caps')
    expect(html).not.toContain('would move')
  })

  test('is what the notice goes by while nothing is signed, and it says who has marked it', async () => {
    await capOfTen()
    await markEverything(world().notebook.id, ['b'])
    browseAs(world(), 'a')
    expect(await notice()).toContain('Nothing is signed yet, so this goes by the caps as they stand')
    expect(await notice()).toContain('No. 14 has marked them, no. 12 has not.')
  })

  test('is held against once it was signed; another one after that only with both marks', async () => {
    const { id } = world().notebook
    await settledBooks(id, { caps: { b: '10.00' } })
    browseAs(world(), 'b')
    expect(await notice()).toContain('This goes by the caps of revision 1, which all have signed.')
    expect(await notice()).not.toContain('The notebook has other caps now')
    await putInDocument(id, (document) => ({ ...document, caps: { b: '20.00' } }))
    expect(await notice()).toContain('The cap of No. 14, $10.00, is reached')
    expect(await notice()).toContain('The notebook has other caps now')
    await markEverything(id)
    expect(await notice()).toContain('The cap of No. 14, $20.00, is reached')
    expect(await notice()).toContain('caps that both of you have marked since revision 1 was signed')
  })

  test('pauses buying, in the book and on the items, until the other household agrees', async () => {
    await capOfTen()
    browseAs(world(), 'a')
    expect(await notice()).toContain('Buying pauses')
    expect(await notice('s1')).toContain('Buying on this item pauses')
    await markEverything(world().notebook.id)
    expect(await notice()).not.toContain('Buying pauses')
    expect(await notice('s1')).toContain('Buying goes on.')
  })
})
