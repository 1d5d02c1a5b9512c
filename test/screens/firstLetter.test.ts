import type { Browser, Page } from '@playwright/test'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { madeJpeg } from '../files/madePictures.ts'
import { readPdf, wordsOf } from '../pdf/readPdf.ts'
import { openBrowser } from './browser.ts'
import { expectPage } from './expectPage.ts'
import { shortNotebook } from './shortNotebook.ts'
import { homeOf, keepPrivateLink, openPhone, startedAlone } from './twoHouseholds.ts'
import { faultAt, put, save, trySaving } from './typing.ts'
import { panel } from './visiting.ts'
import { wrongWith } from './wrongWith.ts'

// Household a writes the first letter at a laptop; household b opens its invitation on a phone and gives each of the five
// answers. Each test goes on where the one before it stopped.
let browser: Browser
let a: Page
let b: Page
let home = ''
let invitation = ''
let close = async () => {}

beforeAll(async () => {
  browser = await openBrowser()
  ;({ a, b, home, close } = await startedAlone(browser, shortNotebook))
})
afterAll(async () => {
  await close()
  await browser?.close()
})

const sideways = (page: Page) =>
  page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth)

/** The form of one of the five answers. */
const formOf = (answer: string) =>
  b.locator('.five-answers-one', { has: b.getByRole('heading', { name: answer, exact: true }) })

async function give(answer: string, fill: () => Promise<void> = async () => {}): Promise<void> {
  await b.goto(`${home}/welcome`)
  await fill()
  await formOf(answer).getByRole('button').click()
}

describe('the first letter', () => {
  test('is reached from Links, begins with what is planned, and refuses a day to answer by that is too soon', async () => {
    await a.goto(`${home}/links`)
    await a.getByRole('link', { name: 'The first letter' }).click()
    await expectPage(a.getByLabel('What you propose')).toHaveValue(
      'A new fence: 60 ft of mesh, 5 ft high; one gate.',
    )
    await put(a, 'letter.wrong', 'Three posts are rotten, and the mesh is torn.')
    await put(a, 'letter.workFrom', '2027-05-03')
    await put(a, 'letter.workTo', '2027-05-30')
    await put(a, 'letter.answerTo', 'At our door, 3 Bank Road.')
    await put(a, 'letter.on', '2027-03-01')
    await put(a, 'letter.noticeDays', '30')
    await expectPage(a.getByText('The notice ends on 31 March 2027.')).toBeVisible()
    await put(a, 'letter.saidBy', 'the town clerk, by phone')
    await put(a, 'letter.answerBy', '2027-03-05')
    await trySaving(a, 'Save the letter')
    await expectPage(faultAt(a, 'letter.answerBy')).toContainText('31 March 2027 or a later day')
    await put(a, 'letter.answerBy', '')
    await save(a, 'Save the letter')
    await expectPage(panel(a, 'The letter as it stands')).toContainText('Please answer by 31 March 2027.')
    expect(await wrongWith(a)).toEqual([])
  })

  test('is handed out with an invitation, as text and as a PDF of one page', async () => {
    await a.getByRole('button', { name: 'Make a new invitation and the letter' }).click()
    invitation = await a.getByRole('textbox', { name: 'Invitation, works once' }).inputValue()
    expect(invitation).toMatch(/\/open\/[A-Za-z0-9_-]{43}$/)
    await expectPage(a.locator('.handed-out textarea')).toHaveValue(new RegExp(`\n${invitation}\n`))
    const coming = a.waitForEvent('download')
    await a.getByRole('button', { name: 'Letter with this invitation (PDF)' }).click()
    const pieces: Buffer[] = []
    for await (const piece of await (await coming).createReadStream()) pieces.push(piece as Buffer)
    const { pages } = await readPdf(Buffer.concat(pieces))
    expect(pages).toHaveLength(1)
    expect(wordsOf(...pages)).toContain(invitation)
    expect(await wrongWith(a)).toEqual([])
    await a.reload()
    await expectPage(panel(a, 'Hand it over')).toContainText('waits to be claimed')
    expect(await a.content()).not.toContain(invitation.slice(-43))
  })
})

describe('the invited household', () => {
  test('comes in, keeps its link, and then first sees what is asked of it', async () => {
    await a.goto(`${home}/files`)
    const jpeg = Buffer.from(await madeJpeg())
    await a.request.post(`${home}/files/upload`, {
      data: jpeg,
      headers: {
        origin: new URL(home).origin,
        'content-type': 'application/octet-stream',
        'x-mearing-file': encodeURIComponent(
          JSON.stringify({ name: 'leaning.jpg', kind: 'before', caption: 'The old fence leans', item: '' }),
        ),
      },
    })
    await b.goto(invitation)
    expect(await sideways(b)).toBe(0)
    await b.getByRole('button', { name: 'Come in as Bank Cottage' }).click()
    await keepPrivateLink(b)
    home = homeOf(b)
    await expectPage(
      b.getByRole('heading', { level: 1, name: 'Heron House asks about the fence' }),
    ).toBeVisible()
    const photo = b.locator('.old-fence img')
    await expectPage(photo).toHaveAttribute('alt', /The old fence leans/)
    expect(
      await photo.evaluate((image: HTMLImageElement) => image.decode().then(() => image.naturalWidth)),
    ).toBeGreaterThan(0)
    await expectPage(b.locator('.asked-figure')).toHaveText('$425.00 as the plan stands now')
    await expectPage(b.locator('.asked-binding')).toHaveText('Nothing binds until you sign.')
    await expectPage(b.locator('.five-answers-one')).toHaveCount(5)
    expect(await wrongWith(b)).toEqual([])
    expect(await sideways(b)).toBe(0)
  })

  test('asks a question, which needs words, and the other answers it', async () => {
    await give('A question')
    await expectPage(formOf('A question').getByRole('status')).toContainText('Your question: needed')
    await give('A question', async () => {
      await b.getByLabel('What it is about').selectOption({ label: 'Willow gate' })
      await b.getByLabel('Your question').fill('Who mends it?')
    })
    await expectPage(b.getByRole('heading', { level: 1, name: 'The first answer' })).toBeVisible()
    await a.goto(`${homeOf(a)}/money`)
    await a.getByRole('link', { name: /a question – “Who mends it\?”/ }).click()
    await expectPage(a.getByRole('heading', { level: 1, name: 'Willow gate' })).toBeVisible()
    await expectPage(panel(a, 'What you two said about this')).toContainText('Who mends it?')
    await panel(a, 'What you two said about this')
      .getByRole('radio', { name: /^Answer/ })
      .check()
    await put(a, 'text', 'Both of us.', 'message')
    await trySaving(a, 'Say it')
    await expectPage(a.locator('.message').last()).toContainText('Both of us.')
    await a.goto(`${homeOf(a)}/terms`)
    await expectPage(a.getByRole('link', { name: /Who mends it/ })).toHaveCount(0)
  })

  test('would take part without money, and proposes a limit of nothing', async () => {
    await give('Fine, but without money')
    await expectPage(panel(b, 'What can stand in the place of money')).toContainText(
      '$325.00 of your part is money',
    )
    expect(await wrongWith(b)).toEqual([])
    expect(await sideways(b)).toBe(0)
    await b.getByRole('link', { name: 'Caps, with nothing filled in for you' }).click()
    await expectPage(b.getByLabel('The most that Bank Cottage is asked for')).toHaveValue('0')
    await a.goto(`${homeOf(a)}/terms`)
    await expectPage(a.getByRole('link', { name: /fine, but without money/ })).toBeVisible()
    await save(b, 'Save the caps')
    // It moves what is asked once the other household marks it.
    await a.goto(`${homeOf(a)}/shares`)
    await panel(a, 'Caps').getByRole('button', { name: 'Agree to this as it stands' }).click()
    await expectPage(panel(a, 'Caps').getByRole('button', { name: 'Take your mark off' })).toBeVisible()
    await a.goto(`${homeOf(a)}/terms`)
    await expectPage(a.getByRole('link', { name: /fine, but without money/ })).toHaveCount(0)
  })

  test('puts it off to a day, which both find among the dates', async () => {
    await give('Not now')
    await expectPage(formOf('Not now').getByRole('status')).toContainText('The day: needed')
    const day = new Date(Date.now() + 40 * 86_400_000).toISOString().slice(0, 10)
    await give('Not now', () => b.getByLabel('Ask again on').fill(day))
    await expectPage(panel(b, 'Later')).toContainText('Heron House asks again on')
    for (const page of [a, b]) {
      await page.goto(`${homeOf(page)}/dates`)
      await expectPage(page.getByLabel('What is due or runs out')).toHaveValue(
        'Ask Bank Cottage again about the fence',
      )
      await expectPage(page.getByLabel('On', { exact: true })).toHaveValue(day)
    }
  })

  test('says no, and is told what that means', async () => {
    await give('No', async () => {
      await formOf('No').getByText('Add words, if you like').click()
      await formOf('No').getByLabel('Your words').fill('We keep our hedge.')
    })
    await expectPage(panel(b, 'What that means')).toContainText('Nothing binds you')
    expect(await wrongWith(b)).toEqual([])
    await a.goto(homeOf(a))
    await expectPage(a.locator('.first-strip')).toContainText('no – “We keep our hedge.”')
  })

  test('says fine after all, and goes on to the items to mark', async () => {
    await give('Fine')
    await expectPage(b.locator('.lead')).toContainText(/answered on .*: fine\./)
    await b.getByRole('link', { name: 'Items to look at and mark' }).click()
    await expectPage(b.getByRole('heading', { level: 1, name: 'Sign' })).toBeVisible()
    await expectPage(panel(b, 'What stands in the way of signing')).toContainText('Not agreed by both yet.')
    await a.goto(homeOf(a))
    await expectPage(a.locator('.first-strip')).toContainText(/Bank Cottage answered on .*: fine\./)
  })
})

test('an invitation that was claimed says so with its day to whoever opens it, on a phone too', async () => {
  const stranger = await openPhone(browser)
  const page = await stranger.newPage()
  await page.goto(invitation)
  await expectPage(
    page.getByRole('heading', { level: 1, name: 'This invitation has been used' }),
  ).toBeVisible()
  const today = new Date().toISOString().slice(0, 4)
  await expectPage(page.locator('.lead')).toContainText(new RegExp(`It was claimed on .*${today}`))
  expect(await sideways(page)).toBe(0)
  await stranger.close()
})

test('once both are in, the letter is there for the record, without an invitation', async () => {
  await a.goto(`${homeOf(a)}/letter`)
  const part = panel(a, 'Hand it over')
  await expectPage(part).toContainText('Bank Cottage has come in')
  await expectPage(part.getByRole('link', { name: 'Letter without invitation (PDF)' })).toBeVisible()
  await expectPage(part.getByRole('button', { name: /invitation/ })).toHaveCount(0)
})
