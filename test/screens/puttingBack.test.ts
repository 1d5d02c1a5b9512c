import type { Browser, Page } from '@playwright/test'
import { afterAll, beforeAll, beforeEach, describe, expect, test } from 'vitest'
import { openBrowser } from './browser.ts'
import { expectPage } from './expectPage.ts'
import { shortNotebook } from './shortNotebook.ts'
import { type Neighbours, neighboursWith } from './twoHouseholds.ts'
import { field, put, save } from './typing.ts'
import { exported, panel } from './visiting.ts'

let browser: Browser
let neighbours: Neighbours

const terms = ['Access', 'Noise', 'Tools'].map((topic) => ({ topic, text: `About ${topic.toLowerCase()}.` }))

beforeAll(async () => {
  browser = await openBrowser()
})
afterAll(async () => {
  await browser?.close()
})
beforeEach(async () => {
  neighbours = await neighboursWith(browser, { ...shortNotebook, terms })
  return () => neighbours.close()
})

const press = (page: Page, name: string | RegExp) => page.getByRole('button', { name, exact: true }).click()
const putBack = (page: Page) => page.getByRole('button', { name: 'Put it back' })

describe('what was taken out of a form comes back', () => {
  test('row by row, the last one first, each to its place', async () => {
    const { page, home } = neighbours.b
    await page.goto(`${home}/terms`)
    const topics = () =>
      page
        .locator('input[id$="topic"], select[id$="topic"], textarea[id$="topic"]')
        .evaluateAll((all) => all.map((one) => (one as HTMLInputElement).value))
    expect(await topics()).toEqual(['Access', 'Noise', 'Tools'])
    await press(page, /^Remove “?Noise/)
    await press(page, /^Remove “?Access/)
    await press(page, /^Remove “?Tools/)
    expect(await topics()).toEqual([])
    for (const back of [['Tools'], ['Access', 'Tools'], ['Access', 'Noise', 'Tools']]) {
      await putBack(page).click()
      expect(await topics()).toEqual(back)
    }
    await expectPage(putBack(page)).toHaveCount(0)
  })

  test('a part that is only there where somebody says so', async () => {
    const { page, home } = neighbours.b
    await page.goto(`${home}/build-up/g1`)
    await press(page, 'A header ties the posts together')
    await put(page, 'buildUp.header.clear', '7 ft')
    await press(page, 'No header')
    await expectPage(field(page, 'buildUp.header.clear')).toHaveCount(0)
    // It says so, and has the focus, for the button that was pressed is gone.
    await expectPage(page.getByText('Taken out: Header.')).toBeVisible()
    await expectPage(putBack(page)).toBeFocused()
    await putBack(page).click()
    await expectPage(field(page, 'buildUp.header.clear')).toHaveValue('7 ft')
  })
})

test('what was saved without is put back under Changes by who took it out, and by nobody else', async () => {
  const { a, b } = neighbours
  const before = JSON.parse((await exported(b)).toString('utf8'))
  await b.page.goto(`${b.home}/terms`)
  for (const topic of ['Tools', 'Noise', 'Access']) await press(b.page, new RegExp(`^Remove “?${topic}`))
  await save(b.page, 'Save the terms')
  expect(JSON.parse((await exported(b)).toString('utf8')).terms ?? []).toEqual([])

  await a.page.goto(`${a.home}/changes`)
  await expectPage(a.page.getByRole('heading', { level: 1, name: 'Changes' })).toBeVisible()
  await expectPage(panel(a.page, 'Put back what you changed')).toHaveCount(0)
  await b.page.goto(`${b.home}/changes`)
  const offered = panel(b.page, 'Put back what you changed')
  await offered.getByRole('button', { name: /^Put back what stood before\s*: The terms/ }).click()
  await expectPage(b.page.locator('.history-entry').first()).toContainText('The terms')
  await expectPage
    .poll(async () => JSON.parse((await exported(b)).toString('utf8')).terms)
    .toEqual(before.terms)
  expect(JSON.parse((await exported(b)).toString('utf8'))).toEqual(before)
})
