import type { Browser, Page } from '@playwright/test'
import { afterAll, beforeAll, describe, expect, inject, test } from 'vitest'
import { openBrowser } from './browser.ts'
import { examplePages, openExample } from './examplePages.ts'
import { walkByTab } from './tabbing.ts'
import { openLaptop } from './twoHouseholds.ts'

// WCAG 2.2, success criteria 2.1.1 Keyboard, 2.1.2 No Keyboard Trap, 2.4.7 Focus Visible and 2.4.11 Focus Not Obscured: whatever can
// be pressed or filled in is reached by Tab alone, is seen to have the focus, and can be left again.

let browser: Browser

beforeAll(async () => {
  browser = await openBrowser()
})
afterAll(async () => {
  await browser?.close()
})

describe('on every page of the example', () => {
  let page: Page
  let home: string

  beforeAll(async () => {
    const context = await openLaptop(browser)
    home = await openExample(context, inject('baseUrl'))
    page = await context.newPage()
    return () => context.close()
  })

  test.each(examplePages.map((place) => ({ place })))(
    'Tab reaches all of “$place”, and each is seen',
    async ({ place }) => {
      await page.goto(home + place)
      await page.waitForLoadState('networkidle').catch(() => undefined)
      const { unreached, unseen, reached } = await walkByTab(page)

      expect(unreached).toEqual([])
      expect(unseen).toEqual([])
      expect(reached).toBeGreaterThan(5)
    },
  )

  test('a thing that Tab passes by, and one whose focus nobody sees, are found', async () => {
    await page.setContent(
      '<style>:focus-visible{outline:2px solid}</style><main><a href="/one">one</a><a href="/two" tabindex="-1">two</a><button style="outline:none">three</button></main>',
    )
    const { unreached, unseen } = await walkByTab(page)

    expect(unreached).toEqual(['a: two'])
    expect(unseen).toEqual(['button: three: no outline'])
  })
})
