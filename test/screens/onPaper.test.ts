import type { Browser, BrowserContext, Page } from '@playwright/test'
import { afterAll, beforeAll, describe, expect, inject, test } from 'vitest'
import { plainTextOf } from '../pdf/pdfTools.ts'
import { readPdf } from '../pdf/readPdf.ts'
import { openBrowser } from './browser.ts'
import { examplePages, openExample } from './examplePages.ts'

/** What is worked with at the fence and at the table, and so is printed. */
const workingPapers = [
  '/materials',
  '/cut-plan',
  '/shares',
  '/money',
  '/ask-first',
  '/work',
  '/setbacks',
  '/side-by-side',
  '/try',
  '/books',
]

let browser: Browser
let context: BrowserContext
let page: Page
let home: string

beforeAll(async () => {
  browser = await openBrowser()
  // A4 less the margins of the sheet, in CSS pixels: 178 mm.
  context = await browser.newContext({ viewport: { width: 673, height: 980 } })
  home = await openExample(context, inject('baseUrl'))
  page = await context.newPage()
  await page.emulateMedia({ media: 'print' })
})
afterAll(async () => {
  await browser?.close()
})

/** What stands on the sheet although only a screen can do something with it, by what it begins with. */
function onlyForScreens(): Promise<string[]> {
  const kinds = 'nav, button, .button, .page-notice, .stay-current, .save-bar, .skip-link, input[type=file]'
  return page
    .locator(kinds)
    .evaluateAll((all) =>
      all
        .filter((element) => element.checkVisibility() && element.getClientRects().length > 0)
        .map((element) => element.outerHTML.slice(0, 120)),
    )
}

const sideways = () =>
  page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth)

/** The words of the page as it prints, each sheet ended by a form feed. */
const printed = async () => plainTextOf(await page.pdf({ format: 'A4', preferCSSPageSize: true }))

describe('printed, a page shows no navigation, no notices and no buttons', () => {
  test.each(['/', '/start', '/check'])('before a notebook: %s', async (address) => {
    await page.goto(inject('baseUrl') + address)
    expect(await page.getByRole('heading', { level: 1 }).isVisible()).toBe(true)
    expect(await onlyForScreens()).toEqual([])
  })

  test.each(examplePages)('in a notebook: “%s”', async (address) => {
    await page.goto(home + address)
    // The letter is printed by itself, without the title of the page that it stands on.
    const alone = page.locator('.paper-alone')
    const heading = page.getByRole('heading', { level: 1 })
    expect(await heading.isVisible()).toBe((await alone.count()) === 0)
    for (const paper of await alone.all()) expect(await paper.isVisible()).toBe(true)
    expect(await onlyForScreens()).toEqual([])
  })
})

describe('a working paper', () => {
  test.each(workingPapers)('%s fits on the sheet, nothing of it cut off', async (address) => {
    await page.goto(home + address)
    expect(await sideways()).toBe(0)
    const cutOff = await page.locator('main .figure-table, main .panel').evaluateAll((all) =>
      all
        .filter((element) => element.checkVisibility())
        .filter((element) => element.scrollWidth > element.clientWidth + 1)
        .map((element) => element.textContent?.slice(0, 80)),
    )
    expect(cutOff).toEqual([])
  })

  test.each(['', '/materials', '/shares', '/work', '/books', '/ask-first'])(
    '“%s” leaves no sheet half empty before its last, and no heading at the foot of one',
    async (address) => {
      await page.goto(home + address)
      const headings = await page
        .locator('main :is(h1, h2, h3, h4, summary, caption)')
        .evaluateAll((all) => all.map((element) => element.textContent?.replace(/\s+/g, ' ').trim()))
      const { pages } = await readPdf(await page.pdf({ format: 'A4', preferCSSPageSize: true }))
      const feet = pages.slice(0, -1).map(({ texts, height }) => {
        const deepest = Math.max(...texts.map(({ y }) => y))
        const line = texts.filter(({ y }) => Math.abs(y - deepest) < 2).map(({ text }) => text)
        return { reaches: deepest / height, line: line.join(' ').replace(/\s+/g, ' ').trim() }
      })
      expect(pages.length).toBeGreaterThan(2)
      expect(feet.filter(({ reaches }) => reaches < 0.5)).toEqual([])
      expect(feet.filter(({ line }) => headings.includes(line))).toEqual([])
    },
  )

  test('with cost lines keeps every short table in one piece, from its heading to its sum', async () => {
    await page.goto(`${home}/materials`)
    const sheets = (await printed()).split('\f')
    const counts = sheets.map((sheet) => ({
      heads: sheet.match(/\bPrice of one\b/g)?.length ?? 0,
      sums: sheet.match(/^Sum\b/gm)?.length ?? 0,
    }))
    expect(counts.filter(({ heads }) => heads > 0).length).toBeGreaterThan(1)
    for (const { heads, sums } of counts) expect(sums).toBe(heads)
  })

  test('for signing leaves the agreement to its own PDF, and says where that is', async () => {
    await page.goto(`${home}/sign`)
    const words = (await printed()).replace(/\s+/g, ' ')
    expect(words).toContain('The agreement is not printed with this page. Print its PDF')
    expect(words).not.toContain('What each part costs, and how it is shared')
    expect(words.length).toBeGreaterThan(200)
    expect((await printed()).split('\f').filter((sheet) => sheet.trim() !== '').length).toBeLessThanOrEqual(2)
  })

  test('with checks has what was answered, and a line to write on where nothing was', async () => {
    await page.goto(`${home}/ask-first`)
    const words = (await printed()).replace(/\s+/g, ' ')
    expect(words).toContain('Whom to ask before anyone digs or builds')
    expect(words).not.toContain('mm/dd/yyyy')
    expect(words).not.toContain('Setbacks and heights')
    expect(words).not.toContain('Save the checks')
  })
})
