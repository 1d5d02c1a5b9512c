import type { ReactNode } from 'react'
import { expect, test, vi } from 'vitest'
import { saveNotebookPart } from '../../app/notebook/server/actions.ts'
import { offerQuantities } from '../../app/notebook/server/takeOffActions.ts'
import { takeOffRefusals } from '../../lib/words/pressText.ts'
import { shownMarkup } from '../shownMarkup.ts'
import { formOf, openedPart } from './givenForms.ts'
import { outcomeOf, refusalOf } from './outcome.ts'
import { type AnyFunction, everyAddress } from './serverFiles.ts'
import { browseAs, worldForEachTest } from './world.ts'

vi.mock('next/headers', () => import('./browser.ts'))
vi.mock('next/navigation', async (original) => ({
  ...(await original<object>()),
  useRouter: () => ({}),
  usePathname: () => '/',
}))
const world = worldForEachTest()

type Line = Record<string, unknown>
const section = { part: 'item', id: 's1' } as const

const lines = async () =>
  (await openedPart<{ materials: Line[] }>(world().notebook.id, section)).draft.materials
const fromTakeOff = async () => (await lines()).filter(({ from }) => from !== undefined)

async function offer(): Promise<string> {
  const end = await outcomeOf(() => offerQuantities(world().notebook.id, {}, formOf({ id: section.id })))
  if (end.kind !== 'redirect') throw new Error(`not put there: ${end.kind}`)
  return end.to
}

/** The page that a press led to. */
async function pageAt(to: string): Promise<string> {
  const { searchParams, hash } = new URL(to, 'http://localhost')
  const show = (await everyAddress()).get('app/notebook/[notebookId]/item/[itemId]/page.tsx#default')
  const params = Promise.resolve({ notebookId: world().notebook.id, itemId: section.id })
  const asks = Promise.resolve(Object.fromEntries(searchParams))
  const end = await outcomeOf(() => (show as AnyFunction)({ params, searchParams: asks }))
  if (end.kind !== 'answer') throw new Error(`no page: ${end.kind}`)
  const html = shownMarkup(end.answer as ReactNode)
  expect(html).toContain(`id="${hash.slice(1)}"`)
  return html
}

async function save(edit: (item: Line & { materials: Line[] }) => Line) {
  const { draft, base } = await openedPart<Line & { materials: Line[] }>(world().notebook.id, section)
  expect(await saveNotebookPart(world().notebook.id, section, base, edit(draft))).toMatchObject({
    saved: true,
  })
}

test('offered quantities follow the dimensions again and again, but for the one that a person changed', async () => {
  browseAs(world(), 'a')
  await offer()
  const first = await fromTakeOff()
  expect(first.length).toBeGreaterThan(4)
  const [ofPosts, ofRails] = first.map(({ from }) => from)

  await save((item) => ({
    ...item,
    materials: item.materials.map((line) => (line.from === ofPosts ? { ...line, quantity: '12' } : line)),
  }))
  const quantities: unknown[] = []
  for (const to of ['22 ft', '20 ft', '18 ft']) {
    await save((item) => ({ ...item, to }))
    await offer()
    const now = await fromTakeOff()
    expect(now.find(({ from }) => from === ofPosts)).toMatchObject({ quantity: '12', changed: true })
    // What the take-off brings up to date was not changed by hand: it has to follow the next time, too.
    expect(now.filter(({ changed }) => changed === true)).toHaveLength(1)
    quantities.push(now.find(({ from }) => from === ofRails)?.quantity)
  }
  expect(new Set(quantities).size).toBe(3)
})

test('cost lines from a take-off stay as they are where it offers none any more', async () => {
  browseAs(world(), 'a')
  await offer()
  await save(({ buildUp: _out, ...item }) => item)
  const before = await fromTakeOff()
  expect(before.length).toBeGreaterThan(4)
  const answer = await outcomeOf(() => offerQuantities(world().notebook.id, {}, formOf({ id: section.id })))
  expect(refusalOf(answer)).toBe(takeOffRefusals.nothingYet)
  expect(await fromTakeOff()).toEqual(before)
})

test('the press leads to the cost lines, where it is told what it came to and what stays beside them', async () => {
  browseAs(world(), 'a')
  const typed = { what: 'all materials', quantity: '1', unit: 'lot', unitPrice: '900', suppliedBy: 'bought' }
  await save((item) => ({ ...item, materials: [typed] }))
  const first = await pageAt(await offer())
  const count = (await fromTakeOff()).length
  expect(first).toContain(`Put among the cost lines: ${count} lines added.`)
  expect(first).toContain(`All ${count} lines from the take-off have no price yet`)
  expect(first).toContain('What was typed by hand stays beside them: “all materials”.')

  await save((item) => ({
    ...item,
    to: '20 ft',
    materials: item.materials.flatMap((line) =>
      line.from === undefined ? [] : [{ ...line, unitPrice: '1' }],
    ),
  }))
  const before = await fromTakeOff()
  const again = await pageAt(await offer())
  const moved = (await fromTakeOff()).filter(({ quantity }, index) => quantity !== before[index]?.quantity)
  expect(moved.length).toBeGreaterThan(1)
  expect(again).toContain(`${moved.length} lines given the take-off’s quantity of now.`)
  expect(again).not.toMatch(/no price yet and|stays beside them/)
  expect(await pageAt(await offer())).toContain('no line was added, and none took another quantity')
})
