import type { Browser, BrowserContext, Page } from '@playwright/test'
import { afterAll, beforeAll, describe, expect, inject, test } from 'vitest'
import { openBrowser } from './browser.ts'
import { examplePages, openExample } from './examplePages.ts'

let browser: Browser

beforeAll(async () => {
  browser = await openBrowser()
})
afterAll(async () => {
  await browser?.close()
})

/** Tables that have to be pushed aside to be read, by their captions, with what is out of sight in CSS pixels. */
const pushedAside = (page: Page) =>
  page
    .locator('.figure-table')
    .evaluateAll((all) =>
      all
        .filter((table) => table.checkVisibility() && table.scrollWidth > table.clientWidth + 1)
        .map(
          (table) =>
            `${table.querySelector('caption')?.textContent}: ${table.scrollWidth - table.clientWidth}`,
        ),
    )

test('a table that is too wide for its place is found', async () => {
  const page = await browser.newPage({ viewport: { width: 390, height: 700 } })
  await page.setContent(
    '<section class="figure-table" style="overflow:auto"><table style="width:900px"><caption>Wide</caption></table></section>',
  )
  expect(await pushedAside(page)).toEqual(['Wide: 526'])
  await page.close()
})

describe.each([390, 320])('at %d px', (width) => {
  let context: BrowserContext
  let page: Page
  let home: string

  beforeAll(async () => {
    context = await browser.newContext({ viewport: { width, height: 800 }, reducedMotion: 'reduce' })
    home = await openExample(context, inject('baseUrl'))
    page = await context.newPage()
    return () => context.close()
  })

  test.each(examplePages)('no table of “%s” is pushed aside to be read', async (address) => {
    await page.goto(home + address)
    // What is folded away is read too once it is opened.
    await page.locator('details').evaluateAll((all) => {
      for (const one of all) (one as HTMLDetailsElement).open = true
    })
    expect(await pushedAside(page)).toEqual([])
  })

  test('a row of many figures keeps what each is called beside it, and stays a row for whoever has it read aloud', async () => {
    await page.goto(`${home}/money`)
    const table = page.getByRole('table', { name: 'Asked, promised and given' })
    const cells = table.getByRole('row').nth(1).getByRole('cell')
    expect(await table.getByRole('columnheader').allTextContents()).toEqual([
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
    expect(named).toContain('no. 14')
  })
})
