import type { Browser } from '@playwright/test'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { agreeToAll, putUp, sign } from './agreeing.ts'
import { openBrowser } from './browser.ts'
import { expectPage } from './expectPage.ts'
import { shortNotebook } from './shortNotebook.ts'
import { type Neighbours, neighboursWith } from './twoHouseholds.ts'

// Each test goes on where the one before it stopped. Household a is at a laptop, household b at a phone.
let browser: Browser
let neighbours: Neighbours

beforeAll(async () => {
  browser = await openBrowser()
  neighbours = await neighboursWith(browser, shortNotebook)
})
afterAll(async () => {
  await neighbours?.close()
  await browser?.close()
})

test('whoever agrees to the last item is led to what can be put up now', async () => {
  await agreeToAll(neighbours.a)
  await agreeToAll(neighbours.b)
  const head = neighbours.b.page.locator('.led-to h2')
  await expectPage(head).toBeFocused()
  await expectPage(head).toBeInViewport()
})

test('whoever signs is led to who has signed', async () => {
  const { page } = neighbours.b
  await putUp(neighbours.b, 1)
  await sign(page, 'Emrys Vant')
  const signed = page.locator('.led-to .mark-list')
  await expectPage(signed).toBeFocused()
  await expectPage(signed.getByText('Emrys Vant')).toBeInViewport()
})

test('whoever only reads stays where they are when the other household signs', async () => {
  const [{ page: reading }, { page: signing, home }] = [neighbours.b, neighbours.a]
  await reading.goto(`${neighbours.b.home}/sign`)
  await reading.getByRole('heading', { name: /^The agreement/ }).scrollIntoViewIfNeeded()
  const at = await reading.evaluate(() => window.scrollY)
  await signing.goto(`${home}/sign`)
  await sign(signing, 'Petra Quillon')
  await expectPage(reading.getByRole('heading', { name: 'Revision 1 is signed by all' })).toBeAttached()
  expect(await reading.evaluate(() => document.activeElement?.tagName)).toBe('BODY')
  expect(at).toBeGreaterThan(0)
  expect(await reading.evaluate(() => window.scrollY)).toBeGreaterThan(0)
})
