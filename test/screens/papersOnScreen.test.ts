import type { Browser, BrowserContext, Page } from '@playwright/test'
import { afterAll, beforeAll, describe, expect, inject, test } from 'vitest'
import { infoOf, plainTextOf, renderGrey } from '../pdf/pdfTools.ts'
import { openBrowser } from './browser.ts'
import { expectPage } from './expectPage.ts'
import { inSight, placeOf } from './places.ts'
import { shortNotebook } from './shortNotebook.ts'
import { chooseFile, homeOf, keepPrivateLink, openPhone } from './twoHouseholds.ts'
import { wrongWith } from './wrongWith.ts'

/** A letter with much to say. */
const letter = {
  wrong:
    'Three posts are rotten, the mesh is torn beside the willow, and the latch of the gate no longer closes.',
  proposed: 'A new fence of steel pipe and mesh, 60 ft long and 5 ft high, with one gate.',
  workFrom: '2027-05-03',
  workTo: '2027-05-30',
  answerTo: 'At our door, 3 Bank Road.',
  on: '2027-03-01',
  noticeDays: '30',
  saidBy: 'the town clerk, by phone',
}

let browser: Browser
let phone: BrowserContext
let page: Page
let home: string

beforeAll(async () => {
  browser = await openBrowser()
  phone = await openPhone(browser)
  page = await phone.newPage()
  await page.goto(inject('baseUrl'))
  await chooseFile(page, JSON.stringify({ ...shortNotebook, letter }))
  await page.getByRole('button', { name: 'Start from this file' }).click()
  await keepPrivateLink(page)
  home = homeOf(page)
})
afterAll(async () => {
  await phone?.close()
  await browser?.close()
})

const phoneSize = { width: 390, height: 844 }
const laptopSize = { width: 1280, height: 900 }

describe('the first letter', () => {
  test('is in order on a phone and a laptop', async () => {
    await page.goto(`${home}/letter`)
    for (const size of [phoneSize, laptopSize]) {
      await page.setViewportSize(size)
      expect(await wrongWith(page)).toEqual([])
    }
  })

  test.each(['light', 'dark'] as const)(
    'printed from a browser that is %s, it is one sheet of dark words on white',
    async (colorScheme) => {
      await page.emulateMedia({ colorScheme })
      for (const format of ['A4', 'Letter']) {
        const pdf = await page.pdf({ format, preferCSSPageSize: true, printBackground: true })
        expect((await infoOf(pdf)).get('Pages')).toBe('1')
        const words = (await plainTextOf(pdf)).replace(/\s+/g, ' ')
        for (const said of Object.values({
          ...letter,
          workFrom: '3 May 2027',
          workTo: '30 May 2027',
          on: '1 March 2027',
        }))
          expect(words).toContain(said)
        expect(words.trim()).toMatch(/^The fence between us .* Petra Quillon, Heron House$/)
        const [sheet] = await renderGrey(pdf, 60)
        const levels = [...(sheet?.levels ?? [])]
        expect(levels.filter((level) => level > 250).length / levels.length).toBeGreaterThan(0.8)
        expect(levels.some((level) => level < 60)).toBe(true)
        expect(cutAtEdges(sheet)).toBe(false)
      }
      await page.emulateMedia({ colorScheme: 'light' })
    },
  )
})

/** Whether anything is printed in the outermost five hundredths of the sheet. */
function cutAtEdges(sheet: Awaited<ReturnType<typeof renderGrey>>[number] | undefined): boolean {
  if (sheet === undefined) return true
  const { width, height, levels } = sheet
  return levels.some((level, at) => {
    const [x, y] = [at % width, Math.floor(at / width)]
    const outermost = Math.min(x, width - 1 - x) < width * 0.05 || Math.min(y, height - 1 - y) < height * 0.05
    return outermost && level < 200
  })
}

describe('a page of the paper, shown larger', () => {
  const lens = () => page.locator('.paper-lens').first()
  const box = () => lens().getByRole('region', { name: /^Page 1 of / })
  const scrolled = () => box().evaluate(({ scrollLeft, scrollTop }) => ({ scrollLeft, scrollTop }))

  /** Where it stands once the keys have moved it all the way. */
  async function standingStill() {
    let before = await scrolled()
    for (;;) {
      await page.waitForTimeout(250)
      const now = await scrolled()
      if (now.scrollLeft === before.scrollLeft && now.scrollTop === before.scrollTop) return now
      before = now
    }
  }

  test('has letters that can be read on a phone, in a window no higher than the screen', async () => {
    await page.setViewportSize(phoneSize)
    await page.goto(`${home}/paper`)
    await lens().getByRole('button', { name: 'Show page 1 larger' }).tap()
    await expectPage(box()).toBeVisible()
    const smallest = await box()
      .locator('text')
      .evaluateAll((all) =>
        Math.min(
          ...all.map((text) => {
            const matrix = (text as SVGTextElement).getScreenCTM()
            return Number(text.getAttribute('font-size')) * Math.hypot(matrix?.a ?? 0, matrix?.b ?? 0)
          }),
        ),
      )
    expect(smallest).toBeGreaterThanOrEqual(12)
    const close = lens().getByRole('button', { name: 'Show page 1 whole again' })
    await expectPage(close).toBeFocused()
    expect(await inSight(page, close)).toBe(true)
    expect(await inSight(page, box())).toBe(true)
    expect(await wrongWith(page)).toEqual([])
  })

  test('is moved by keyboard, by mouse and by wheel', async () => {
    await box().focus()
    await page.keyboard.press('ArrowRight')
    await page.keyboard.press('ArrowDown')
    await expectPage.poll(async () => (await scrolled()).scrollLeft).toBeGreaterThan(0)
    await expectPage.poll(async () => (await scrolled()).scrollTop).toBeGreaterThan(0)
    const before = await standingStill()
    const { left, top } = await placeOf(box())
    await page.mouse.move(left + 250, top + 400)
    await page.mouse.down()
    await page.mouse.move(left + 130, top + 330, { steps: 4 })
    await page.mouse.up()
    const dragged = await scrolled()
    expect(dragged.scrollLeft - before.scrollLeft).toBe(120)
    expect(dragged.scrollTop - before.scrollTop).toBe(70)
    await page.mouse.wheel(0, 60)
    await expectPage.poll(async () => (await scrolled()).scrollTop).toBeGreaterThan(dragged.scrollTop)
  })

  test('is moved by a finger', async () => {
    const { left, top } = await placeOf(box())
    const before = await scrolled()
    const fingers = await phone.newCDPSession(page)
    const touch = (type: 'touchStart' | 'touchMove' | 'touchEnd', x: number, y: number) =>
      fingers.send('Input.dispatchTouchEvent', {
        type,
        touchPoints: type === 'touchEnd' ? [] : [{ x: left + x, y: top + y }],
      })
    await touch('touchStart', 200, 300)
    for (const by of [20, 40, 60, 80]) await touch('touchMove', 200 + by, 300)
    await touch('touchEnd', 0, 0)
    await expectPage.poll(async () => (await scrolled()).scrollLeft).toBeLessThan(before.scrollLeft)
    await fingers.detach()
  })

  test('is closed with Escape, and the focus is back at its button, in sight', async () => {
    await box().focus()
    await page.keyboard.press('Escape')
    const open = lens().getByRole('button', { name: 'Show page 1 larger' })
    await expectPage(open).toBeFocused()
    expect(await inSight(page, open)).toBe(true)
    await page.setViewportSize(laptopSize)
    await page.keyboard.press('Enter')
    await expectPage(box()).toBeVisible()
    expect(await inSight(page, box())).toBe(true)
    expect(await wrongWith(page)).toEqual([])
  })
})
