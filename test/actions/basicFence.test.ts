import type { ReactNode } from 'react'
import { beforeEach, describe, expect, test, vi } from 'vitest'
import { saveNotebookPart } from '../../app/notebook/server/actions.ts'
import {
  holdAgainstBasicFence,
  offerBasicQuantities,
  removeBasicFence,
} from '../../app/notebook/server/basicFenceActions.ts'
import { marksOf } from '../../lib/store/marks.ts'
import { shownMarkup } from '../shownMarkup.ts'
import { aBasicFence, plainerFence, sectionForm } from './givenBasicFence.ts'
import { openedPart } from './givenForms.ts'
import { type Outcome, outcomeOf } from './outcome.ts'
import { type AnyFunction, everyAddress } from './serverFiles.ts'
import { browseAs, documentOf, markEverything, worldForEachTest } from './world.ts'

vi.mock('next/headers', () => import('./browser.ts'))
vi.mock('next/navigation', async (original) => ({
  ...(await original<object>()),
  useRouter: () => ({}),
  usePathname: () => '/',
}))
const world = worldForEachTest()
const notebookId = () => world().notebook.id
const s1 = { part: 'item', id: 's1' } as const

type Line = Record<string, unknown>
type Section = {
  share: Record<string, unknown>
  basicFence?: { materials: Line[] }
  materials: Line[]
}
const section = async () => (await openedPart<Section>(notebookId(), s1)).draft

beforeEach(async () => {
  await aBasicFence(notebookId(), 's1')
  await markEverything(notebookId())
  browseAs(world(), 'b')
})

async function hold(pots: string, above: string): Promise<Outcome> {
  const form = await sectionForm(notebookId(), 's1', { pots, above })
  return outcomeOf(() => holdAgainstBasicFence(notebookId(), {}, form))
}

async function page(name: string, itemId = 's1'): Promise<string> {
  const show = (await everyAddress()).get(`app/notebook/[notebookId]/${name}/page.tsx#default`) as AnyFunction
  const params = Promise.resolve({ notebookId: notebookId(), itemId })
  const end = await outcomeOf(() => show({ params }))
  if (end.kind !== 'answer') throw new Error(`no page: ${end.kind}`)
  return shownMarkup(end.answer as ReactNode)
}

const refusedWith = (words: string) => ({
  kind: 'answer',
  answer: { refused: expect.stringContaining(words) },
})

describe('holding the share against the basic fence', () => {
  test('writes the sums of its lines, each into its own pot, and takes both marks off that section alone', async () => {
    const marks = await marksOf(notebookId())
    const gone = marks.filter(({ itemKey }) => itemKey === 'item:s1')
    expect((await hold('apart', 'a')).kind).toBe('redirect')
    // 12 × 20.05 = 240.60; 8 h × 25.00 = 200.00.
    const { share } = await section()
    expect(share.materials).toMatchObject({
      principle: 'difference',
      basic: '240.60',
      upgradeShare: { principle: 'one', household: 'a' },
    })
    expect(share.labour).toMatchObject({ principle: 'difference', basic: '200.00' })
    expect(JSON.stringify(share)).not.toContain('upgrades')
    expect(await page('item/[itemId]')).toContain('Pay the difference: the basic fence of $200.00')
    expect(gone).toHaveLength(2)
    expect(await marksOf(notebookId())).toEqual(marks.filter((mark) => !gone.includes(mark)))
  })

  test('holds both together as one pot', async () => {
    await hold('together', 'halves')
    expect((await section()).share).toEqual({
      together: expect.objectContaining({ basic: '440.60', upgradeShare: { principle: 'equal' } }),
    })
  })

  test.each([
    ['nobody was chosen for what is above', 'apart', '', 'Choose who is asked for that.'],
    [
      'it is to stay as it stands where nothing stands',
      'apart',
      'as it stands',
      'Choose who is asked for that.',
    ],
    ['the press names no pots', 'all', 'a', 'could not be read'],
  ])('is refused where %s, and changes nothing', async (_, pots, above, words) => {
    const before = await documentOf(notebookId())
    expect(await hold(pots, above)).toEqual(refusedWith(words))
    expect(await documentOf(notebookId())).toEqual(before)
  })

  test('is refused on a section that was changed since, and on one without a basic fence', async () => {
    const stale = await sectionForm(notebookId(), 's1', { pots: 'apart', above: 'a' })
    await hold('apart', 'b')
    expect(await outcomeOf(() => holdAgainstBasicFence(notebookId(), {}, stale))).toEqual(
      refusedWith('changed since you opened the page'),
    )
    const other = await sectionForm(notebookId(), 's2', { pots: 'apart', above: 'a' })
    expect(await outcomeOf(() => holdAgainstBasicFence(notebookId(), {}, other))).toEqual(
      refusedWith('no basic fence yet'),
    )
  })

  test('is refused where credits make the sum less than nothing', async () => {
    const credit = { what: 'old wire', quantity: '1', unitPrice: '9', suppliedBy: 'bought', credit: true }
    await aBasicFence(notebookId(), 's1', { basicFence: { materials: [credit] } })
    expect(await hold('materials', 'a')).toEqual(refusedWith('less than nothing'))
  })
})

describe('a typed basic cost that is not what the basic fence comes to', () => {
  const typed = {
    share: {
      materials: {
        principle: 'difference',
        basic: '300',
        basicShare: { principle: 'equal' },
        upgradeShare: { principle: 'one', household: 'a' },
        upgrades: [{ what: 'one foot more', amount: '50', household: 'b' }],
      },
      labour: { principle: 'equal' },
    },
  }

  test.each(['item/[itemId]', 'basic-fence/[itemId]'])('is said on %s, with both figures', async (name) => {
    await aBasicFence(notebookId(), 's1', typed)
    const html = await page(name)
    expect(html).toContain('held against $300.00, but the basic fence comes to $240.60.')
    expect(html).toContain('Take over what the basic fence comes to')
  })

  test('is taken over with one press: the sum goes in, upgrades and who is asked stay', async () => {
    await aBasicFence(notebookId(), 's1', typed)
    expect((await hold('materials', 'as it stands')).kind).toBe('redirect')
    const { materials } = typed.share
    expect((await section()).share).toEqual({ ...typed.share, materials: { ...materials, basic: '240.60' } })
    expect(await page('basic-fence/[itemId]')).not.toContain('but the basic fence comes to')
  })

  test('is no matter where 300 was typed for 300.00', async () => {
    const lines = [{ what: 'wire', quantity: '1', unitPrice: '300', suppliedBy: 'bought' }]
    await aBasicFence(notebookId(), 's1', { ...typed, basicFence: { ...plainerFence, materials: lines } })
    expect(await page('item/[itemId]')).not.toContain('but the basic fence comes to')
  })
})

describe('what the basic fence takes', () => {
  const offer = async () => {
    const form = await sectionForm(notebookId(), 's1')
    return outcomeOf(() => offerBasicQuantities(notebookId(), {}, form))
  }

  test('comes among its own cost lines, unpriced, after what was typed; the section’s own lines stay', async () => {
    const before = await section()
    expect((await offer()).kind).toBe('redirect')
    const after = await section()
    expect(after.materials).toEqual(before.materials)
    const [typed, ...offered] = after.basicFence?.materials ?? []
    expect(typed).toMatchObject({ what: 'posts and wire', unitPrice: '20.05' })
    expect(offered.map(({ from }) => from)).toContain('takeoff: posts')
    expect(offered.every((line) => !('unitPrice' in line))).toBe(true)
  })

  test('keeps a quantity that a person changed by hand, and says that it has come apart', async () => {
    await offer()
    const { draft, base } = await openedPart<Section>(notebookId(), s1)
    const materials = draft.basicFence?.materials ?? []
    const posts = materials.findIndex(({ from }) => from === 'takeoff: posts')
    const changed = materials.with(posts, { ...materials[posts], quantity: '99' })
    const next = { ...draft, basicFence: { ...draft.basicFence, materials: changed } }
    await outcomeOf(() => saveNotebookPart(notebookId(), s1, base, next))
    expect((await section()).basicFence?.materials[posts]).toMatchObject({ quantity: '99', changed: true })
    expect(await page('basic-fence/[itemId]')).toContain('no longer say what it takes')
    await offer()
    expect((await section()).basicFence?.materials[posts]).toMatchObject({ quantity: '99' })
  })

  test('is refused where no build-up is described', async () => {
    await aBasicFence(notebookId(), 's1', { basicFence: { height: '4 ft' } })
    expect(await offer()).toEqual(refusedWith('give the basic fence a build-up'))
  })
})

test('a basic fence that is taken out leaves the section and its share as they are', async () => {
  await hold('apart', 'a')
  const { basicFence: _gone, ...rest } = await section()
  const form = await sectionForm(notebookId(), 's1')
  expect((await outcomeOf(() => removeBasicFence(notebookId(), {}, form))).kind).toBe('redirect')
  expect(await section()).toEqual(rest)
})

test('the pages lead to it from a section, and from no gate', async () => {
  expect(await page('item/[itemId]')).toContain(`/notebook/${notebookId()}/basic-fence/s1`)
  expect(await page('side-by-side/[itemId]')).toContain(`/notebook/${notebookId()}/basic-fence/s1`)
  for (const name of ['item/[itemId]', 'side-by-side/[itemId]'])
    expect(await page(name, 'g1')).not.toContain('/basic-fence/')
})
