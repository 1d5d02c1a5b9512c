import type { Browser, Page } from '@playwright/test'
import { afterAll, beforeAll, beforeEach, describe, expect, test } from 'vitest'
import { openBrowser } from './browser.ts'
import { expectPage } from './expectPage.ts'
import { shortNotebook } from './shortNotebook.ts'
import { hearsNothing, type Neighbours, neighboursWith } from './twoHouseholds.ts'
import { field, formOf, put, save, trySaving } from './typing.ts'
import { exported, panel } from './visiting.ts'

let browser: Browser
let neighbours: Neighbours

beforeAll(async () => {
  browser = await openBrowser()
})
afterAll(async () => {
  await browser?.close()
})
beforeEach(async () => {
  neighbours = await neighboursWith(browser, shortNotebook)
  return () => neighbours.close()
})

const waits =
  'Not sent yet: there is no connection. It waits in this browser and is sent when the connection is back.'
const restored = (page: Page) => page.locator('.restored-draft')
const standing = (page: Page, button: string) => formOf(page, button).locator('.save-standing')
const document = async () =>
  JSON.parse((await exported(neighbours.a)).toString('utf8')) as {
    sections: Record<string, unknown>[]
    contributions: Record<string, unknown>[]
  }

/** Lets whatever the page sends arrive, and loses each answer, as a connection that breaks at the wrong moment does. */
async function loseAnswers(page: Page): Promise<void> {
  await page.route('**/*', async (route) => {
    if (route.request().method() !== 'POST') return route.continue()
    await route.fetch()
    await route.abort('connectionreset')
  })
}

describe('on a phone without a connection', () => {
  test('a change is sent by itself once the connection is back', async () => {
    const { page, home } = neighbours.b
    await page.goto(`${home}/item/s1`)
    await put(page, 'notes', 'Written in the garden.')
    await page.context().setOffline(true)
    await trySaving(page, 'Save this section')
    await expectPage(standing(page, 'Save this section')).toHaveText(waits)
    await expectPage(field(page, 'notes')).toHaveValue('Written in the garden.')

    await page.context().setOffline(false)
    await expectPage(standing(page, 'Save this section')).toHaveText('Saved.')
    expect((await document()).sections[0]?.notes).toBe('Written in the garden.')
  })

  test('an entry in the book is entered once, by itself, when the connection is back', async () => {
    const { page, home } = neighbours.b
    await page.goto(`${home}/money`)
    await put(page, 'amount', '31.00')
    await put(page, 'note', 'hinges')
    await page.context().setOffline(true)
    await trySaving(page, 'Enter it')
    await expectPage(standing(page, 'Enter it')).toHaveText(waits)

    await page.context().setOffline(false)
    await expectPage(panel(page, 'The book').locator('.book-entry')).toHaveCount(2)
    await expectPage(field(page, 'note')).toHaveValue('')
    expect((await document()).contributions.filter(({ note }) => note === 'hinges')).toHaveLength(1)
  })

  test('an entry whose answer alone was lost is not entered a second time', async () => {
    const { page, home } = neighbours.b
    await page.goto(`${home}/money`)
    await put(page, 'amount', '31.00')
    await put(page, 'note', 'hinges')
    await loseAnswers(page)
    await trySaving(page, 'Enter it')
    await expectPage(standing(page, 'Enter it')).toHaveText(waits)
    expect((await document()).contributions).toHaveLength(2)

    await page.unrouteAll()
    await page.evaluate(() => window.dispatchEvent(new Event('online')))
    await expectPage(panel(page, 'The book').locator('.book-entry')).toHaveCount(2)
    await expectPage(field(page, 'note')).toHaveValue('')
    expect((await document()).contributions).toHaveLength(2)
  })

  test('a change whose answer alone was lost is no conflict with itself', async () => {
    const { page, home } = neighbours.b
    await hearsNothing(page)
    await page.goto(`${home}/item/s1`)
    await put(page, 'infill', 'boards')
    await loseAnswers(page)
    await trySaving(page, 'Save this section')
    await expectPage(standing(page, 'Save this section')).toHaveText(waits)
    expect((await document()).sections[0]?.infill).toBe('boards')

    await page.unrouteAll()
    await page.evaluate(() => window.dispatchEvent(new Event('online')))
    await expectPage(standing(page, 'Save this section')).toHaveText('Saved.')
    await expectPage(page.locator('.summary-conflict')).toHaveCount(0)
  })
})

describe('what was typed and not saved', () => {
  test('stands in the form again when the page is opened anew, and can be put back and brought back', async () => {
    const { page, home } = neighbours.b
    await page.goto(`${home}/item/s1`)
    await put(page, 'notes', 'Half a sentence')
    await page.reload()
    await expectPage(restored(page)).toContainText(
      /What you typed on .+ was not saved yet: it stands below\./,
    )
    await expectPage(field(page, 'notes')).toHaveValue('Half a sentence')

    await page.getByRole('button', { name: 'Put back what is saved' }).click()
    await expectPage(field(page, 'notes')).toHaveValue('')
    await page.getByRole('button', { name: 'Bring back what I typed' }).click()
    await expectPage(field(page, 'notes')).toHaveValue('Half a sentence')
    await save(page, 'Save this section')
    await page.reload()
    await expectPage(field(page, 'notes')).toHaveValue('Half a sentence')
    await expectPage(restored(page)).toHaveCount(0)
  })

  test('outlives a browser that is closed without a connection', async () => {
    const { page, home } = neighbours.b
    const context = page.context()
    await page.goto(`${home}/money`)
    await put(page, 'amount', '44.00')
    await context.setOffline(true)
    await trySaving(page, 'Enter it')
    await expectPage(standing(page, 'Enter it')).toHaveText(waits)
    await page.close()

    await context.setOffline(false)
    const later = await context.newPage()
    await later.goto(`${home}/money`)
    await expectPage(restored(later)).toContainText('It had been sent, but no answer came.')
    await expectPage(field(later, 'amount')).toHaveValue('44.00')
    await trySaving(later, 'Enter it')
    await expectPage(panel(later, 'The book').locator('.book-entry')).toHaveCount(2)
    await expectPage(restored(later)).toHaveCount(0)
  })

  test('stands together with what the other household saved since', async () => {
    const { a, b } = neighbours
    await b.page.goto(`${b.home}/item/s1`)
    await put(b.page, 'notes', 'Half a sentence')
    await b.page.goto('about:blank')
    await a.page.goto(`${a.home}/item/s1`)
    await put(a.page, 'infill', 'sheep wire')
    await save(a.page, 'Save this section')

    await b.page.goto(`${b.home}/item/s1`)
    await expectPage(field(b.page, 'infill')).toHaveValue('sheep wire')
    await expectPage(field(b.page, 'notes')).toHaveValue('Half a sentence')
    await save(b.page, 'Save this section')
    expect((await document()).sections[0]).toMatchObject({ infill: 'sheep wire', notes: 'Half a sentence' })
  })
})

describe('saving as it is typed', () => {
  test('is off until it is switched on, and then says when it saved', async () => {
    const { page, home } = neighbours.b
    await page.goto(`${home}/item/s1`)
    await expectPage(page.getByRole('checkbox', { name: 'Save as I type' })).not.toBeChecked()
    await page.getByRole('checkbox', { name: 'Save as I type' }).check()
    await put(page, 'notes', 'Saved by itself.')
    await expectPage(standing(page, 'Save this section')).toHaveText(/^Saved at \d\d:\d\d\.$/)
    expect((await document()).sections[0]?.notes).toBe('Saved by itself.')

    await page.goto(`${home}/line`)
    await expectPage(page.getByRole('checkbox', { name: 'Save as I type' })).toBeChecked()
  })

  test('says what is to be mended without taking anybody away from the field', async () => {
    const { page, home } = neighbours.b
    await page.goto(`${home}/item/s1`)
    await page.getByRole('checkbox', { name: 'Save as I type' }).check()
    await field(page, 'from').focus()
    await put(page, 'from', '12')
    await expectPage(standing(page, 'Save this section')).toHaveText('Not saved yet: one thing to mend.')
    await expectPage(field(page, 'from')).toBeFocused()
    await expectPage(page.locator('.summary-faults')).toHaveCount(0)
    await put(page, 'from', '12 in')
    await expectPage(standing(page, 'Save this section')).toHaveText(/^Saved at \d\d:\d\d\.$/)
  })
})
