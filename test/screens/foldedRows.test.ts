import type { Browser } from '@playwright/test'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { openBrowser } from './browser.ts'
import { expectPage } from './expectPage.ts'
import { shortNotebook } from './shortNotebook.ts'
import { type Neighbours, neighboursWith } from './twoHouseholds.ts'
import { faultAt, field, put, save, trySaving } from './typing.ts'
import { exported } from './visiting.ts'
import { wrongWith } from './wrongWith.ts'

let browser: Browser
let neighbours: Neighbours

const checks = [
  { what: 'Permit office', who: 'a', on: '2027-02-03', answer: 'None needed up to 6 ft.', done: true },
  { what: 'Buried services', who: 'b' },
]

beforeAll(async () => {
  browser = await openBrowser()
  neighbours = await neighboursWith(browser, { ...shortNotebook, checks })
})
afterAll(async () => {
  await neighbours?.close()
  await browser?.close()
})

describe('a list of rows on a phone', () => {
  test('is read first, and a row is opened to be changed', async () => {
    const { page, home } = neighbours.b
    await page.goto(`${home}/item/s1`)
    const row = field(page, 'materials').locator('li.row').first()
    await expectPage(row.locator('.row-reading')).toHaveText('60 ft at 5.00 USD, bought')
    await expectPage(field(page, 'materials[0].quantity')).toBeHidden()
    expect(await wrongWith(page)).toEqual([])

    // The name of what opens it says which row it means.
    await row.getByText('Change “mesh”').click()
    await expectPage(field(page, 'materials[0].quantity')).toBeVisible()
    await expectPage(row.locator('.row-reading')).toHaveCount(0)
    await put(page, 'materials[0].unitPrice', '6.00')
    await row.getByText('Fold away “mesh”').click()
    await expectPage(row.locator('.row-reading')).toHaveText('60 ft at 6.00 USD, bought')
    await save(page, 'Save this section')
    expect(
      JSON.parse((await exported(neighbours.b)).toString('utf8')).sections[0].materials[0],
    ).toMatchObject({
      unitPrice: '6.00',
    })
  })

  test('takes hours in halves, read back with a point, by Enter too', async () => {
    const { page } = neighbours.b
    const hours = field(page, 'labour[0].hours')
    await put(page, 'labour[0].hours', '7 ½')
    await hours.press('Tab')
    await expectPage(hours).toHaveValue('7.5')
    await put(page, 'labour[0].hours', '12 1/2')
    await hours.press('Enter')
    await expectPage(hours).toHaveValue('12.5')
    await expectPage(page.getByText('Saved.', { exact: true })).toBeVisible()
    expect(JSON.parse((await exported(neighbours.b)).toString('utf8')).sections[0].labour[0].hours).toBe(
      '12.5',
    )
  })

  test('shows a new row open, and one that is put back read', async () => {
    const { page } = neighbours.b
    await page.getByRole('button', { name: 'Add a cost line' }).click()
    await expectPage(field(page, 'materials[1].what')).toBeFocused()
    await page.getByRole('button', { name: 'Remove row 2' }).click()
    await page.getByRole('button', { name: 'Remove “mesh”' }).click()
    await page.getByRole('button', { name: 'Put it back' }).click()
    await expectPage(field(page, 'materials').locator('.row-fold > summary').first()).toBeFocused()
    await page.keyboard.press('Enter')
    await expectPage(field(page, 'materials[0].what')).toBeVisible()
    await page.reload()
  })

  test('opens a row in which something is refused, and leads to the field', async () => {
    const { page } = neighbours.b
    await put(page, 'materials[0].quantity', 'sixty')
    await field(page, 'materials').getByText('Fold away “mesh”').click()
    await trySaving(page, 'Save this section')
    await expectPage(faultAt(page, 'materials[0].quantity')).toBeVisible()
    await field(page, 'materials').getByText('Fold away “mesh”').click()
    await page.locator('.summary-faults').getByRole('link').click()
    await expectPage(field(page, 'materials[0].quantity')).toBeFocused()
    await expectPage(field(page, 'materials[0].quantity')).toHaveValue('sixty')
    await page.evaluate(() => localStorage.clear())
    await page.reload()
  })

  test('keeps what is ticked most often in reach', async () => {
    const { page, home } = neighbours.b
    await page.goto(`${home}/ask-first`)
    const rows = field(page, 'checks').locator('li.row')
    await expectPage(rows.nth(0).locator('.row-reading')).toHaveText(
      'Heron House, 3 February 2027 None needed up to 6 ft.',
    )
    await rows.nth(1).getByLabel('Answered and done').check()
    await save(page, 'Save the checks')
    await expectPage(page.locator('.lead')).toContainText('Nothing is open.')
  })
})
