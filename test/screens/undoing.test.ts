import type { Browser } from '@playwright/test'
import { afterAll, beforeAll, beforeEach, expect, test } from 'vitest'
import { openBrowser } from './browser.ts'
import { expectPage } from './expectPage.ts'
import { shortNotebook } from './shortNotebook.ts'
import { type Neighbours, neighboursWith } from './twoHouseholds.ts'
import { field, formOf, put, readingOf, trySaving } from './typing.ts'
import { exported } from './visiting.ts'

let browser: Browser
let neighbours: Neighbours

beforeAll(async () => {
  browser = await openBrowser()
})
afterAll(async () => {
  await browser?.close()
})
beforeEach(async () => {
  neighbours = await neighboursWith(browser, shortNotebook)
  return () => neighbours.close()
})

test('a gate that was removed is put back from the page that follows, as it was', async () => {
  const { page, home } = neighbours.b
  const before = JSON.parse((await exported(neighbours.b)).toString('utf8'))
  await page.goto(`${home}/item/g1`)
  await page.getByRole('button', { name: 'Remove this gate' }).click()
  await page.getByRole('button', { name: 'Yes: remove this gate' }).click()
  await expectPage(page.locator('#removed')).toContainText(
    'Willow gate was taken out of the notebook by you.',
  )
  expect(JSON.parse((await exported(neighbours.b)).toString('utf8')).gates ?? []).toEqual([])

  await page.getByRole('button', { name: /^Put it back/ }).click()
  await expectPage(page.getByRole('heading', { level: 1, name: 'Willow gate' })).toBeVisible()
  expect(JSON.parse((await exported(neighbours.b)).toString('utf8')).gates).toEqual(before.gates)
  await page.goto(home)
  await expectPage(page.locator('#removed')).toHaveCount(0)
})

test('lengths are shown in metres and back while something is being typed, and what was typed stays', async () => {
  const { page, home } = neighbours.b
  const before = await exported(neighbours.b)
  await page.goto(`${home}/item/s1`)
  await put(page, 'height.agreed', '5 ft 10 1/4 in')
  expect(await readingOf(page, 'height.agreed')).toContain('1.784 m')
  await page.getByRole('button', { name: 'Show lengths in metres' }).click()
  await expectPage(page.locator('.units-switch')).toContainText('Lengths are shown in metres.')
  await expectPage(page.locator('.units-switch')).toContainText('the papers keep to feet and inches')
  await expectPage(field(page, 'height.agreed')).toHaveValue('5 ft 10 1/4 in')
  await page.getByRole('button', { name: 'Show lengths in feet and inches' }).click()
  await expectPage(page.getByRole('button', { name: 'Show lengths in metres' })).toBeVisible()
  await expectPage(field(page, 'height.agreed')).toHaveValue('5 ft 10 1/4 in')
  expect((await exported(neighbours.b)).equals(before)).toBe(true)
})

test('what was said beside an item is led to and told, and leaves an empty form with nothing to be restored', async () => {
  const { page, home } = neighbours.b
  await page.goto(`${home}/item/s1`)
  await put(page, 'text', 'The willow stays.', 'message')
  await trySaving(page, 'Say it')
  await expectPage(page.locator('.message-text')).toHaveText(['The willow stays.'])
  await expectPage(page.locator('.message')).toBeFocused()
  await expectPage(page.locator('.message')).toBeInViewport()
  await expectPage(page.locator('.led-to').getByRole('status')).toHaveText(
    'Said. It stands here now, and Heron House can read it.',
  )
  await expectPage(field(page, 'text', 'message')).toHaveValue('')
  await page.reload()
  await expectPage(formOf(page, 'Say it').locator('.restored-draft')).toHaveCount(0)
  await expectPage(field(page, 'text', 'message')).toHaveValue('')
})

test('a phone is told which keys each field needs, and never to fill in for somebody', async () => {
  const { page, home } = neighbours.b
  await page.goto(`${home}/item/s1`)
  const keys = (path: string) =>
    field(page, path).evaluate((element) => {
      const input = element as HTMLInputElement
      return [input.inputMode, input.enterKeyHint, input.autocomplete]
    })
  expect(await keys('height.agreed')).toEqual(['text', 'done', 'off'])
  expect(await keys('materials[0].unitPrice')).toEqual(['decimal', 'done', 'off'])
  expect(await keys('notes')).toEqual(['', 'enter', 'off'])
  const silent = await page
    .locator('.draft-form :is(input[type=text], textarea)')
    .evaluateAll((all) =>
      all.filter((one) => (one as HTMLInputElement).enterKeyHint === '').map(({ id }) => id),
    )
  expect(silent).toEqual([])
})
