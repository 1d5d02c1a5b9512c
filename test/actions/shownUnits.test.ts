import type { ReactNode } from 'react'
import { expect, test, vi } from 'vitest'
import { openNotebook } from '../../app/notebook/server/opened.ts'
import { draftSummary } from '../../app/notebook/server/summaryOf.ts'
import { UnitsSwitch } from '../../app/notebook/server/UnitsSwitch.tsx'
import { showLengthsIn } from '../../app/notebook/server/unitsActions.ts'
import { shownMarkup } from '../shownMarkup.ts'
import { keptCookies, openBrowser, setCookieHeaders } from './browser.ts'
import { everyTable } from './everyTable.ts'
import { formOf } from './givenForms.ts'
import { browseAs, documentOf, worldForEachTest } from './world.ts'

vi.mock('next/headers', () => import('./browser.ts'))
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
