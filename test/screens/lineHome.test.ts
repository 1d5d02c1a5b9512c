import AxeBuilder from '@axe-core/playwright'
import type { Browser, BrowserContext, Page } from '@playwright/test'
import { afterAll, beforeAll, describe, expect, inject, test } from 'vitest'
import { agreeToAll, putUp, sign } from './agreeing.ts'
import { openBrowser } from './browser.ts'
import { expectPage } from './expectPage.ts'
import { shortNotebook } from './shortNotebook.ts'
import { chooseFile, homeOf, neighboursWith, openLaptop, openPhone } from './twoHouseholds.ts'
import { put, save } from './typing.ts'
import { panel, visit, visitItem } from './visiting.ts'

// The line as the home of a notebook: its drawing is the way around, and how things stand is seen at a glance.

let browser: Browser

beforeAll(async () => {
  browser = await openBrowser()
})
afterAll(async () => {
  await browser?.close()
})

async function openExample(page: Page): Promise<string> {
  await page.goto(inject('baseUrl'))
  await page.getByRole('button', { name: 'Open the example as the first household' }).click()
  await expectPage(page.getByRole('heading', { level: 1, name: 'The line' })).toBeVisible()
  await expectPage(page.getByRole('button', { name: 'Zoom in' })).toBeVisible()
  return homeOf(page)
}

const drawing = (page: Page) => page.getByRole('region', { name: 'Drawing of the line' })
const looks = (page: Page) => page.locator('.look')
const part = (page: Page, name: RegExp) => drawing(page).getByRole('link', { name }).first()

async function wrongWith(page: Page): Promise<string[]> {
  const { violations } = await new AxeBuilder({ page })
    .withTags(['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'])
    .setLegacyMode()
    .analyze()
  const sideways = await page.evaluate(
    () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
  )
  return [
    ...violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ target }) => target.join(' ')).join()}`),
    ...(sideways > 0 ? [`scrolls ${sideways} px sideways`] : []),
  ]
}

const parts = [
  ['a section', /^Section 2: Along the gardens/, 'Infill'],
  ['a gate', /^Gate 1: Between the gardens/, 'Passages a week'],
  ['a post', /^Post 2 of Section 1/, 'Length to cut'],
  ['a station', /^Station 24/, 'Ground of no. 14'],
] as const

describe('on a laptop', () => {
  let page: Page
  let home: string

  beforeAll(async () => {
    page = await (await openLaptop(browser)).newPage()
    home = await openExample(page)
  })
  afterAll(async () => {
    await page?.context().close()
  })

  test.each(parts)(
    'Enter on %s opens it in place, with the focus; Escape gives the focus back',
    async (_, name, fact) => {
      await part(page, name).focus()
      await page.keyboard.press('Enter')
      const look = page.getByRole('region', { name: name.source.startsWith('^Station') ? /^Station/ : name })
      await expectPage(look).toBeFocused()
      await expectPage(look.getByText(fact)).toBeVisible()
      expect(await looks(page).count()).toBe(1)
      expect(page.url()).toMatch(/#look-[a-z]+-[0-9]+$/)
      await page.keyboard.press('Escape')
      await expectPage(looks(page)).toHaveCount(0)
      await expectPage(part(page, name)).toBeFocused()
      expect(page.url()).toBe(home)
    },
  )

  test('another part takes the place of the first, and one step back closes', async () => {
    await part(page, /^Gate 1/).click()
    await expectPage(page.getByRole('region', { name: /^Gate 1: Between/ })).toBeFocused()
    await part(page, /^Station 24/).click()
    await expectPage(page.getByRole('region', { name: /^Station 24/ })).toBeFocused()
    expect(await looks(page).count()).toBe(1)
    await page.goBack()
    await expectPage(looks(page)).toHaveCount(0)
    await expectPage(page.getByRole('heading', { level: 1, name: 'The line' })).toBeVisible()
    await expectPage(part(page, /^Station 24/)).toBeFocused()
  })

  test('its own close closes it, and its page is one link away', async () => {
    await part(page, /^Gate 2: Compost gate/).click()
    const look = page.getByRole('region', { name: 'Gate 2: Compost gate' })
    await look.getByRole('link', { name: /^Close/ }).press('Enter')
    await expectPage(looks(page)).toHaveCount(0)
    await part(page, /^Gate 2: Compost gate/).click()
    await look.getByRole('link', { name: /^Open it/ }).click()
    await expectPage(page.getByRole('heading', { level: 1, name: /Compost gate/ })).toBeVisible()
    await page.goto(home)
  })

  test('an address with a part in it opens that part', async () => {
    // From elsewhere: within the page it would be a move of the address alone.
    await page.goto('about:blank')
    await page.goto(`${home}#look-gate-3`)
    await expectPage(page.getByRole('region', { name: 'Gate 3: Mower gate' })).toBeFocused()
    // The browser alone gives it the focus; that the others are gone says that the page has come to life.
    await expectPage(looks(page)).toHaveCount(1)
    await page.getByRole('link', { name: /^Close/ }).click()
    await expectPage(looks(page)).toHaveCount(0)
    await expectPage(part(page, /^Gate 3: Mower gate/)).toBeFocused()
  })
})

describe('on a phone', () => {
  let page: Page

  beforeAll(async () => {
    page = await (await openPhone(browser)).newPage()
    await openExample(page)
  })
  afterAll(async () => {
    await page?.context().close()
  })

  test('what a tap opens comes into view, by its name', async () => {
    await part(page, /^Gate 4: Orchard gate/).tap()
    const title = page.getByRole('heading', { level: 2, name: 'Gate 4: Orchard gate' })
    await expectPage(title).toBeInViewport()
    await page.getByRole('link', { name: /^Close/ }).tap()
    await expectPage(part(page, /^Gate 4: Orchard gate/)).toBeInViewport()
  })

  test('posts that stand too close for a finger open from the list under the drawing', async () => {
    const list = page.locator('.drawing-list:visible')
    await list.getByText('Parts of the drawing').tap()
    await list.getByRole('link', { name: /^Post 2 of Section 1/ }).tap()
    await expectPage(page.getByRole('heading', { level: 2, name: /^Post 2 of Section 1/ })).toBeInViewport()
    await page.getByRole('link', { name: /^Close/ }).tap()
    await expectPage(list.getByRole('link', { name: /^Post 2 of Section 1/ })).toBeFocused()
  })
})

describe.each([390, 1280])('at %d px', (width) => {
  test.each(['light', 'dark'] as const)(
    'axe finds nothing wrong, closed, open and unfolded, in %s',
    async (colorScheme) => {
      const context: BrowserContext = await browser.newContext({
        viewport: { width, height: 844 },
        colorScheme,
        reducedMotion: 'reduce',
      })
      const page = await context.newPage()
      await openExample(page)
      expect(await wrongWith(page)).toEqual([])
      for (const name of [/^Section 2/, /^Station 24/]) {
        await part(page, name).press('Enter')
        await expectPage(looks(page)).toHaveCount(1)
        expect(await wrongWith(page)).toEqual([])
      }
      await page.getByText('What the signs mean').click()
      await page.getByText('Put in another order').click()
      expect(await wrongWith(page)).toEqual([])
      await context.close()
    },
  )
})

test('marked in place, agreed, signed and changed since are told by the drawing, the row and the look', async () => {
  const neighbours = await neighboursWith(browser, shortNotebook)
  const { a, b } = neighbours
  const section = (page: Page) => page.locator('#sections .item-row', { hasText: 'Along the bank' })
  await visit(a, 'The line')
  await expectPage(section(a.page)).toContainText('Open')
  await expectPage(part(a.page, /^Section 1: Along the bank.*, open$/)).toHaveCount(1)

  await part(a.page, /^Gate 1: Willow gate/).press('Enter')
  const look = a.page.getByRole('region', { name: 'Gate 1: Willow gate' })
  await look.getByRole('button', { name: 'Agree to this as it stands' }).click()
  await expectPage(look.getByRole('button', { name: 'Take your mark off' })).toBeVisible()
  await expectPage(part(a.page, /^Gate 1: Willow gate.*, agreed by one alone$/)).toHaveCount(1)
  await expectPage(a.page.locator('#gates .item-row')).toContainText('Agreed by Heron House alone')
  await look.getByRole('button', { name: 'Take your mark off' }).click()
  await expectPage(look.getByRole('button', { name: 'Agree to this as it stands' })).toBeVisible()
  await a.page.goBack()
  await expectPage(looks(a.page)).toHaveCount(0)

  for (const household of [a, b]) await agreeToAll(household)
  await putUp(a, 1)
  await sign(a.page, 'Petra Quillon')
  await b.page.goto(`${b.home}/sign`)
  await sign(b.page, 'Emrys Vant')
  await expectPage(b.page.getByRole('heading', { name: 'Revision 1 is signed by all' })).toBeVisible()
  await visit(a, 'The line')
  await expectPage(section(a.page)).toContainText('Agreed by both')
  await expectPage(part(a.page, /^Section 1: Along the bank.*, agreed by both$/)).toHaveCount(1)

  await visitItem(b, 'Along the bank')
  await put(b.page, 'height.agreed', '4 ft 6 in')
  await save(b.page, 'Save this section')
  await visit(b, 'The line')
  await expectPage(section(b.page)).toContainText('Changed since revision 1, not agreed')
  await expectPage(part(b.page, /^Section 1: Along the bank.*, changed$/)).toHaveCount(1)
  await part(b.page, /^Section 1: Along the bank/).press('Enter')
  await expectPage(looks(b.page)).toContainText('Changed since revision 1, not agreed')
  await neighbours.close()
})

test('a notebook with nothing in it has one beginning, the three steps under it, and no drawing to zoom', async () => {
  const page = await (await openLaptop(browser)).newPage()
  const { format, version, currency, households } = shortNotebook
  await page.goto(inject('baseUrl'))
  await chooseFile(page, JSON.stringify({ format, version, currency, households }))
  await page.getByRole('button', { name: 'Start from this file' }).click()
  await page.getByRole('button', { name: 'I have kept it' }).click()
  await visit({ page, home: homeOf(page) }, 'The line')
  await expectPage(panel(page, 'Begin with a first split').locator('.button')).toHaveText([
    'Work out a first split',
  ])
  await expectPage(page.locator('.button-main')).toHaveCount(1)
  await expectPage(page.locator('.first-steps a')).toHaveText([
    'Say where the line is',
    'Lay out the first section',
    'Invite your neighbours',
  ])
  await expectPage(page.getByRole('button', { name: 'Zoom in' })).toHaveCount(0)
  expect(await wrongWith(page)).toEqual([])
  await page.context().close()
})
