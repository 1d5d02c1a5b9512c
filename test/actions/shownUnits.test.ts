import type { ReactElement, ReactNode } from 'react'
import { beforeEach, describe, expect, test, vi } from 'vitest'
import { saveNotebookPart } from '../../app/notebook/server/actions.ts'
import { offerBasicQuantities } from '../../app/notebook/server/basicFenceActions.ts'
import { openNotebook } from '../../app/notebook/server/opened.ts'
import { draftSummary } from '../../app/notebook/server/summaryOf.ts'
import { offerQuantities } from '../../app/notebook/server/takeOffActions.ts'
import { UnitsSwitch } from '../../app/notebook/server/UnitsSwitch.tsx'
import { showLengthsIn } from '../../app/notebook/server/unitsActions.ts'
import type { Notebook } from '../../lib/core/agreement/notebook.ts'
import { shownMarkup } from '../shownMarkup.ts'
import { keptCookies, openBrowser, setCookieHeaders } from './browser.ts'
import { everyTable } from './everyTable.ts'
import { aBasicFence, sectionForm } from './givenBasicFence.ts'
import { formOf, openedPart } from './givenForms.ts'
import { outcomeOf } from './outcome.ts'
import { type AnyFunction, everyAddress } from './serverFiles.ts'
import { browseAs, documentOf, worldForEachTest } from './world.ts'

vi.mock('next/headers', () => import('./browser.ts'))
vi.mock('next/navigation', async (original) => ({
  ...(await original<object>()),
  useRouter: () => ({}),
  usePathname: () => '/',
}))
const world = worldForEachTest()
const id = () => world().notebook.id
const shown = async () => {
  const opened = await openNotebook(id())
  return { units: opened.notebook.units, page: shownMarkup(UnitsSwitch({ opened }) as ReactNode) }
}

test('lengths are shown in the units of the notebook until this browser asks for others, and back again', async () => {
  browseAs(world(), 'b')
  const agreed = (await documentOf(id())).units as 'ft-in' | 'metric'
  const other = agreed === 'metric' ? 'ft-in' : 'metric'
  expect((await shown()).units).toBe(agreed)
  expect((await shown()).page).not.toContain('the papers keep to')

  await showLengthsIn(id(), {}, formOf({ units: other }))
  expect((await shown()).units).toBe(other)
  expect((await shown()).page).toContain('the papers keep to')

  await showLengthsIn(id(), {}, formOf({ units: agreed }))
  expect((await shown()).units).toBe(agreed)
})

test('nothing that is stored, agreed or printed changes with them', async () => {
  browseAs(world(), 'b')
  const [before, paper] = [await everyTable(), draftSummary(await openNotebook(id()))]
  await showLengthsIn(id(), {}, formOf({ units: paper.notebook.units === 'metric' ? 'ft-in' : 'metric' }))
  expect(await everyTable()).toEqual(before)
  expect(draftSummary(await openNotebook(id()))).toEqual(paper)
})

test('the other household and another notebook see what they saw', async () => {
  browseAs(world(), 'b')
  await showLengthsIn(id(), {}, formOf({ units: 'metric' }))
  expect(setCookieHeaders()).toHaveLength(1)
  expect(setCookieHeaders()[0]).toContain(`Path=/notebook/${id()};`)
  expect(setCookieHeaders()[0]).toContain('HttpOnly')
})

test('a cookie that names no units is as good as none', async () => {
  browseAs(world(), 'b')
  const agreed = (await documentOf(id())).units
  openBrowser({ ...keptCookies(), [`mearing-units-${id()}`]: 'constructor' })
  expect((await shown()).units).toBe(agreed)
})

describe('cost lines that follow the take-off', () => {
  type Section = { materials: Record<string, unknown>[] }
  const s1 = { part: 'item', id: 's1' } as const
  const node = async (name: string) => {
    const page = (await everyAddress()).get(
      `app/notebook/[notebookId]/${name}/page.tsx#default`,
    ) as AnyFunction
    const end = await outcomeOf(() => page({ params: Promise.resolve({ notebookId: id(), itemId: 's1' }) }))
    if (end.kind !== 'answer') throw new Error(`no page: ${end.kind}`)
    return end.answer as ReactElement<{ children: ReactNode }>
  }
  const shownOn = async (name: string) => shownMarkup(await node(name))
  const pages = ['item/[itemId]', 'materials', 'basic-fence/[itemId]']
  const apart = /have come apart|no longer say/

  beforeEach(async () => {
    browseAs(world(), 'a')
    await aBasicFence(id(), 's1')
    await outcomeOf(() => offerQuantities(id(), {}, formOf({ id: 's1' })))
    const form = await sectionForm(id(), 's1')
    await outcomeOf(() => offerBasicQuantities(id(), {}, form))
    expect((await documentOf(id())).units).toBe('ft-in')
    await showLengthsIn(id(), {}, formOf({ units: 'metric' }))
  })

  test('have not come apart because other units are shown', async () => {
    for (const name of pages) expect(await shownOn(name)).not.toMatch(apart)
  })

  test('are told in both units where they have', async () => {
    const { draft, base } = await openedPart<Section>(id(), s1)
    const rails = draft.materials.findIndex(({ unit, from }) => unit === 'ft' && from !== undefined)
    const materials = draft.materials.with(rails, { ...draft.materials[rails], quantity: '100' })
    await saveNotebookPart(id(), s1, base, { ...draft, materials })
    for (const name of pages.slice(0, 2)) {
      const html = await shownOn(name)
      expect(html).toMatch(apart)
      expect(html).toMatch(/100 ft \(30\.48 m\) here, [0-9.]+ ft \([0-9.]+ m\) in the take-off/)
    }
  })

  test('are tried in the units that they are written in, so that none loses its price', async () => {
    const trying = (await node('try')).props.children as ReactElement<{ plan: Notebook }>
    expect(trying.props.plan.units).toBe('ft-in')
  })
})
