import AxeBuilder from '@axe-core/playwright'
import type { Browser, BrowserContext, Page } from '@playwright/test'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { readPdf, wordsOf } from '../pdf/readPdf.ts'
import { agreeToAll, putUp, sign } from './agreeing.ts'
import { openBrowser } from './browser.ts'
import { expectPage } from './expectPage.ts'
import { shortNotebook } from './shortNotebook.ts'
import { type Neighbours, neighboursWith } from './twoHouseholds.ts'
import { faultAt, put, trySaving } from './typing.ts'
import { downloaded, panel, visit, visitItem } from './visiting.ts'

let browser: Browser
let neighbours: Neighbours

beforeAll(async () => {
  browser = await openBrowser()
  neighbours = await neighboursWith(browser, shortNotebook)
})
afterAll(async () => {
  await neighbours?.close()
  await browser?.close()
})

/** What axe finds wrong by WCAG 2.2, levels A and AA, one line each. */
async function wrongWith(page: Page): Promise<string[]> {
  const rules = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa']
  const { violations } = await new AxeBuilder({ page }).withTags(rules).setLegacyMode().analyze()
  return violations.flatMap(({ id, nodes }) => nodes.map(({ target }) => `${id}: ${target.join(' ')}`))
}

const sideways = () => document.documentElement.scrollWidth - document.documentElement.clientWidth

describe('a conversation beside an item', () => {
  test('goes from one household to the other and back, and refuses what says nothing', async () => {
    const { a, b } = neighbours
    await visitItem(b, 'Along the bank')
    const talk = panel(b.page, 'What you two said about this')
    await talk.getByRole('radio', { name: 'Objection' }).check()
    await trySaving(b.page, 'Say it')
    await expectPage(faultAt(b.page, 'text', 'message')).toContainText('Needed: what you want to say.')
    await expectPage(talk.getByRole('radio', { name: 'Objection' })).toBeChecked()
    await put(b.page, 'text', 'Five feet is too high for us.', 'message')
    await trySaving(b.page, 'Say it')
    await expectPage(talk.locator('.message')).toContainText('Five feet is too high for us.')
    await expectPage(talk.getByLabel('What you want to say')).toHaveValue('')
    expect(await b.page.evaluate(sideways)).toBe(0)

    await visit(a, 'The line')
    await expectPage(a.page.locator('.item-rows').first()).toContainText('1 objection not answered')
    await visitItem(a, 'Along the bank')
    const answer = panel(a.page, 'What you two said about this')
    await answer.getByRole('radio', { name: 'Answer', exact: false }).last().check()
    await put(a.page, 'text', 'Then let us say four and a half.', 'message')
    await trySaving(a.page, 'Say it')
    await expectPage(answer.locator('.message')).toHaveCount(2)
    await expectPage(answer.locator('.message').last()).toContainText('Answer to 1')
    await visit(a, 'The line')
    await expectPage(a.page.locator('.item-rows').first()).not.toContainText('objection')
  })
})

describe('a link for somebody who only reads', () => {
  let link = ''
  let stranger: BrowserContext

  beforeAll(async () => {
    const { a, b } = neighbours
    for (const household of [a, b]) await agreeToAll(household)
    await putUp(a, 1)
    await sign(a.page, 'Petra Quillon')
    await b.page.goto(`${b.home}/sign`)
    await sign(b.page, 'Emrys Vant')
    stranger = await browser.newContext({ viewport: { width: 390, height: 844 }, reducedMotion: 'reduce' })
    return () => stranger.close()
  })

  test('is made on a phone, at its second try', async () => {
    const { page, home } = neighbours.b
    await visit(neighbours.b, 'Record')
    await page.getByRole('link', { name: 'Links for readers' }).click()
    await expectPage(page.getByRole('heading', { level: 1, name: 'Readers' })).toBeVisible()
    expect(page.url()).toBe(`${home}/readers`)
    await trySaving(page, 'Make the link')
    await expectPage(faultAt(page, 'label', 'reader')).toContainText('Needed: for whom the link is')
    await put(page, 'label', 'the permit office', 'reader')
    await trySaving(page, 'Make the link')
    const field = page.getByRole('textbox', { name: 'The reader’s link' })
    await expectPage(field).toBeVisible()
    link = await field.inputValue()
    expect(link).toMatch(/\/read\/[A-Za-z0-9_-]{43}$/)
    await expectPage(panel(page, 'the permit office')).toContainText('Not opened yet.')
    expect(await page.evaluate(sideways)).toBe(0)
  })

  test('is not shown again', async () => {
    const { page } = neighbours.b
    await page.reload()
    await expectPage(page.getByRole('heading', { name: 'the permit office' })).toBeVisible()
    expect(await page.content()).not.toContain(link.slice(-43))
  })

  test('shows a stranger the agreement without costs, and gives the browser nothing to keep', async () => {
    const page = await stranger.newPage()
    const answer = await page.goto(link)
    expect(answer?.status()).toBe(200)
    const headers = (await answer?.allHeaders()) ?? {}
    expect(headers['referrer-policy']).toBe('no-referrer')
    expect(headers['cache-control']).toContain('no-store')
    expect(headers['cache-control']).toContain('private')
    expect(headers['x-robots-tag']).toContain('noindex')
    expect(headers['set-cookie']).toBeUndefined()
    await expectPage(page.getByRole('heading', { level: 1, name: 'Heron Bank' })).toBeVisible()
    await expectPage(page.locator('main')).toContainText('Revision 1, signed by every party.')
    await expectPage(page.locator('main')).toContainText('Along the bank')
    // All that the server sent, the data for the scripts included.
    const sent = await page.content()
    const secrets = ['set the posts', '20.00', '5.00', 'too high for us', neighbours.a.home.slice(-22)]
    expect(secrets.filter((secret) => sent.includes(secret))).toEqual([])
    expect(await page.locator('main').textContent()).not.toContain('$')
    expect(await page.evaluate(sideways)).toBe(0)
    expect(await wrongWith(page)).toEqual([])
    expect(await stranger.cookies()).toEqual([])

    const pdf = await readPdf(await downloaded(page, 'Summary (PDF)'))
    expect(wordsOf(...pdf.pages)).toContain('Along the bank')
    expect(wordsOf(...pdf.pages)).not.toContain('$')
    expect([...pdf.attachments]).toEqual([])
    for (const place of ['history', 'history.json', 'notebook.json', 'agreement.json', 'locked-copy.pdf'])
      expect([place, (await page.request.get(`${link}/${place}`)).status()]).toEqual([place, 404])
    await page.close()
  })

  test('opens in a browser without script, too', async () => {
    const plain = await browser.newContext({ javaScriptEnabled: false })
    const page = await plain.newPage()
    await page.goto(link)
    await expectPage(page.getByRole('heading', { level: 1, name: 'Heron Bank' })).toBeVisible()
    await plain.close()
  })

  test('to everything narrows its history down without script, and serves the locked copy as it was kept', async () => {
    const { page } = neighbours.b
    await page.goto(`${neighbours.b.home}/readers`)
    await put(page, 'label', 'the buyer', 'reader')
    await page.getByRole('radio', { name: /^Everything/ }).check()
    await trySaving(page, 'Make the link')
    const whole = await page.getByRole('textbox', { name: 'The reader’s link' }).inputValue()
    expect(await wrongWith(page)).toEqual([])
    const scripted = await stranger.newPage()
    await scripted.goto(`${whole}/history`)
    expect(await wrongWith(scripted)).toEqual([])
    expect(await scripted.evaluate(sideways)).toBe(0)
    await scripted.close()
    const plain = await browser.newContext({ javaScriptEnabled: false })
    const reader = await plain.newPage()
    await reader.goto(`${whole}/history`)
    await reader.getByLabel('Kind').selectOption('said')
    await reader.getByRole('button', { name: 'Show' }).click()
    await expectPage(reader.locator('.history-entry')).toHaveCount(2)
    await expectPage(reader.locator('.history')).toContainText('Five feet is too high for us.')
    const [kept, served] = await Promise.all([
      page.request.get(`${neighbours.b.home}/summary.pdf?revision=1`),
      reader.request.get(`${whole}/locked-copy.pdf`),
    ])
    expect((await served.body()).equals(await kept.body())).toBe(true)
    expect((await served.body()).toString('latin1')).not.toContain('too high for us')
    await plain.close()
  })

  test('is ended by the other household, and then opens nothing', async () => {
    const { page, home } = neighbours.a
    await page.goto(`${home}/readers`)
    const part = panel(page, 'the permit office')
    await part.locator('summary').click()
    await expectPage(part).toContainText('the summary (PDF)')
    await part.getByRole('button', { name: 'End this link' }).click()
    await part.getByRole('button', { name: 'Yes' }).click()
    await expectPage(part).toContainText('Ended')
    const reader = await stranger.newPage()
    const [ended, never] = [
      await reader.goto(link),
      await reader.request.get(link.replace(/.{43}$/, 'x'.repeat(43))),
    ]
    expect([ended?.status(), never.status()]).toEqual([404, 404])
    await expectPage(reader.getByRole('heading', { name: 'Nothing here' })).toBeVisible()
    expect((await reader.request.get(`${link}/summary.pdf`)).status()).toBe(404)
  })
})
