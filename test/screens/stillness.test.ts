import type { Browser, Page } from '@playwright/test'
import { afterAll, beforeAll, expect, inject, test } from 'vitest'
import { openBrowser } from './browser.ts'
import { examplePages, openExample } from './examplePages.ts'

// Who asks for less motion is shown none: no animation, no transition, no gliding to a part of the page.

let browser: Browser

beforeAll(async () => {
  browser = await openBrowser()
})
afterAll(async () => {
  await browser?.close()
})

/** Everything on the page that moves or would move, one line each. */
async function moving(page: Page): Promise<string[]> {
  return page.evaluate(() => {
    const found = new Set<string>()
    for (const box of document.querySelectorAll('*')) {
      const { animationName, transitionDuration, scrollBehavior } = getComputedStyle(box)
      const name = `${box.tagName.toLowerCase()}.${box.getAttribute('class') ?? ''}`
      if (animationName !== 'none') found.add(`${name}: animation`)
      if (/[1-9]/.test(transitionDuration)) found.add(`${name}: transition`)
      if (scrollBehavior === 'smooth') found.add(`${name}: glides`)
    }
    return [...found]
  })
}

test('no page of the example moves where less motion is asked for', async () => {
  const context = await browser.newContext({ reducedMotion: 'reduce' })
  const home = await openExample(context, inject('baseUrl'))
  const page = await context.newPage()
  for (const place of examplePages) {
    await page.goto(home + place)
    expect(await moving(page), place).toEqual([])
  }

  // The same look finds what moves where nothing is asked for.
  await page.emulateMedia({ reducedMotion: 'no-preference' })
  expect(await moving(page)).toEqual(['html.: glides'])
  await page.setContent(
    '<p style="transition:color 1s">slowly</p><style>@keyframes k{}</style><i style="animation:k 1s">i</i>',
  )
  expect(await moving(page)).toEqual(['p.: transition', 'i.: animation'])
  await context.close()
})
