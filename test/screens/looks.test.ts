import type { Browser, BrowserContext, Page } from '@playwright/test'
import { afterAll, beforeAll, describe, expect, inject, test } from 'vitest'
import { agreeToAll, putUp, sign } from './agreeing.ts'
import { openBrowser } from './browser.ts'
import { expectPage } from './expectPage.ts'
import { shortNotebook } from './shortNotebook.ts'
import { homeOf, makeInvitation, type Neighbours, neighboursWith } from './twoHouseholds.ts'
import { put } from './typing.ts'
import { lookAt, lookAtAll, wrongWith } from './wrongWith.ts'

let browser: Browser

beforeAll(async () => {
  browser = await openBrowser()
})
afterAll(async () => {
  await browser?.close()
})

test('what is wrong with a page is found: too pale, pale in the dark, without a label, too small, too wide', async () => {
  const page = await browser.newPage()
  await page.setContent(
    `<html lang="en"><title>Wrong</title><style>
      .dark { color: #000; background: #fff }
      @media (prefers-color-scheme: dark) { .dark { color: #555; background: #333 } }
      button { all: unset; display: inline-block; width: 12px; height: 12px }
    </style><p style="color:#bbb;background:#fff;width:3000px">pale</p><p class="dark">pale at night</p>
    <input><p><button aria-label="one"></button><button aria-label="two"></button></p></html>`,
  )
  const wrong = await wrongWith(page)

  const found = wrong.map((one) => one.split(':')[0]?.replace(/[0-9]+ px /, ''))
  expect(new Set(found)).toEqual(
    new Set(['color-contrast', 'color-contrast in dark', 'label', 'target-size', 'scrolls sideways']),
  )
  await page.close()
})

// A width of 320 px is that of success criterion 1.4.10, Reflow.
describe('at 320 px, in light and dark', () => {
  let context: BrowserContext
  let page: Page

  beforeAll(async () => {
    context = await browser.newContext({
      viewport: { width: 320, height: 700 },
      reducedMotion: 'reduce',
    })
    page = await context.newPage()
    return () => context.close()
  })

  test('every page of the example', { timeout: 600_000 }, async () => {
    await page.goto(inject('baseUrl'))
    await page.getByRole('button', { name: 'Open the example as the first household' }).click()
    await expectPage(page.getByRole('heading', { level: 1, name: 'The line' })).toBeVisible()
    const { pages, wrong } = await lookAtAll(page, homeOf(page))

    // The nine pages of the navigation, the items, and those that have no entry of their own.
    expect(pages).toBeGreaterThan(24)
    expect(wrong).toEqual([])
  })

  test.each(['/', '/start'])('the page %s', async (place) => {
    expect(await lookAt(page, inject('baseUrl') + place)).toEqual([])
  })

  test('a page that is not there', async () => {
    expect(await lookAt(page, `${inject('baseUrl')}/nowhere`, true)).toEqual([])
  })

  test('a form with everything unfolded, refused', async () => {
    await page.goto(`${inject('baseUrl')}/start`)
    await page.locator('summary', { hasText: 'Money and lengths' }).click()
    await page.getByRole('button', { name: 'Start the notebook' }).click()
    await expectPage(page.locator('.summary-faults')).toBeVisible()

    expect(await wrongWith(page)).toEqual([])
    await page.reload()
  })

  test('a first split, worked out', async () => {
    await page.goto(`${inject('baseUrl')}/start`)
    await put(page, 'households.a.name', 'Heron House')
    await put(page, 'households.b.name', 'Bank Cottage')
    await page.getByRole('button', { name: 'Start the notebook' }).click()
    await page.getByRole('button', { name: 'I have kept it' }).click()
    await put(page, 'length', '60 ft')
    await put(page, 'materials', '900')
    await expectPage(page.locator('.share-bar-figures')).toContainText('450.00')

    expect(await wrongWith(page)).toEqual([])
    await page.reload()
  })

  test('trade terms, unfolded', async () => {
    await page.goto(inject('baseUrl'))
    await page.getByRole('button', { name: 'Open the example as the first household' }).click()
    await expectPage(page.getByRole('heading', { level: 1, name: 'The line' })).toBeVisible()
    await page.goto(`${homeOf(page)}/build-up/s1`)
    const questions = page.locator('.explain summary')
    for (const question of await questions.all()) await question.click()
    await expectPage(page.getByRole('img', { name: /^A rail, seen on its end/ })).toBeVisible()

    expect(await wrongWith(page)).toEqual([])
  })

  test('the navigation, unfolded', async () => {
    await page.goto(inject('baseUrl'))
    await page.getByRole('button', { name: 'Open the example as the second household' }).click()
    await page.locator('.frame-nav-narrow > summary').click()
    await expectPage(page.locator('.frame-nav-narrow').getByRole('link', { name: 'Record' })).toBeVisible()

    expect(await wrongWith(page)).toEqual([])
  })
})

describe('a notebook of two', () => {
  let neighbours: Neighbours

  beforeAll(async () => {
    neighbours = await neighboursWith(browser, shortNotebook)
    return () => neighbours.close()
  })

  test('an invitation and a private link, before they are used and after', async () => {
    const starter = await browser.newContext({
      viewport: { width: 320, height: 700 },
      reducedMotion: 'reduce',
    })
    const page = await starter.newPage()
    await page.goto(`${inject('baseUrl')}/start`)
    await put(page, 'households.a.name', 'Heron House')
    await put(page, 'households.b.name', 'Bank Cottage')
    await page.getByRole('button', { name: 'Start the notebook' }).click()
    await expectPage(page.getByRole('textbox', { name: 'Private link' })).toBeVisible()
    const invitation = await makeInvitation(page)
    expect(await wrongWith(page)).toEqual([])

    expect(await lookAt(page, invitation)).toEqual([])
    await page.getByRole('button', { name: /^Come in as / }).click()
    await expectPage(page.getByRole('textbox', { name: 'Private link' })).toBeVisible()
    expect(await wrongWith(page)).toEqual([])
    const link = await page.getByRole('textbox', { name: 'Private link' }).inputValue()

    expect(await lookAt(page, link)).toEqual([])
    expect(await lookAt(page, invitation)).toEqual([])
    await expectPage(page.getByRole('heading', { name: 'This invitation has been used' })).toBeVisible()
    await starter.close()
  })

  test('the pages for signing: open, up for signing, signed', async () => {
    const { a, b } = neighbours
    for (const household of [a, b]) {
      await household.page.setViewportSize({ width: 320, height: 700 })
      await agreeToAll(household)
    }
    expect(await wrongWith(b.page)).toEqual([])
    await putUp(a, 1)
    expect(await wrongWith(a.page)).toEqual([])
    await sign(a.page, 'Petra Quillon')
    await b.page.goto(`${b.home}/sign`)
    await sign(b.page, 'Emrys Vant')
    await expectPage(b.page.getByRole('heading', { name: 'Revision 1 is signed by all' })).toBeVisible()

    for (const place of ['sign', 'record', 'changes', 'money']) {
      expect(await lookAt(b.page, `${b.home}/${place}`)).toEqual([])
    }
  })
})
