import type { Browser, Page } from '@playwright/test'
import { afterAll, beforeAll, expect, inject, test } from 'vitest'
import { openBrowser } from './browser.ts'
import { atTheExample, examplePages } from './examplePages.ts'
import { tornFigures } from './tornFigures.ts'

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

const widths = [1280, 820, 390, 320] as const

async function tornAtEveryWidth(): Promise<string[]> {
  const torn: string[] = []
  for (const width of widths) {
    await page.setViewportSize({ width, height: 800 })
    for (const figure of await tornFigures(page)) torn.push(`${width} px: ${figure}`)
  }
  return torn
}

test('a figure whose unit falls on the next line is found, in whatever pieces it comes', async () => {
  await page.setContent(
    '<div style="width:1px"><p>37 ft 10 9/16 in</p><p><b>18.7</b> %</p><p>12 May 2027</p><p>of no. 14 it</p></div><p>30 ft</p>',
  )
  expect(await tornFigures(page)).toEqual(['[37 ft 10 9/16 in]', '18.[7 %]', '[12 May 2027]', 'of [no. 14]'])
  await page.setContent(
    '<div style="width:1px"><p>37\u00A0ft\u00A010\u00A09/16\u00A0in or $1,234.50</p></div>',
  )
  expect(await tornFigures(page)).toEqual([])
})

test.each(['/', '/start', '/check'])('no line ends within a figure on %s', async (address) => {
  await page.goto(inject('baseUrl') + address)
  expect(await tornAtEveryWidth()).toEqual([])
})

test.each(examplePages)('no line ends within a figure on “%s” of the example', async (address) => {
  await page.goto(home + address)
  await page.locator('details').evaluateAll((all) => {
    for (const one of all) (one as HTMLDetailsElement).open = true
  })
  expect(await tornAtEveryWidth()).toEqual([])
})
