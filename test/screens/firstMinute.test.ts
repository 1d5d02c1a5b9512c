import type { Browser, Locator, Page } from '@playwright/test'
import { afterAll, beforeAll, expect, inject, test } from 'vitest'
import { openBrowser } from './browser.ts'
import { expectPage } from './expectPage.ts'
import { openLaptop, openPhone } from './twoHouseholds.ts'
import { faultAt, field, put } from './typing.ts'
import { panel } from './visiting.ts'

let browser: Browser

beforeAll(async () => {
  browser = await openBrowser()
})
afterAll(async () => {
  await browser?.close()
})

/** Whoever walks here presses buttons, links and radios, each counted; typing is no press. */
function walker(page: Page) {
  let presses = 0
  const press = async (target: Locator) => {
    presses += 1
    await target.click()
  }
  return {
    page,
    presses: () => presses,
    button: (name: string) => press(page.getByRole('button', { name, exact: true })),
    link: (name: string) => press(page.getByRole('link', { name, exact: true }).first()),
    radio: (name: RegExp, within: string) =>
      press(page.getByRole('radiogroup', { name: within }).getByRole('radio', { name })),
  }
}

async function startWith(walk: ReturnType<typeof walker>): Promise<void> {
  const { page } = walk
  await page.goto(inject('baseUrl'))
  await walk.link('Start a notebook')
  await page.getByLabel('What you both call this fence').fill('Kestrel Row')
  await page.getByLabel('Your household', { exact: true }).fill('no. 12')
  await page.getByLabel('Your neighbours’ household').fill('no. 14')
  await walk.button('Start the notebook')
  await expectPage(page.getByRole('textbox', { name: 'Private link' })).toBeVisible()
  await walk.button('I have kept it')
  await expectPage(page.getByRole('heading', { level: 1, name: 'A first split' })).toBeVisible()
}

/** 60 ft of fence: 900.00 of materials and 20 hours at 15.00. */
async function typeFigures(page: Page): Promise<void> {
  await put(page, 'length', '60 ft')
  await put(page, 'height', '5 ft')
  await put(page, 'materials', '900')
  await put(page, 'hours', '20')
  await put(page, 'rate', '15')
}

// The scripted walk, typing included, took 5 s on a busy machine of two cores; how fast a person reads is not in it.
test('from the start page to a fair split on screen in at most twelve presses, on a phone', async () => {
  const context = await openPhone(browser)
  const walk = walker(await context.newPage())
  const { page } = walk
  await startWith(walk)
  await typeFigures(page)

  // Of 900.00 + 300.00 each half; then, of a fence for 700.00 that would do for both, half each, and no. 14 the 500.00 above it.
  const split = panel(page, 'What each is asked for')
  await expectPage(split.locator('.share-bar-figures')).toHaveText(/no\.\s12.*\$600\.00.*no\.\s14.*\$600\.00/)
  await walk.radio(/^Pay the difference/, 'Share it by')
  await walk.radio(/^no\. 14/, 'More than that is wanted by')
  await put(page, 'basic', '700')
  await expectPage(split.locator('.share-bar-figures')).toHaveText(/no\.\s12.*\$350\.00.*no\.\s14.*\$850\.00/)
  await walk.button('Keep this split')

  await expectPage(page.getByRole('heading', { level: 1, name: 'The line' })).toBeVisible()
  const whole = panel(page, 'The whole fence')
  await expectPage(whole.locator('.share-bar-figures')).toHaveText(/no\.\s12.*\$350\.00.*no\.\s14.*\$850\.00/)
  expect(walk.presses()).toBeLessThanOrEqual(12)
  await context.close()
})

test('a first split that lacks something says where, keeps what was typed, and changes nothing', async () => {
  const context = await openLaptop(browser)
  const walk = walker(await context.newPage())
  const { page } = walk
  await startWith(walk)
  await put(page, 'length', '60')
  await put(page, 'materials', '900')
  await walk.button('Keep this split')

  await expectPage(faultAt(page, 'length')).toContainText('60')
  await expectPage(field(page, 'materials')).toHaveValue('900')
  await expectPage(page.getByRole('heading', { level: 1, name: 'A first split' })).toBeVisible()
  await put(page, 'length', '60 ft')
  await walk.button('Keep this split')
  await expectPage(page.getByRole('heading', { level: 1, name: 'The line' })).toBeVisible()
  await expectPage(page.locator('.item-rows').getByText('Along the line')).toHaveCount(1)
  await context.close()
})

test('an empty notebook leads to the first split from The line, and a filled one does not', async () => {
  const context = await openLaptop(browser)
  const walk = walker(await context.newPage())
  const { page } = walk
  await startWith(walk)
  await walk.link('The line')
  await walk.link('Work out a first split')
  await expectPage(page.getByRole('heading', { level: 1, name: 'A first split' })).toBeVisible()
  await typeFigures(page)
  await walk.button('Keep this split')

  await expectPage(page.getByRole('heading', { level: 1, name: 'The line' })).toBeVisible()
  await expectPage(page.getByRole('link', { name: 'Work out a first split' })).toHaveCount(0)
  await context.close()
})

test('currency and units are guessed from the browser’s language', async () => {
  const context = await browser.newContext({ locale: 'de-AT', reducedMotion: 'reduce' })
  const page = await context.newPage()
  await page.goto(`${inject('baseUrl')}/start`)

  await expectPage(page.locator('details.fold > summary')).toContainText('EUR, metres')
  await page.locator('details.fold > summary').click()
  await expectPage(field(page, 'currency')).toHaveValue('EUR')
  await context.close()
})

test('the example opens without signing up: signed once, amended since, and disagreed about', async () => {
  const context = await openLaptop(browser)
  const walk = walker(await context.newPage())
  const { page } = walk
  await page.goto(inject('baseUrl'))
  await walk.button('Open the example as the first household')
  await expectPage(page.getByRole('heading', { level: 1, name: 'The line' })).toBeVisible()

  expect(walk.presses()).toBe(1)
  const changed = page.locator('#changed')
  await expectPage(changed).toContainText('Mower gate')
  await expectPage(changed).toContainText('When we signed, no. 12 took the work on the slope on itself.')
  const lists = page.locator('.item-rows')
  await expectPage(lists.getByText('Changed since revision 1, not agreed')).toHaveCount(1)
  await expectPage(lists.getByText('Changed since revision 1, agreed by both')).toHaveCount(1)
  await context.close()
})
