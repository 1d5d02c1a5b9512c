import type { ReactNode } from 'react'
import { describe, expect, test, vi } from 'vitest'
import { agreeToItem, saveNotebookPart } from '../../app/notebook/server/actions.ts'
import { historyAddress, historyAsked } from '../../app/notebook/server/historyAsked.ts'
import { sayAboutItem } from '../../app/notebook/server/messageActions.ts'
import { putUpForSigning } from '../../app/notebook/server/signActions.ts'
import { database } from '../../lib/store/database.ts'
import { headOf, historyOf } from '../../lib/store/historyChain.ts'
import { newestRevision } from '../../lib/store/revisions.ts'
import { keepSealedPaper } from '../../lib/store/sealedPapers.ts'
import { sha256Hex } from '../../lib/store/sha256.ts'
import { shownMarkup } from '../shownMarkup.ts'
import { markForm, openedPart } from './givenForms.ts'
import { outcomeOf } from './outcome.ts'
import { type AnyFunction, everyAddress } from './serverFiles.ts'
import { browseAs, markEverything, worldForEachTest } from './world.ts'

vi.mock('next/headers', () => import('./browser.ts'))
// The frame asks the router where it is, which only Next can say; nothing here is pressed.
vi.mock('next/navigation', async (original) => ({
  ...(await original<object>()),
  useRouter: () => ({}),
  usePathname: () => '/',
}))
const world = worldForEachTest()

async function page(fields: Record<string, string> = {}): Promise<string> {
  const name = 'app/notebook/[notebookId]/changes/page.tsx#default'
  const answer = (await everyAddress()).get(name) as AnyFunction
  const params = Promise.resolve({ notebookId: world().notebook.id })
  const end = await outcomeOf(() => answer({ params, searchParams: Promise.resolve(fields) }))
  if (end.kind !== 'answer') throw new Error(end.kind)
  return shownMarkup(end.answer as ReactNode)
}

const numbersIn = (html: string) =>
  [...html.matchAll(/id="entry-([0-9]+)"/g)].map((match) => Number(match[1]))

async function editTheLine(start: string): Promise<void> {
  const { id } = world().notebook
  const { draft, base } = await openedPart<{ line: object }>(id, { part: 'line' })
  await saveNotebookPart(id, { part: 'line' }, base, { line: { ...draft.line, start } })
}

/** An edit, a mark, a remark about another item, and a revision put up for signing. */
async function something(): Promise<void> {
  const { id } = world().notebook
  browseAs(world(), 'a')
  await editTheLine('iron pin, found')
  await outcomeOf(async () => agreeToItem(id, {}, await markForm(id, 'line')))
  await outcomeOf(() => sayAboutItem(id, 'item:s1', 'new', { kind: 'remark', text: 'About the lane.' }))
  await markEverything(id)
  await outcomeOf(() => putUpForSigning(id, {}, new FormData()))
}

describe('the page of the history', () => {
  test('tells every entry in words, with its number and hash, newest first', async () => {
    await something()
    const { id } = world().notebook
    const html = await page()
    const history = await historyOf(id)
    expect(numbersIn(html)).toEqual(history.map(({ number }) => number).reverse())
    for (const { hash } of history) expect(html).toContain(`<code>${hash}</code>`)
    expect(html).toContain(`The newest entry is number ${headOf(history).entry}`)
    for (const words of [
      'Start: iron pin at the lane before, iron pin, found now',
      'Marked “The line” as agreed.',
      'Remark: “About the lane.”',
      'Put revision 1 up for signing.',
      'Claimed the invitation, and got a private link of its own.',
    ])
      expect(html).toContain(words)
  })

  test('is narrowed down by item, by kind, and by both', async () => {
    await something()
    expect(await page({ item: 'item:s1' })).toContain('About the lane.')
    expect(numbersIn(await page({ item: 'item:s1' }))).toHaveLength(1)
    const line = numbersIn(await page({ item: 'line' }))
    expect(line).toHaveLength(2)
    expect(numbersIn(await page({ item: 'line', kind: 'marks' }))).toEqual([line[0]])
    expect(numbersIn(await page({ item: 'item:s1', kind: 'marks' }))).toEqual([])
    expect(await page({ item: 'no such item' })).toContain('Nothing here.')
    // What is no kind is not asked for.
    expect(numbersIn(await page({ kind: 'constructor' }))).toEqual(numbersIn(await page()))
  })

  test('shows a hundred entries at a time', async () => {
    browseAs(world(), 'a')
    const { id: notebookId } = world().notebook
    const entry = {
      notebookId,
      edit: 0,
      at: new Date(),
      household: 'a',
      itemKey: 'line',
      before: '1',
      after: '2',
    }
    await database().write((tables) => tables.change.createMany({ data: Array(101).fill(entry) }))
    const total = (await historyOf(notebookId)).length
    const [first, second] = [numbersIn(await page()), numbersIn(await page({ page: '2' }))]
    expect(first).toHaveLength(100)
    expect([...first, ...second]).toEqual(Array.from({ length: total }, (_, index) => total - index))
    expect(numbersIn(await page({ page: '99' }))).toEqual(second)
    expect(await page()).toContain('Page 1 of 2')
    expect(await page({ kind: 'edits' })).toContain('?kind=edits&amp;page=2')
  })

  test('says whether it still leads through what a locked copy prints, and warns where it does not', async () => {
    await something()
    const { id } = world().notebook
    const revision = await newestRevision(id)
    await keepSealedPaper({
      notebookId: id,
      revisionId: revision?.id ?? '',
      household: 'a',
      bytes: Uint8Array.of(37),
      certificate: sha256Hex('certificate'),
      history: headOf(await historyOf(id)),
      at: new Date(),
    })
    const good = await page()
    expect(good).toContain('The history still leads through it.')
    expect(good).not.toContain('does not fit')
    await database().write(async (tables) => {
      await tables.$executeRawUnsafe('DROP TRIGGER "Change_never_altered"')
      await tables.$executeRawUnsafe(`UPDATE "Change" SET "household" = 'b' WHERE "kind" = 'message'`)
    })
    const bad = await page()
    expect(bad).toContain('The history does not fit a locked copy')
    expect(bad).not.toContain('still leads through it')
  })

  test('works without script: what it is narrowed down by is a plain form', async () => {
    await something()
    const html = await page({ item: 'line', kind: 'marks' })
    const form = /<form class="history-filter"[^>]*>/.exec(html)?.[0]
    expect(form).toMatch(/ method="get"/)
    expect(form).toMatch(/ action="\/notebook\/[A-Za-z0-9_-]+\/changes"/)
    expect(html).toMatch(/<option value="line" selected="">The line<\/option>/)
    expect(html).toMatch(/<option value="marks" selected="">Marks<\/option>/)
    // Only what asks for an answer of the server would need a script.
    const within = html.slice(html.indexOf('<form class="history-filter"')).split('</form>')[0]
    expect(within).toContain('<button')
    expect(within).not.toMatch(/<button[^>]* disabled/)
  })
})

describe('what an address asks for', () => {
  test.each([
    [{}, { page: 1 }],
    [{ item: '', kind: '', page: '' }, { page: 1 }],
    [
      { item: 'line', kind: 'said', page: '3' },
      { item: 'line', group: 'said', page: 3 },
    ],
    [{ item: ['line', 'caps'], kind: ['marks'], page: ['2'] }, { page: 1 }],
    [{ page: '0' }, { page: 1 }],
    [{ page: '-1' }, { page: 1 }],
    [{ page: '1e9' }, { page: 1 }],
    [{ kind: '__proto__' }, { page: 1 }],
  ])('%j', (fields, asked) => {
    expect(historyAsked(fields)).toEqual(asked)
  })

  test('is what its links ask for', () => {
    const asked = { item: 'decision:{"text":"a & b"}', group: 'edits', page: 2 } as const
    const address = historyAddress('/changes', asked, 3)
    const fields = Object.fromEntries(new URL(address, 'http://localhost').searchParams)
    expect(historyAsked(fields)).toEqual({ ...asked, page: 3 })
    expect(historyAddress('/changes', { page: 4 }, 1)).toBe('/changes')
  })
})
