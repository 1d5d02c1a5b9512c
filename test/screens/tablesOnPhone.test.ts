import type { Browser, BrowserContext, Page } from '@playwright/test'
import { afterAll, beforeAll, describe, expect, inject, test } from 'vitest'
import { plainBlanks } from '../shownMarkup.ts'
import { openBrowser } from './browser.ts'
import { examplePages, openExample } from './examplePages.ts'

let browser: Browser

beforeAll(async () => {
  browser = await openBrowser()
})
afterAll(async () => {
  await browser?.close()
})

/**
 * Tables and drawings that have to be pushed aside to be read, by name, with what is out of sight in CSS pixels. On the
 * narrowest screen a drawing may: its letters would be too small.
 */
const pushedAside = (page: Page, width = 390) =>
  page
    .locator(width < 390 ? '.figure-table' : '.figure-table, .drawing-frame')
    .evaluateAll((all) =>
      all
        .filter((one) => one.checkVisibility() && one.scrollWidth > one.clientWidth + 1)
        .map(
          (one) =>
            `${one.querySelector('caption')?.textContent ?? one.ariaLabel}: ${one.scrollWidth - one.clientWidth}`,
        ),
    )

test('a table or a drawing that is too wide for its place is found', async () => {
  const page = await browser.newPage({ viewport: { width: 390, height: 700 } })
  await page.setContent(
    `<section class="figure-table" style="overflow:auto"><table style="width:900px"><caption>Wide</caption></table></section>
    <section class="drawing-frame" style="overflow:auto" aria-label="Drawing"><div style="width:800px;height:10px"></div></section>`,
  )
  expect(await pushedAside(page)).toEqual(['Wide: 526', 'Drawing: 426'])
  await page.close()
})

const widths = [820, 390, 320] as const

describe('the example', () => {
  let context: BrowserContext
  let page: Page
  let home: string

  beforeAll(async () => {
    context = await browser.newContext({ viewport: { width: 820, height: 800 }, reducedMotion: 'reduce' })
    home = await openExample(context, inject('baseUrl'))
    page = await context.newPage()
    return () => context.close()
  })

  test.each(examplePages)(
    'nothing of “%s” is pushed aside to be read, on a tablet or a phone',
    async (address) => {
      await page.goto(home + address)
      // What is folded away is read too once it is opened.
      await page.locator('details').evaluateAll((all) => {
        for (const one of all) (one as HTMLDetailsElement).open = true
      })
      const pushed: string[] = []
      for (const width of widths) {
        await page.setViewportSize({ width, height: 800 })
        pushed.push(...(await pushedAside(page, width)).map((one) => `${width} px: ${one}`))
      }
      expect(pushed).toEqual([])
    },
  )

  test.each(widths)(
    'at %d px a row of many figures keeps what each is called beside it, and stays a row for whoever has it read aloud',
    async (width) => {
      await page.setViewportSize({ width, height: 800 })
      await page.goto(`${home}/money`)
      const table = page.getByRole('table', { name: 'Asked, promised and given' })
      const cells = table.getByRole('row').nth(1).getByRole('cell')
      expect((await table.getByRole('columnheader').allTextContents()).map(plainBlanks)).toEqual([
        'What',
        'no. 12',
        'no. 14',
        'Both',
      ])
      expect(await cells.count()).toBe(3)
      const [first, second] = [await cells.nth(0).boundingBox(), await cells.nth(1).boundingBox()]
      for (const box of [first, second])
        expect((box?.x ?? width) + (box?.width ?? 0)).toBeLessThanOrEqual(width)
      const named = await cells.nth(1).evaluate((cell) => getComputedStyle(cell, '::before').content)
      expect(named.includes('no. 14')).toBe(width < 820)
    },
  )
})
