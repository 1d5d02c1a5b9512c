import AxeBuilder from '@axe-core/playwright'
import type { Browser, BrowserContext, Page } from '@playwright/test'
import { afterAll, beforeAll, describe, expect, inject, test } from 'vitest'
import { agreeToAll, putUp, sign } from './agreeing.ts'
import { openBrowser } from './browser.ts'
import { expectPage } from './expectPage.ts'
import { shortNotebook } from './shortNotebook.ts'
import { homeOf, makeInvitation, type Neighbours, neighboursWith } from './twoHouseholds.ts'
import { put } from './typing.ts'

// WCAG 2.2, levels A and AA: what axe can find of it by itself. A width of 320 px is that of success criterion 1.4.10, Reflow.
const rules = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa']

let browser: Browser

beforeAll(async () => {
  browser = await openBrowser()
})
afterAll(async () => {
  await browser?.close()
})

/** Everything that is wrong with the page as it stands, one line each. */
async function wrongWith(page: Page): Promise<string[]> {
  // Legacy mode spares a second page for each look; it leaves out frames of other origins, and there are none.
  const { violations } = await new AxeBuilder({ page }).withTags(rules).setLegacyMode().analyze()
  const sideways = await page.evaluate(
    () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
  )
  return [
    ...violations.flatMap(({ id, nodes }) =>
      nodes.map(({ target, failureSummary }) => `${id}: ${target.join(' ')}: ${failureSummary}`),
    ),
    ...(sideways > 0 ? [`scrolls ${sideways} px sideways`] : []),
  ]
}

/** Opens a page and gives all that is wrong with it, what the browser complains of included. */
async function lookAt(page: Page, address: string, missing = false): Promise<string[]> {
  const complaints: string[] = []
  const hear = (text: string) => complaints.push(`console: ${text}`)
  page.on('console', (message) => message.type() === 'error' && hear(message.text()))
  page.on('pageerror', (error) => hear(String(error)))
  await page.goto(address)
  const found = await wrongWith(page)
  page.removeAllListeners('console')
  page.removeAllListeners('pageerror')
  // A browser counts the answer "not found" to the page itself as an error.
  return [...found, ...complaints.filter((text) => !missing || !text.includes('404'))]
}

/** Looks at every page that can be reached from the notebook's first by its own links; files to save are none. */
async function lookAtAll(page: Page, home: string): Promise<{ pages: number; wrong: string[] }> {
  const wrong: string[] = []
  const found = new Set([home])
  for (const address of found) {
    wrong.push(...(await lookAt(page, address)).map((one) => `${new URL(address).pathname}: ${one}`))
    const links = page.locator('a[href]:not([download])')
    const leads = await links.evaluateAll((all) => all.map((link) => (link as HTMLAnchorElement).href))
    for (const lead of leads.map((one) => one.replace(/#.*$/, ''))) if (lead.startsWith(home)) found.add(lead)
  }
  return { pages: found.size, wrong }
}

test('what is wrong with a page is found: too pale, without a label, too wide', async () => {
  const page = await browser.newPage()
  await page.setContent(
    '<html lang="en"><title>Wrong</title><p style="color:#bbb;background:#fff;width:3000px">pale</p><input></html>',
  )
  const wrong = await wrongWith(page)

  expect(wrong.map((one) => one.split(' ')[0])).toEqual(['color-contrast:', 'label:', 'scrolls'])
  await page.close()
})

describe.each(['light', 'dark'] as const)('in %s, at 320 px', (colorScheme) => {
  let context: BrowserContext
  let page: Page

  beforeAll(async () => {
    context = await browser.newContext({
      viewport: { width: 320, height: 700 },
      colorScheme,
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
