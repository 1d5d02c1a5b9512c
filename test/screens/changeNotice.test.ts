import type { Browser, Page } from '@playwright/test'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { openBrowser } from './browser.ts'
import { expectPage } from './expectPage.ts'
import { covers, inSight, placeOf } from './places.ts'
import { shortNotebook } from './shortNotebook.ts'
import { hearsNothing, homeOf, keepPrivateLink, makeInvitation, startedAlone } from './twoHouseholds.ts'
import { field, formOf, put, save, trySaving } from './typing.ts'
import { panel } from './visiting.ts'
import { wrongWith } from './wrongWith.ts'

// Household a at a laptop, household b at a phone; where b looks at a page at the width of a laptop, its window is widened.
// Each test goes on where the one before it stopped.
let browser: Browser
let a: Page
let b: Page
let home: string

const widths = [
  ['a phone', { width: 390, height: 844 }],
  ['a laptop', { width: 1280, height: 900 }],
] as const

let close = async () => {}

beforeAll(async () => {
  browser = await openBrowser()
  ;({ a, b, home, close } = await startedAlone(browser, shortNotebook))
})
afterAll(async () => {
  await close()
  await browser?.close()
})

/** Looks at the page at both widths, in both schemes, and gives what is wrong. */
async function wrongAtBoth(page: Page): Promise<string[]> {
  const wrong: string[] = []
  for (const [name, size] of widths) {
    await page.setViewportSize(size)
    wrong.push(...(await wrongWith(page)).map((one) => `on ${name}: ${one}`))
  }
  return wrong
}

/** How far below a button its answer begins, in pixels. */
async function answerBelow(page: Page, button: string, says: RegExp): Promise<number> {
  const form = page.locator('form.press-form', { has: page.getByRole('button', { name: button }) })
  const answer = form.locator('.press-answer')
  await expectPage(answer).toHaveText(says)
  return (await placeOf(answer)).top - (await placeOf(form.getByRole('button', { name: button }))).bottom
}

describe('a button that is not the next step', () => {
  test('on Links makes another invitation, and says that the first ends', async () => {
    await a.goto(`${home}/links`)
    const first = await makeInvitation(a)
    await hearsNothing(a)
    await a.reload()
    await expectPage(panel(a, 'The second household')).toContainText('Making a new one ends it.')
    const another = a.getByRole('button', { name: 'Make another; the first ends' })
    await expectPage(another).toHaveCSS('border-top-style', 'solid')
    expect(await wrongAtBoth(a)).toEqual([])
    await another.click()
    await expectPage(a.getByRole('textbox', { name: 'Invitation, works once' })).not.toHaveValue(first)

    await b.goto(first)
    await expectPage(b.getByRole('button', { name: /^Come in as / })).toHaveCount(0)
    await b.goto(await a.getByRole('textbox', { name: 'Invitation, works once' }).inputValue())
    await b.getByRole('button', { name: /^Come in as / }).click()
    await keepPrivateLink(b)
    await another.click()
    const below = await answerBelow(a, 'Make another; the first ends', /come in/)
    expect(below).toBeGreaterThanOrEqual(0)
    expect(below).toBeLessThan(30)
    expect(await wrongAtBoth(a)).toEqual([])
    await a.unroute('**/live?*')
  })

  test('on Sign says beside it what stands in the way, once for all that waits for the same', async () => {
    await b.goto(`${homeOf(b)}/sign`)
    const putUp = b.getByRole('button', { name: 'Put revision 1 up for signing' })
    await expectPage(putUp).toHaveCSS('border-top-style', 'solid')
    await putUp.click()
    const below = await answerBelow(b, 'Put revision 1 up for signing', /Along the bank; Willow gate; /)
    expect(below).toBeGreaterThanOrEqual(0)
    expect(below).toBeLessThan(30)
    expect(await b.locator('.press-answer', { hasText: 'not marked as agreed by' }).textContent()).toMatch(
      /^[^:]*: not marked as agreed by Heron House and Bank Cottage\.$/,
    )
    expect(await wrongAtBoth(b)).toEqual([])
  })
})

const notice = () => b.locator('.stay-current')
const section = () => formOf(b, 'Save this section')

/** Household b types at the top of its window, and household a saves something else of the same section. */
async function changedWhileTyping(drainage: string): Promise<void> {
  await b.goto(`${homeOf(b)}/item/s1`)
  await put(b, 'notes', 'half a sentence')
  await field(b, 'notes').evaluate((box) => box.scrollIntoView({ block: 'start' }))
  await a.goto(`${home}/item/s1`)
  await put(a, 'drainage', drainage)
  await save(a, 'Save this section')
  await expectPage(notice()).toHaveAttribute('data-told', 'behind')
}

describe('what the other household has changed meanwhile is told on a page that is being filled in', () => {
  test.each(widths)('in sight wherever one is, and over nothing that one needs: %s', async (_, size) => {
    await b.setViewportSize(size)
    await changedWhileTyping(`toward the willow, ${size.width}`)
    const told = await placeOf(notice())
    expect(told.top).toBe(0)
    await expectPage(field(b, 'notes')).toBeFocused()
    expect(covers(told, await placeOf(field(b, 'notes')))).toBe(false)
    expect(covers(told, await placeOf(section().locator('.save-bar')))).toBe(false)
    expect(await wrongWith(b)).toEqual([])
    // Up through the fields by keyboard: each comes to stand below the notice, with its label.
    for (let step = 0; step < 8; step += 1) {
      await b.keyboard.press('Shift+Tab')
      const focused = await placeOf(b.locator(':focus'))
      expect(covers(await placeOf(notice()), focused)).toBe(false)
      expect(covers(await placeOf(section().locator('.save-bar')), focused)).toBe(false)
    }
    await b.mouse.wheel(0, 900)
    await expectPage.poll(async () => (await placeOf(notice())).top).toBe(0)
  })

  test('makes room for a refusal, and has nothing left to tell once that is mended and saved', async () => {
    await put(b, 'height.agreed', 'as high as a horse')
    await trySaving(b, 'Save this section')
    await expectPage(b.locator('.summary-faults')).toBeFocused()
    expect(covers(await placeOf(notice()), await placeOf(b.locator('.summary-faults')))).toBe(false)
    await put(b, 'height.agreed', '5 ft')
    await save(b, 'Save this section')
    await expectPage(field(b, 'drainage')).toHaveValue('toward the willow, 1280')
    await expectPage(notice()).toHaveAttribute('data-told', 'nothing')
  })

  test('is put away with Escape, which leaves the focus and what was typed where they are', async () => {
    await changedWhileTyping('toward the bank')
    await b.keyboard.press('Escape')
    await expectPage(notice()).toHaveAttribute('data-told', 'nothing')
    await expectPage(field(b, 'notes')).toBeFocused()
    await expectPage(field(b, 'notes')).toHaveValue('half a sentence')
  })

  test('is followed by keyboard, put away by touch, and gives the focus back', async () => {
    await changedWhileTyping('toward the lane')
    await notice().getByRole('button', { name: 'Show it now' }).focus()
    await b.keyboard.press('Enter')
    await expectPage(field(b, 'notes')).toBeFocused()
    await expectPage(field(b, 'notes')).toHaveValue('half a sentence')
    await expectPage(notice()).toHaveAttribute('data-told', 'nothing')

    await b.setViewportSize(widths[0][1])
    await changedWhileTyping('toward the field')
    await notice().getByRole('button', { name: 'Put away' }).tap()
    await expectPage(notice()).toHaveAttribute('data-told', 'nothing')
  })
})

describe('what both have changed is chosen side by side', () => {
  const conflict = () => b.locator('.summary-conflict')
  const theirs = () => conflict().getByRole('radio', { name: /^Theirs/ })
  const mine = () => conflict().getByRole('radio', { name: /^Yours/ })

  /** Both change the drainage, a first. */
  async function savedTwice(one: string, other: string): Promise<void> {
    await b.goto(`${homeOf(b)}/item/s1`)
    await put(b, 'drainage', other)
    await a.goto(`${home}/item/s1`)
    await put(a, 'drainage', one)
    await save(a, 'Save this section')
    await expectPage(notice()).toHaveAttribute('data-told', 'behind')
    await trySaving(b, 'Save this section')
    await expectPage(conflict()).toBeFocused()
  }

  test('with room on a phone for both, the buttons, and a plain Save in the bar', async () => {
    await savedTwice('toward the oak', 'toward the brook')
    const [bar, box] = [section().locator('.save-bar'), conflict()]
    expect(covers(await placeOf(notice()), await placeOf(box))).toBe(false)
    expect(covers(await placeOf(bar), await placeOf(box))).toBe(false)
    expect(await inSight(b, box)).toBe(true)
    expect((await placeOf(mine())).top).toBeGreaterThan((await placeOf(theirs())).bottom)
    await expectPage(bar.getByRole('button')).toHaveClass(/button-plain/)
    await expectPage(box.getByRole('button', { name: 'Save as chosen' })).toHaveClass(/button-main/)
  })

  test('unchosen, it says so above the choice, at both widths', async () => {
    await conflict().getByRole('button', { name: 'Save as chosen' }).click()
    await expectPage(theirs()).toBeFocused()
    await expectPage(conflict().locator('.field-error')).toContainText('Choose one of the two.')
    expect(await wrongAtBoth(b)).toEqual([])
    const [left, right] = [await placeOf(theirs()), await placeOf(mine())]
    expect(left.top).toBe(right.top)
    expect(right.left).toBeGreaterThan(left.right)
  })

  test('either can be kept', async () => {
    await mine().check()
    await conflict().getByRole('button', { name: 'Save as chosen' }).click()
    await expectPage(conflict()).toHaveCount(0)
    await a.goto(`${home}/item/s1`)
    await expectPage(field(a, 'drainage')).toHaveValue('toward the brook')

    await savedTwice('toward the ash', 'toward the pond')
    await conflict().getByRole('button', { name: 'Keep what they saved' }).click()
    await expectPage(field(b, 'drainage')).toHaveValue('toward the ash')
    await expectPage(conflict()).toHaveCount(0)
  })
})
