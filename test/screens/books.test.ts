import type { Browser } from '@playwright/test'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { openBrowser } from './browser.ts'
import { expectPage } from './expectPage.ts'
import { typeFields } from './itemTyping.ts'
import { shortNotebook } from './shortNotebook.ts'
import { statementPrinted } from './statementCommand.ts'
import { type Neighbours, neighboursWith } from './twoHouseholds.ts'
import { faultAt, field, put, trySaving } from './typing.ts'
import { type AtHome, exported, panel } from './visiting.ts'

// The short notebook: mesh 300.00, work 200.00, gate 250.01, work 100.00; in all 850.01. Everything below is worked by hand.
let browser: Browser
let neighbours: Neighbours
beforeAll(async () => {
  browser = await openBrowser()
  neighbours = await neighboursWith(browser, { ...shortNotebook, contributions: [] })
})
afterAll(async () => {
  await neighbours.close()
  await browser.close()
})

const mesh = 'Along the bank: mesh (planned $300.00)'
const gate = 'Willow gate: gate (planned $250.01)'

async function openBooks({ page, home }: AtHome) {
  await page.goto(`${home}/books`)
  await expectPage(page.getByRole('heading', { level: 1, name: 'The books' })).toBeVisible()
}

/** The row of a line on the page of the books. */
const lineRow = ({ page }: AtHome, item: string, line: string) =>
  panel(page, item).locator('li.book-entry', { has: page.getByText(line, { exact: true }) })

describe('two households keep the books', () => {
  test('a receipt is entered with its shop and lines; too much on its lines is refused with the excess', async () => {
    const { page, home } = neighbours.b
    await page.goto(`${home}/money`)
    await typeFields(page, '', {
      household: 'b',
      kind: 'cash',
      amount: '330.00',
      for: 's1',
      shop: 'the wire works',
    })
    await page.getByText('Which lines it was for').first().click()
    await field(page, 'lines').getByRole('button', { name: 'Add a line' }).click()
    await page.getByRole('radio', { name: mesh }).check()
    await put(page, 'lines[0].amount', '333.00')
    await trySaving(page, 'Enter it')
    await expectPage(faultAt(page, 'lines')).toContainText(
      'The lines add to 333.00, 3.00 more than the 330.00',
    )
    await put(page, 'lines[0].amount', '324.00')
    await expectPage(page.getByText('$6.00 is on no line: it is for the item as a whole.')).toBeVisible()
    await trySaving(page, 'Enter it')

    const entry = panel(page, 'The book').locator('.book-entry')
    await expectPage(entry).toContainText('At the wire works.')
    await expectPage(entry).toContainText('$324.00 for mesh, Along the bank')
  })

  test('the line counts at what it came to once both have marked it, and the statement follows', async () => {
    const { a, b } = neighbours
    expect((await statementPrinted(await exported(a))).asked.total).toBe('850.01')
    await openBooks(b)
    const loose = panel(b.page, 'Along the bank').getByText(/^On no line: \$6\.00 \(/)
    await expectPage(panel(b.page, 'Along the bank')).toContainText('take the entry back and enter it again')
    await expectPage(loose.getByRole('link', { name: 'To the entry' })).toHaveAttribute(
      'href',
      /\/money#book-entry-0$/,
    )
    const ofB = lineRow(b, 'Along the bank', 'mesh')
    await expectPage(ofB).toContainText('Planned $300.00. Actual $324.00: $24.00 more.')
    await ofB.getByRole('button', { name: 'Mark as bought, at $324.00' }).click()
    await expectPage(ofB).toContainText('You marked it; it waits for Heron House')
    expect((await statementPrinted(await exported(a))).asked.total).toBe('850.01')

    await openBooks(a)
    await expectPage(a.page.locator('.open-matters')).toContainText(
      'One figure in the books waits for your mark',
    )
    await expectPage(panel(a.page, 'Along the bank')).toContainText('Bank Cottage takes the entry back')
    const ofA = lineRow(a, 'Along the bank', 'mesh')
    await ofA.getByRole('button', { name: 'Mark as bought, at $324.00' }).click()
    await expectPage(ofA).toContainText('Marked as bought by both: the actual amount counts')

    const printed = await statementPrinted(await exported(a))
    expect(printed.asked.total).toBe('874.01')
    expect(printed.contributed).toEqual({ a: '0.00', b: '330.00' })
    await a.page.goto(`${a.home}/money`)
    await expectPage(panel(a.page, 'Where you stand')).toContainText('$874.01')
    await a.page.goto(`${a.home}/shares`)
    await expectPage(a.page.getByText('$850.01').first()).toBeVisible()
  })

  test('after money back for the line what both marked counts on, until both mark what it comes to now', async () => {
    const { a, b } = neighbours
    await b.page.goto(`${b.home}/money`)
    await typeFields(b.page, '', { household: 'b', kind: 'refund', amount: '10.00', for: 's1' })
    await b.page.getByText('Which lines it came back from').first().click()
    await field(b.page, 'lines').getByRole('button', { name: 'Add a line' }).click()
    await b.page.getByRole('radio', { name: mesh }).check()
    await put(b.page, 'lines[0].amount', '10.00')
    await trySaving(b.page, 'Enter it')
    await expectPage(panel(b.page, 'The book').locator('.book-entry')).toHaveCount(2)

    for (const household of [a, b]) {
      await openBooks(household)
      await expectPage(household.page.locator('.open-matters')).toContainText(
        'both marked $324.00; it has come to $314.00 since. $324.00 counts until both mark another amount',
      )
      const row = lineRow(household, 'Along the bank', 'mesh')
      await expectPage(row).toContainText('Both marked $324.00; it has come to $314.00 since')
      await expectPage(row.getByRole('button', { name: /^Take your mark off/ })).toHaveCount(0)
    }
    expect((await statementPrinted(await exported(a))).asked.total).toBe('874.01')

    const ofB = lineRow(b, 'Along the bank', 'mesh')
    await ofB.getByRole('button', { name: 'Mark as bought, at $314.00' }).click()
    await expectPage(ofB.getByRole('button', { name: 'Take your mark off $314.00' })).toBeVisible()
    await expectPage(ofB).toContainText('$324.00 counts until both mark another amount.')
    await openBooks(a)
    const ofA = lineRow(a, 'Along the bank', 'mesh')
    await expectPage(ofA).toContainText('Bank Cottage marked $314.00')
    await ofA.getByRole('button', { name: 'Mark as bought, at $314.00' }).click()
    await expectPage(ofA).toContainText('Marked as bought by both: the actual amount counts')
    expect((await statementPrinted(await exported(a))).asked.total).toBe('864.01')
  })

  test('goods in kind show the lower of their two values while they are typed', async () => {
    const { page, home } = neighbours.a
    await page.goto(`${home}/money`)
    await typeFields(page, '', { household: 'a', kind: 'material', amount: '90.00', for: 'g1' })
    await page.getByText('How it was valued').click()
    await typeFields(page, 'valuation.', { documented: '80.00', weight: '200', yardPrice: '0.305' })
    // 200 × 0.305 = 61.00.
    await expectPage(
      page.getByText('By its paper $80.00, by weight $61.00: the lower one is $61.00.'),
    ).toBeVisible()
    await page.getByText('Which lines it is for').first().click()
    await field(page, 'lines').getByRole('button', { name: 'Add a line' }).click()
    await page.getByRole('radio', { name: gate }).check()
    await put(page, 'lines[0].amount', '90.00')
    await trySaving(page, 'Enter it')
    await expectPage(panel(page, 'The book').locator('.book-entry').last()).toContainText(
      '$90.00 was entered; $61.00 counts, the lower of its values.',
    )
  })

  test('a day before the notebook is asked about with a tick', async () => {
    const { page, home } = neighbours.a
    await page.goto(`${home}/money`)
    await typeFields(page, '', { household: 'a', kind: 'cash', amount: '5.00', date: '2020-01-31' })
    await trySaving(page, 'Enter it')
    await expectPage(faultAt(page, 'earlierIsMeant')).toContainText('31 January 2020 is before that')
    await field(page, 'earlierIsMeant').check()
    await trySaving(page, 'Enter it')
    await expectPage(panel(page, 'The book').locator('.book-entry').last()).toContainText('31 January 2020')
  })

  test('a leftover is kept at a value that both mark, and the books add up', async () => {
    const { a, b } = neighbours
    await openBooks(a)
    await a.page.getByText('Write down a tool, a leftover or salvage').click()
    const typed = { what: 'mesh, 6 ft', value: '12.00' }
    await a.page.getByRole('radio', { name: /^Left over/ }).check()
    for (const [path, text] of Object.entries(typed)) await put(a.page, path, text, 'new-thing')
    const form = a.page.locator('form.draft-form', { has: a.page.locator('#new-thing-what') })
    await form.getByRole('radio', { name: 'Bank Cottage' }).check()
    await form.getByRole('radio', { name: 'Along the bank' }).check()
    await form.getByRole('button', { name: 'Write it down' }).click()
    // A page that is left while it saves may take what was typed with it.
    await expectPage(
      panel(a.page, 'Tools, leftovers and salvage').getByRole('button', { name: 'Agree to $12.00' }),
    ).toBeVisible()
    const things = ({ page }: AtHome) => panel(page, 'Tools, leftovers and salvage')
    await openBooks(a)
    await things(a).getByRole('button', { name: 'Agree to $12.00' }).click()
    await expectPage(things(a).getByRole('button', { name: /^Take your mark off/ })).toBeVisible()
    await openBooks(b)
    await things(b).getByRole('button', { name: 'Agree to $12.00' }).click()
    await expectPage(things(b)).toContainText('Marked by both')
    await expectPage(things(b).getByRole('button', { name: /^Take your mark off/ })).toHaveCount(0)
    const printed = await statementPrinted(await exported(b))
    expect(printed.asked.total).toBe('852.01')
    // 330.00 − 10.00 − 12.00.
    expect(printed.contributed.b).toBe('308.00')
    await expectPage(panel(b.page, 'Do the books add up?')).toContainText('the two sums are equal')
  })

  test('the leftover is taken off the list by both, not by one; and it can be put back', async () => {
    const { a, b } = neighbours
    const things = ({ page }: AtHome) => panel(page, 'Tools, leftovers and salvage')
    await things(b)
      .getByRole('button', { name: /^Take it off the list/ })
      .click()
    await expectPage(things(b)).toContainText('counts until the other household marks this too')
    await things(b).getByRole('button', { name: /^Yes/ }).click()
    await expectPage(things(b)).toContainText('Taken off the list by Bank Cottage; waits for Heron House')
    expect((await statementPrinted(await exported(b))).asked.total).toBe('852.01')

    await openBooks(a)
    await expectPage(things(a)).toContainText('That counts until both mark that it is off the list.')
    await things(a).getByRole('button', { name: 'Agree that it is off the list' }).click()
    await things(a).getByText('One thing that was taken off the list').click()
    expect((await statementPrinted(await exported(a))).asked.total).toBe('864.01')
    await things(a).getByRole('button', { name: 'Put it back on the list' }).click()
    await expectPage(things(a).getByRole('button', { name: 'Agree to $12.00' })).toBeVisible()
    expect((await statementPrinted(await exported(a))).asked.total).toBe('864.01')
  })
})
