import { expect, test, vi } from 'vitest'
import { saveNotebookPart } from '../../app/notebook/server/actions.ts'
import { offerQuantities } from '../../app/notebook/server/takeOffActions.ts'
import { takeOffRefusals } from '../../lib/words/pressText.ts'
import { formOf, openedPart } from './givenForms.ts'
import { outcomeOf, refusalOf } from './outcome.ts'
import { browseAs, worldForEachTest } from './world.ts'

vi.mock('next/headers', () => import('./browser.ts'))
const world = worldForEachTest()

type Line = Record<string, unknown>
const section = { part: 'item', id: 's1' } as const

const lines = async () =>
  (await openedPart<{ materials: Line[] }>(world().notebook.id, section)).draft.materials
const fromTakeOff = async () => (await lines()).filter(({ from }) => from !== undefined)

async function offer() {
  expect(
    await outcomeOf(() => offerQuantities(world().notebook.id, {}, formOf({ id: section.id }))),
  ).toMatchObject({ kind: 'redirect' })
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
