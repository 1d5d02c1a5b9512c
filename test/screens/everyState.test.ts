import type { Browser, Locator, Page } from '@playwright/test'
import { afterAll, beforeAll, describe, expect, inject, test } from 'vitest'
import { agreeToAll, putUp, sign } from './agreeing.ts'
import { openBrowser } from './browser.ts'
import { examplePages, openExample } from './examplePages.ts'
import { expectPage } from './expectPage.ts'
import { shortNotebook } from './shortNotebook.ts'
import { homeOf, keepPrivateLink, type Neighbours, neighboursWith } from './twoHouseholds.ts'
import { formOf, put, save, trySaving } from './typing.ts'
import { lookAt, lookAtAll, wrongWith } from './wrongWith.ts'

// Every state that a page can be in is looked at, at 320 px, in light and dark: empty, refused, agreed, changed since, signed,
// without a connection. The filled state is that of the example, in looks.test.ts.

let browser: Browser

beforeAll(async () => {
  browser = await openBrowser()
})
afterAll(async () => {
  await browser?.close()
})

const narrow = { width: 320, height: 700 }

async function openNarrow(): Promise<Page> {
  const context = await browser.newContext({ viewport: narrow, reducedMotion: 'reduce' })
  context.setDefaultTimeout(15_000)
  return context.newPage()
}

test('every page of a notebook that holds nothing yet', { timeout: 600_000 }, async () => {
  const page = await openNarrow()
  await page.goto(`${inject('baseUrl')}/start`)
  await put(page, 'households.a.name', 'Heron House')
  await put(page, 'households.b.name', 'Bank Cottage')
  await page.getByRole('button', { name: 'Start the notebook' }).click()
  await keepPrivateLink(page)
  const { pages, wrong } = await lookAtAll(page, homeOf(page))

  expect(wrong).toEqual([])
  expect(pages).toBeGreaterThan(20)
  await page.context().close()
})

// A day is chosen, not typed: what is left in its field is always one.
const typed = 'input.figure:not([type=date])'

/** Opens every form of every page with fields for figures, types nonsense into them, presses its button, and looks. */
async function refuseEvery(
  page: Page,
  look: (form: Locator, place: string) => Promise<void>,
): Promise<number> {
  const home = await openExample(page.context(), inject('baseUrl'))
  const refused = new Set<string>()
  for (const place of examplePages) {
    await page.goto(home + place)
    const forms = page.locator('form.draft-form', { has: page.locator(typed) })
    for (let at = 0; at < (await forms.count()); at += 1) {
      const form = forms.nth(at)
      await expectPage(form.locator('.save-bar button[type=submit]')).toBeEnabled()
      await page.evaluate(() => {
        for (const fold of document.querySelectorAll('details')) fold.open = true
      })
      for (const figure of await form.locator(`${typed}:visible`).all()) await figure.fill('?!')
      await form.locator('.save-bar button[type=submit]').click()
      await expectPage(form.locator('.summary-faults')).toBeFocused()
      refused.add(place)
      await look(form, place)
      await page.reload()
    }
  }
  return refused.size
}

/** On a laptop: the first fault leads to its field, which is marked, and what was typed stands everywhere. */
async function expectLed(page: Page, form: Locator, place: string): Promise<void> {
  await page.setViewportSize({ width: 1280, height: 900 })
  const faults = form.locator('.summary-faults a')
  expect(await faults.count(), place).toBeGreaterThan(0)
  const field = (await faults.first().getAttribute('href')) ?? ''
  await faults.first().press('Enter')
  const target = page.locator(`[id="${field.slice(1)}"]`)
  await expectPage(target).toBeFocused()
  await expectPage(target).toHaveAttribute('aria-invalid', 'true')
  for (const figure of await form.locator(`${typed}:visible`).all())
    expect(await figure.inputValue()).toBe('?!')
  await page.setViewportSize(narrow)
}

test('every form with figures or lengths in it, refused, and on a laptop led on from there', {
  timeout: 600_000,
}, async () => {
  const page = await openNarrow()
  const wrong: string[] = []
  const forms = await refuseEvery(page, async (form, place) => {
    wrong.push(...(await wrongWith(page)).map((one) => `${place}: ${one}`))
    await expectLed(page, form, place)
  })

  expect(wrong).toEqual([])
  expect(forms).toBeGreaterThan(12)
  await page.context().close()
})

describe('a notebook of two', () => {
  let neighbours: Neighbours

  beforeAll(async () => {
    neighbours = await neighboursWith(browser, shortNotebook)
    for (const { page } of [neighbours.a, neighbours.b]) await page.setViewportSize(narrow)
    return () => neighbours.close()
  })

  const marked = ['', '/item/s1', '/shares', '/sign']

  async function wrongOn(places: readonly string[]): Promise<string[]> {
    const wrong: string[] = []
    for (const { page, home } of [neighbours.a, neighbours.b]) {
      for (const place of places)
        wrong.push(...(await lookAt(page, home + place)).map((one) => `${place}: ${one}`))
    }
    return wrong
  }

  test('agreed by one household', async () => {
    await agreeToAll(neighbours.a)

    expect(await wrongOn(marked)).toEqual([])
  })

  test('agreed by both', async () => {
    await agreeToAll(neighbours.b)

    expect(await wrongOn(marked)).toEqual([])
  })

  test('changed since both agreed', async () => {
    const { page, home } = neighbours.b
    await page.goto(`${home}/item/s1`)
    await put(page, 'notes', 'The willow stays.')
    await save(page, 'Save this section')

    expect(await wrongOn([...marked, '/changes'])).toEqual([])
  })

  test('without a connection, with what was typed waiting', async () => {
    const { page, home } = neighbours.b
    await page.goto(`${home}/item/s1`)
    await put(page, 'notes', 'Written in the garden.')
    await page.context().setOffline(true)
    await trySaving(page, 'Save this section')
    await expectPage(formOf(page, 'Save this section').locator('.save-standing')).toContainText(
      'no connection',
    )
    expect(await wrongWith(page)).toEqual([])

    await page.context().setOffline(false)
    await expectPage(formOf(page, 'Save this section').locator('.save-standing')).toHaveText('Saved.')
    expect(await wrongWith(page)).toEqual([])
  })

  test('up for signing, and signed: every page', { timeout: 600_000 }, async () => {
    const { a, b } = neighbours
    await agreeToAll(a)
    await agreeToAll(b)
    await putUp(a, 1)
    expect(await wrongOn(['/sign', '/item/s1', '/paper', '/shares'])).toEqual([])
    await a.page.goto(`${a.home}/sign`)
    await sign(a.page, 'Petra Quillon')
    expect(await wrongOn(['/sign'])).toEqual([])
    await b.page.goto(`${b.home}/sign`)
    await sign(b.page, 'Emrys Vant')
    await expectPage(b.page.getByRole('heading', { name: 'Revision 1 is signed by all' })).toBeVisible()
    const { pages, wrong } = await lookAtAll(b.page, b.home)

    expect(wrong).toEqual([])
    expect(pages).toBeGreaterThan(24)
  })
})
