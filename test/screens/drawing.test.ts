import AxeBuilder from '@axe-core/playwright'
import type { Browser, Locator, Page } from '@playwright/test'
import { afterAll, beforeAll, describe, expect, inject, test } from 'vitest'
import { openBrowser } from './browser.ts'
import { expectPage } from './expectPage.ts'
import { homeOf, openLaptop, openPhone } from './twoHouseholds.ts'

let browser: Browser

beforeAll(async () => {
  browser = await openBrowser()
})
afterAll(async () => {
  await browser?.close()
})

/** The example, opened as the first household: it has sections and gates with a build-up. */
async function openExample(page: Page): Promise<string> {
  await page.goto(inject('baseUrl'))
  await page.getByRole('button', { name: /^Open the example as the first household/ }).click()
  await expectPage(page.getByRole('heading', { level: 1, name: 'The line' })).toBeVisible()
  return homeOf(page)
}

const frameOn = (page: Page) => page.getByRole('region', { name: 'Drawing of the line' })
const sheetOf = (frame: Locator) => frame.locator('.drawing-sheet')
const width = async (locator: Locator) => (await locator.boundingBox())?.width ?? 0

/** The height of the smallest letters on the drawing, in CSS pixels. */
function smallestText(frame: Locator): Promise<number> {
  return frame.locator('svg').evaluate((svg) => {
    const scale = svg.getBoundingClientRect().width / (svg as SVGSVGElement).viewBox.baseVal.width
    const sizes = [...svg.querySelectorAll('text')].map((text) => Number(text.getAttribute('font-size')))
    return Math.min(...sizes) * scale
  })
}

describe.each([
  ['on a phone', openPhone],
  ['on a laptop', openLaptop],
] as const)('the drawing %s', (_, open) => {
  let page: Page

  beforeAll(async () => {
    page = await (await open(browser)).newPage()
    await openExample(page)
  })
  afterAll(async () => {
    await page?.context().close()
  })

  test('can be read as it comes, and moves nothing but itself sideways', async () => {
    expect(await smallestText(frameOn(page))).toBeGreaterThanOrEqual(11)
    const sideways = await page.evaluate(
      () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
    )
    expect(sideways).toBe(0)
  })

  test('names each part for whoever hears it, with a target that a finger hits', async () => {
    const links = frameOn(page).getByRole('link')
    const names = await links.evaluateAll((all) => all.map((link) => link.getAttribute('aria-label') ?? ''))
    for (const begin of ['Section 1: Lane to the gardens', 'Gate 1: Between the gardens', 'Station 24'])
      expect(names.some((name) => name.replaceAll('\u00A0', ' ').startsWith(begin))).toBe(true)
    const sizes = await links.evaluateAll((all) =>
      all.map((link) => Math.min(link.getBoundingClientRect().width, link.getBoundingClientRect().height)),
    )
    expect(Math.min(...sizes)).toBeGreaterThanOrEqual(24)
  })

  test('names every post in the list under it', async () => {
    const list = page.locator('.drawing-list:visible')
    await list.getByText('Parts of the drawing').click()
    await expectPage(list.getByRole('link', { name: /^Post 1 of Section 1/ })).toBeVisible()
    expect(await list.getByRole('link', { name: /^Post / }).count()).toBeGreaterThan(8)
    await list.getByText('Parts of the drawing').click()
  })

  test('has nothing that axe finds wrong', async () => {
    const { violations } = await new AxeBuilder({ page })
      .include('.line-drawing')
      .withTags(['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'])
      .setLegacyMode()
      .analyze()
    expect(
      violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ target }) => target.join(' ')).join()}`),
    ).toEqual([])
  })

  test('zooms in and out by its buttons inside its own frame, shows all of it, and fills the width', async () => {
    const frame = frameOn(page)
    const before = await width(sheetOf(frame))
    await page.getByRole('button', { name: 'Zoom in' }).click()
    expect(await width(sheetOf(frame))).toBeCloseTo(before * 1.25, 0)
    await page.getByRole('button', { name: 'Zoom out' }).click()
    expect(await width(sheetOf(frame))).toBeCloseTo(before, 0)
    await page.getByRole('button', { name: 'Full width' }).click()
    const inner = await frame.evaluate((box) => box.clientWidth)
    expect(Math.abs((await width(sheetOf(frame))) - inner)).toBeLessThan(12)
    expect(await frame.evaluate((box) => box.scrollWidth - box.clientWidth)).toBeLessThanOrEqual(1)
    await page.getByRole('button', { name: 'Show all' }).click()
    const [high, room] = await frame.evaluate((box) => [box.scrollHeight, window.innerHeight])
    expect(high).toBeLessThanOrEqual((room ?? 0) + 1)
    await page.reload()
  })
})

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

  test('arrow keys pan what is zoomed in, plus and minus zoom', async () => {
    await page.goto(home)
    const frame = frameOn(page)
    await expectPage(page.getByRole('button', { name: 'Zoom in' })).toBeVisible()
    await frame.focus()
    const before = await width(sheetOf(frame))
    for (let press = 0; press < 4; press += 1) await page.keyboard.press('+')
    expect(await width(sheetOf(frame))).toBeGreaterThan(before * 2)
    const from = await frame.evaluate((box) => box.scrollLeft)
    await page.keyboard.press('ArrowRight')
    await expectPage.poll(() => frame.evaluate((box) => box.scrollLeft)).toBeGreaterThan(from)
    await page.keyboard.press('-')
    expect(await width(sheetOf(frame))).toBeLessThan(before * 2.4)
  })

  test('the wheel with Ctrl zooms about the pointer, the mouse drags, and a drag opens nothing', async () => {
    await page.goto(home)
    const frame = frameOn(page)
    await expectPage(page.getByRole('button', { name: 'Zoom in' })).toBeVisible()
    await frame.scrollIntoViewIfNeeded()
    const box = await frame.boundingBox()
    if (box === null) throw new Error('no frame')
    const before = await width(sheetOf(frame))
    await page.mouse.move(box.x + box.width / 2, box.y + 120)
    await page.keyboard.down('Control')
    await page.mouse.wheel(0, -240)
    await page.keyboard.up('Control')
    await expectPage.poll(() => width(sheetOf(frame))).toBeGreaterThan(before * 1.5)
    const from = await frame.evaluate((one) => one.scrollLeft)
    await page.mouse.down()
    await page.mouse.move(box.x + box.width / 2 - 90, box.y + 120, { steps: 4 })
    await page.mouse.up()
    expect(await frame.evaluate((one) => one.scrollLeft)).toBeGreaterThan(from + 60)
    expect(page.url()).toBe(home)
  })

  test('on the page of a gate, Enter on a post opens its build-up', async () => {
    await page.goto(home)
    await page.locator('#gates').getByRole('link', { name: 'Between the gardens' }).click()
    await expectPage(page.getByRole('heading', { level: 1, name: /Between the gardens/ })).toBeVisible()
    const item = page.getByRole('region', { name: 'Drawing of this part' })
    await expectPage(item.getByRole('img', { name: /Gate 1: Between the gardens/ })).toBeVisible()
    await item
      .getByRole('link', { name: /gate post/ })
      .first()
      .focus()
    await page.keyboard.press('Enter')
    await expectPage(page.getByRole('heading', { level: 1, name: /^Build-up of / })).toBeVisible()
  })
})

test('fingers that part zoom, as fingers do on a phone', async () => {
  const context = await openPhone(browser)
  const page = await context.newPage()
  await openExample(page)
  const frame = frameOn(page)
  await expectPage(page.getByRole('button', { name: 'Zoom in' })).toBeVisible()
  await frame.scrollIntoViewIfNeeded()
  const before = await width(sheetOf(frame))
  const box = await frame.boundingBox()
  if (box === null) throw new Error('no frame')
  const session = await context.newCDPSession(page)
  const [x, y] = [box.x + box.width / 2, Math.max(box.y, 0) + 150]
  const fingers = (apart: number) => [
    { x: x - apart, y },
    { x: x + apart, y },
  ]
  await session.send('Input.dispatchTouchEvent', { type: 'touchStart', touchPoints: fingers(20) })
  for (const apart of [30, 40, 50])
    await session.send('Input.dispatchTouchEvent', { type: 'touchMove', touchPoints: fingers(apart) })
  await session.send('Input.dispatchTouchEvent', { type: 'touchEnd', touchPoints: [] })
  await expectPage.poll(() => width(sheetOf(frame))).toBeGreaterThan(before * 2)
  await context.close()
})

test('without script the drawing is there, and its parts open', async () => {
  const context = await openLaptop(browser)
  const first = await context.newPage()
  const home = await openExample(first)
  const plain = await browser.newContext({
    javaScriptEnabled: false,
    storageState: await context.storageState(),
    viewport: { width: 1280, height: 900 },
  })
  const page = await plain.newPage()
  await page.goto(home)
  await expectPage(frameOn(page).getByRole('img')).toBeVisible()
  await expectPage(page.getByRole('button', { name: 'Zoom in' })).toHaveCount(0)
  await frameOn(page)
    .getByRole('link', { name: /^Gate 2/ })
    .focus()
  await page.keyboard.press('Enter')
  const look = page.getByRole('region', { name: 'Gate 2: Compost gate' })
  await expectPage(look.getByText('Passages a week')).toBeVisible()
  await expectPage(page.locator('.look:visible')).toHaveCount(1)
  await look.getByRole('link', { name: /^Open it/ }).click()
  await expectPage(page.getByRole('heading', { level: 1, name: /Compost gate/ })).toBeVisible()
  await plain.close()
  await context.close()
})
