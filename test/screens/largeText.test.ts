import type { Browser, Page } from '@playwright/test'
import { afterAll, beforeAll, expect, inject, test } from 'vitest'
import { openBrowser } from './browser.ts'
import { atTheExample, examplePages } from './examplePages.ts'
import { scrollsSideways } from './wrongWith.ts'

// WCAG 2.2, success criterion 1.4.4, Resize Text: text at 200 percent, nothing of it lost. Only the size of the text grows here,
// as where a person sets it in the browser; the window stays that of a laptop.

let browser: Browser
let page: Page
let home: string

beforeAll(async () => {
  browser = await openBrowser()
  ;({ page, home } = await atTheExample(browser, inject('baseUrl')))
})
afterAll(async () => {
  await browser?.close()
})

type Seen = {
  /** Size of every text that is seen, in CSS pixels, in the page's order; a drawing's is scaled with its drawing. */
  readonly sizes: readonly number[]
  /** Texts that a box cuts off. */
  readonly cutOff: readonly string[]
}

async function seenOn(shown: Page): Promise<Seen> {
  return shown.evaluate(() => {
    const sizes: number[] = []
    const cutOff: string[] = []
    // The titles of columns: where a table's rows turn into blocks, each figure has its title beside it instead.
    const aside = 'svg, .only-read-out, .skip-link, .in-blocks thead'
    const texts = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT)
    for (let text = texts.nextNode(); text !== null; text = texts.nextNode()) {
      const box = text.parentElement
      if (box === null || (text.textContent ?? '').trim() === '') continue
      if (box.closest(`script, style, noscript, ${aside}`) !== null) continue
      if (!box.checkVisibility({ visibilityProperty: true })) continue
      sizes.push(Number.parseFloat(getComputedStyle(box).fontSize))
    }
    for (const box of document.body.querySelectorAll<HTMLElement>('*')) {
      if (box.closest(aside) !== null || !box.checkVisibility()) continue
      const { overflowX, overflowY } = getComputedStyle(box)
      const hides = (overflow: string) => overflow === 'hidden' || overflow === 'clip'
      if (box.textContent?.trim() === '') continue
      if (
        (hides(overflowX) && box.scrollWidth > box.clientWidth + 1) ||
        (hides(overflowY) && box.scrollHeight > box.clientHeight + 1)
      ) {
        cutOff.push(`${box.tagName.toLowerCase()}.${box.className}: ${box.textContent?.slice(0, 60)}`)
      }
    }
    return { sizes, cutOff }
  })
}

test('a text that does not grow, and one that is cut off, are found', async () => {
  await page.setContent(
    '<p style="font-size:16px">fixed</p><p style="width:40px;height:1rem;overflow:hidden">much too long for its box</p>',
  )
  const before = await seenOn(page)
  await page.addStyleTag({ content: 'html { font-size: 200% !important }' })
  const after = await seenOn(page)

  expect(after.sizes[0]).toBe(before.sizes[0])
  expect(after.cutOff).toHaveLength(1)
})

test.each(examplePages.map((place) => ({ place })))(
  'at twice the size nothing of “$place” is lost, and it needs no scrolling sideways',
  async ({ place }) => {
    // A drawing brings its buttons once the page has come to rest.
    await page.goto(home + place, { waitUntil: 'networkidle' })
    const before = await seenOn(page)
    const base = await page.evaluate(() => getComputedStyle(document.documentElement).fontSize)
    await page.addStyleTag({ content: `html { font-size: ${2 * Number.parseFloat(base)}px !important }` })
    const after = await seenOn(page)

    expect(await scrollsSideways(page)).toEqual([])
    expect(after.cutOff).toEqual([])
    expect(after.sizes.length).toBe(before.sizes.length)
    expect(before.sizes.length).toBeGreaterThan(5)
    // Rows that turn into blocks have letters a little smaller than those of a table.
    for (const [at, size] of before.sizes.entries()) {
      expect(after.sizes[at]).toBeGreaterThanOrEqual(1.85 * size)
    }
  },
)
