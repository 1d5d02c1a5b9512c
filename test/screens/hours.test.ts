import type { Browser } from '@playwright/test'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { openBrowser } from './browser.ts'
import { expectPage } from './expectPage.ts'
import { shortNotebook } from './shortNotebook.ts'
import { type Neighbours, neighboursWith } from './twoHouseholds.ts'
import { choose, faultAt, field, put, save, tick, trySaving } from './typing.ts'
import { panel } from './visiting.ts'

let browser: Browser
let neighbours: Neighbours
beforeAll(async () => {
  browser = await openBrowser()
  neighbours = await neighboursWith(browser, shortNotebook)
})
afterAll(async () => {
  await browser?.close()
})

const rates = 'Rates, tolerance and instalments'

test('one household begins rates against a local quote, and both mark them', async () => {
  const { a, b } = neighbours
  await a.page.goto(`${a.home}/arrangements`)
  await a.page.getByRole('button', { name: 'Agree on rates, tolerance and instalments' }).click()
  await put(a.page, 'arrangements.rates.plain.rate', '22')
  await put(a.page, 'arrangements.rates.plain.quote', '27.50')
  await put(a.page, 'arrangements.rates.plain.quoteFrom', 'a builder, by phone')
  await put(a.page, 'arrangements.tolerance', '110')
  await trySaving(a.page, 'Save what is agreed')
  await expectPage(faultAt(a.page, 'arrangements.tolerance')).toContainText('between 0 and 100')
  await put(a.page, 'arrangements.tolerance', '10')
  await save(a.page, 'Save what is agreed')
  await expectPage(panel(a.page, 'Where this stands')).toContainText('20 percent below the quote')

  await b.page.goto(`${b.home}/sign`)
  await b.page.getByRole('link', { name: 'Money and hours agreed' }).first().click()
  await expectPage(b.page.getByRole('heading', { level: 1, name: rates })).toBeVisible()
  await b.page.getByRole('button', { name: 'Agree to this as it stands' }).click()
  await expectPage(panel(b.page, 'Where this stands')).toContainText('Agreed by Bank Cottage alone')
})

test('instalments that fall short are refused, and what was typed stays', async () => {
  const { page, home } = neighbours.a
  await page.goto(`${home}/arrangements`)
  await page.getByRole('button', { name: 'One household pays in instalments' }).click()
  await choose(page, 'arrangements.instalments.from', 'b')
  await put(page, 'arrangements.instalments.total', '100.00')
  await put(page, 'arrangements.instalments.parts[0].on', '2027-05-01')
  await put(page, 'arrangements.instalments.parts[0].amount', '60.00')
  await trySaving(page, 'Save what is agreed')
  await expectPage(faultAt(page, 'arrangements.instalments.total')).toContainText('40.00 less than the total')
  await put(page, 'arrangements.instalments.parts[0].amount', '100.00')
  await trySaving(page, 'Save what is agreed')
  // Asked of Bank Cottage: 150.00, 100.00, 125.00 and 50.00, less the 100.00 that its own five hours are worth.
  await expectPage(faultAt(page, 'totalIsMeant')).toContainText('brings $325.00 in money, $225.00 more')
  await tick(page, 'totalIsMeant', true)
  await save(page, 'Save what is agreed')
})

test('the kind of work fills in the agreed rate where none is typed, and another rate is shown as such', async () => {
  const { page, home } = neighbours.a
  await page.goto(`${home}/item/s1`)
  await choose(page, 'labour[0].skill', 'plain')
  await expectPage(field(page, 'labour[0].rate')).toHaveValue('20.00')
  await expectPage(page.locator('#field-labour')).toContainText(
    'This is not the agreed $22.00 for plain work.',
  )
  await put(page, 'labour[0].rate', '')
  await choose(page, 'labour[0].skill', '')
  await choose(page, 'labour[0].skill', 'plain')
  await expectPage(field(page, 'labour[0].rate')).toHaveValue('22')
  await put(page, 'labour[0].ceiling', '12')
  await save(page, 'Save this section')
})

test('hours beyond the ceiling are asked about, and entered as the worker’s own', async () => {
  const { page, home } = neighbours.a
  await page.goto(`${home}/money`)
  await choose(page, 'kind', 'hours')
  await choose(page, 'for', 's1')
  // On none of its tasks the agreed rate for plain work stands in, and the form says where it comes from.
  await expectPage(field(page, 'rate')).toHaveValue('22')
  await expectPage(page.getByText('an hour for plain work')).toBeVisible()
  await choose(page, 'task', 'set the posts')
  await expectPage(field(page, 'rate')).toHaveValue('22')
  await put(page, 'hours', '14')
  await trySaving(page, 'Enter it')
  await expectPage(faultAt(page, 'ownIsOurs')).toContainText('Of these 14 h, 2 h lie beyond the ceiling')
  await tick(page, 'ownIsOurs', true)
  await trySaving(page, 'Enter it')
  await expectPage(panel(page, 'The book')).toContainText(
    '14 h at $22.00 an hour, 2 h of them the worker’s own',
  )
  await expectPage(panel(page, 'The book')).toContainText('$264.00')
})

test('hours become money once the other household marks it', async () => {
  const { a, b } = neighbours
  await b.page.goto(`${b.home}/work`)
  const form = b.page.locator('#conversions form')
  await b.page.locator('#conversion-item').isVisible()
  await form.locator('input[type=radio][value="s1"]').check()
  await put(b.page, 'hours', '5.5', 'conversion')
  await expectPage(field(b.page, 'rate', 'conversion')).toHaveValue('22')
  await trySaving(b.page, 'Ask for it')
  await expectPage(faultAt(b.page, 'hours', 'conversion')).toContainText('Bank Cottage has 5 h still to give')
  await put(b.page, 'hours', '5', 'conversion')
  await trySaving(b.page, 'Ask for it')
  await expectPage(panel(b.page, /^Money instead of hours/)).toContainText('Waits for Heron House')

  await a.page.goto(`${a.home}/work`)
  await a.page.getByRole('button', { name: 'Agree to this' }).click()
  const conversions = panel(a.page, /^Money instead of hours/)
  await expectPage(conversions).toContainText('Agreed by both')
  await expectPage(conversions).toContainText('Bank Cottage brings $110.00 more in money')
  const rows = await panel(a.page, 'Hours by household and task')
    .locator('table')
    .first()
    .locator('tbody tr')
    .allTextContents()
  // Bank Cottage: 5 + 2.5 h asked, 2.5 still to give, 5 turned into money.
  expect(rows[1]).toContain('7.500.002.500.00−5.000.000.00')
})
