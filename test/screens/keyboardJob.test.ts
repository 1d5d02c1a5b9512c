import type { Browser, Page } from '@playwright/test'
import { afterAll, beforeAll, beforeEach, expect, inject, onTestFailed, test } from 'vitest'
import { standing } from './agreeing.ts'
import { openBrowser } from './browser.ts'
import { expectPage } from './expectPage.ts'
import { enter, tabTo, tickByKey, turnTo, write, writeDay } from './keys.ts'
import { homeOf, openLaptop } from './twoHouseholds.ts'
import { field, formOf } from './typing.ts'
import { panel } from './visiting.ts'

// The job from the empty install to a confirmed payment, by keyboard alone, both households at laptops. Addresses are typed only
// where a person types or opens one: the first page and the invitation. Each test goes on where the one before it stopped.

let browser: Browser
let a: Page
let b: Page

beforeAll(async () => {
  browser = await openBrowser()
  a = await (await openLaptop(browser)).newPage()
  b = await (await openLaptop(browser)).newPage()
})
afterAll(async () => {
  await browser?.close()
})

let failedStep: string | undefined
beforeEach(({ task }) => {
  if (failedStep !== undefined) throw new Error(`An earlier step failed: ${failedStep}`)
  onTestFailed(() => {
    failedStep ??= task.name
  })
})

const button = (page: Page, name: string | RegExp) =>
  page.getByRole('button', { name, exact: typeof name === 'string' }).first()
const link = (page: Page, name: string | RegExp) =>
  page.getByRole('link', { name, exact: typeof name === 'string' }).first()

/** Goes to a page by its entry in the navigation. */
async function visitByKey(page: Page, label: string): Promise<void> {
  await enter(page, page.locator('.frame-nav-wide').getByRole('link', { name: label, exact: true }))
  await expectPage(page.getByRole('heading', { level: 1, name: label, exact: true })).toBeVisible()
}

async function saved(page: Page, label: string): Promise<void> {
  await enter(page, button(page, label))
  await expectPage(formOf(page, label).locator('.save-standing')).toHaveText('Saved.')
}

test('the first press of Tab offers to leave the navigation out', async () => {
  await a.goto(inject('baseUrl'))
  await a.keyboard.press('Tab')
  await expectPage(a.locator('.skip-link')).toBeFocused()
  await a.keyboard.press('Enter')

  await expectPage(a.locator('main')).toBeFocused()
})

test('a notebook is started and a first split kept', async () => {
  await enter(a, link(a, 'Start a notebook'))
  await write(a, field(a, 'households.a.name'), 'Heron House')
  await write(a, field(a, 'households.b.name'), 'Bank Cottage')
  await enter(a, button(a, 'Start the notebook'))
  await enter(a, button(a, 'I have kept it'))
  await write(a, field(a, 'length'), '60 ft')
  await write(a, field(a, 'materials'), '900')
  await write(a, field(a, 'hours'), '20')
  await write(a, field(a, 'rate'), '15')
  await enter(a, button(a, 'Keep this split'))

  await expectPage(a.getByRole('heading', { level: 1, name: 'The line' })).toBeVisible()
  // Half of 900.00 and of 20 hours at 15.00.
  await expectPage(panel(a, 'The whole fence').locator('.share-bar-figures')).toHaveText(
    /Heron House.*\$600\.00.*Bank Cottage.*\$600\.00/,
  )
})

test('the second household is invited and comes in', async () => {
  await visitByKey(a, 'Record')
  await enter(a, link(a, 'Links'))
  await enter(a, button(a, 'Make an invitation'))
  await b.goto(await a.getByRole('textbox', { name: 'Invitation, works once' }).inputValue())
  await enter(b, button(b, /^Come in as /))
  await enter(b, button(b, 'I have kept it'))

  const idOf = (page: Page) => homeOf(page).split('/').at(-1)
  expect(idOf(b)).toBe(idOf(a))
})

test('each household names who signs for it', async () => {
  for (const [page, path, name] of [
    [a, 'households.a.parties', 'Petra Quillon'],
    [b, 'households.b.parties', 'Emrys Vant'],
  ] as const) {
    await visitByKey(page, 'The line')
    await enter(page, link(page, 'Open households'))
    await enter(page, field(page, path).getByRole('button', { name: 'Add a party', exact: true }))
    await write(page, field(page, `${path}[0].name`), name)
    await saved(page, 'Save households and parties')
  }
})

test('a gate is added, with a cost line, work and a share of its own', async () => {
  await visitByKey(b, 'The line')
  await enter(b, link(b, 'Add a gate'))
  await write(b, field(b, 'name'), 'Willow gate')
  await write(b, field(b, 'at'), '30 ft')
  await write(b, field(b, 'opening'), '4 ft')
  await enter(b, field(b, 'materials').getByRole('button', { name: 'Add a cost line', exact: true }))
  await write(b, field(b, 'materials[0].what'), 'gate leaf')
  await write(b, field(b, 'materials[0].quantity'), '1')
  await write(b, field(b, 'materials[0].unitPrice'), '250.01')
  await enter(b, field(b, 'labour').getByRole('button', { name: 'Add a work line', exact: true }))
  await write(b, field(b, 'labour[0].task'), 'hang it')
  await write(b, field(b, 'labour[0].hours'), '5')
  await write(b, field(b, 'labour[0].rate'), '20.00')
  await turnTo(b, 'share.materials.principle', 'percent')
  await write(b, field(b, 'share.materials.a'), '25')
  await write(b, field(b, 'share.materials.b'), '75')
  await enter(b, button(b, 'Save this gate'))
  await expectPage(b.getByRole('heading', { level: 1, name: 'Willow gate' })).toBeVisible()

  // A quarter of 250.01 is 62.50; three quarters are 187.51; half of the work is 50.00 each.
  await expectPage(panel(b, 'What it asks of each household')).toContainText('$112.50')
  await expectPage(panel(b, 'What it asks of each household')).toContainText('$237.51')
})

test('a part of the drawing is opened in place, and closed again', async () => {
  await visitByKey(a, 'The line')
  const part = a.getByRole('region', { name: 'Drawing of the line' }).getByRole('link', { name: /^Gate 1/ })
  await enter(a, part.first())
  await expectPage(a.getByRole('region', { name: /^Gate 1/ })).toBeFocused()
  await a.keyboard.press('Escape')

  await expectPage(part.first()).toBeFocused()
})

test('another share is proposed, and accepted by the other household', async () => {
  await visitByKey(a, 'Shares')
  await enter(a, link(a, 'Proposals'))
  await enter(a, link(a, 'Make a proposal'))
  const gate = a.getByRole('checkbox', { name: /Willow gate/ }).first()
  await tickByKey(a, gate)
  const list = field(a, 'items[1].share.materials.principle', 'proposal')
  await tabTo(a, list)
  await a.keyboard.press('Home')
  await expectPage(list).toHaveValue('equal')
  await enter(a, button(a, 'Send this proposal'))
  await expectPage(panel(a, 'Proposal 1')).toContainText('Willow gate')

  await b.goto(`${homeOf(b)}/proposals`)
  await enter(b, button(b, 'Accept proposal 1'))
  await enter(b, button(b, /^Yes/))
  await expectPage(panel(b, 'Ended proposals')).toContainText('Proposal 1, accepted')
})

test('both agree to everything', async () => {
  for (const page of [a, b]) {
    await visitByKey(page, 'Sign')
    const open = page.getByRole('button', { name: /^Agree as it stands/ })
    for (let left = await open.count(); left > 0; left -= 1) {
      await enter(page, open.first())
      await expectPage(open).toHaveCount(left - 1)
    }
  }

  await expectPage(b.getByRole('heading', { name: 'Ready to be put up for signing' })).toBeVisible()
})

test('a mark is taken off and set again on the page of its item', async () => {
  await visitByKey(b, 'The line')
  await enter(b, b.locator('.item-rows').getByRole('link', { name: 'Willow gate', exact: true }))
  await enter(b, standing(b).getByRole('button', { name: 'Take your mark off' }))
  await enter(b, standing(b).getByRole('button', { name: 'Agree to this as it stands' }))

  await expectPage(standing(b)).toContainText('Agreed by both')
})

test('the agreement is put up and signed by both', async () => {
  await visitByKey(a, 'Sign')
  await enter(a, button(a, 'Put revision 1 up for signing'))
  await expectPage(a.getByRole('heading', { name: 'Revision 1 is up for signing' })).toBeVisible()
  for (const [page, name] of [
    [a, 'Petra Quillon'],
    [b, 'Emrys Vant'],
  ] as const) {
    await visitByKey(page, 'Sign')
    const part = panel(page, `${name} signs`)
    await write(page, part.getByLabel('Type your full name'), name)
    await tickByKey(page, part.getByRole('checkbox'))
    await enter(page, part.getByRole('button', { name: `Sign as ${name}` }))
    await expectPage(part).toHaveCount(0)
  }

  await expectPage(b.getByRole('heading', { name: 'Revision 1 is signed by all' })).toBeVisible()
})

test('a payment is entered by one household and confirmed by the other', async () => {
  await visitByKey(b, 'Money and hours')
  await turnTo(b, 'kind', 'transfer')
  await write(b, field(b, 'amount'), '100.00')
  await writeDay(b, field(b, 'date'), new Date().toISOString().slice(0, 10))
  await write(b, field(b, 'means'), 'by bank')
  await enter(b, button(b, 'Enter it'))
  await expectPage(panel(b, 'The book').locator('.book-entry')).toBeFocused()
  await expectPage(
    panel(b, 'The book').getByText('Entered. It stands here in the book now.'),
  ).toBeInViewport()

  await visitByKey(a, 'Money and hours')
  await enter(a, button(a, 'We received it: confirm'))
  await expectPage(panel(a, 'The book')).toContainText('Heron House confirmed it')
})

test('the record is taken home', async () => {
  await visitByKey(b, 'Record')
  const coming = b.waitForEvent('download')
  await enter(b, link(b, 'Notebook file (JSON)'))
  const file = await (await coming).createReadStream()
  let text = ''
  for await (const piece of file) text += String(piece)

  expect(JSON.parse(text)).toMatchObject({ format: 'mearing-notebook' })
})
