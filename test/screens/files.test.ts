import { execFileSync } from 'node:child_process'
import { randomBytes } from 'node:crypto'
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import type { Browser, Page } from '@playwright/test'
import sharp from 'sharp'
import { afterAll, beforeAll, describe, expect, inject, test } from 'vitest'
import { madeJpeg, madePdf } from '../files/madePictures.ts'
import { openBrowser } from './browser.ts'
import { expectPage } from './expectPage.ts'
import { shortNotebook } from './shortNotebook.ts'
import { type Neighbours, neighboursWith } from './twoHouseholds.ts'
import { type AtHome, downloaded, panel, visit, visitItem } from './visiting.ts'

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

type Given = { readonly name: string; readonly mimeType: string; readonly buffer: Buffer }
const given = (name: string, bytes: Uint8Array, mimeType = 'image/jpeg'): Given => ({
  name,
  mimeType,
  buffer: Buffer.from(bytes),
})
const heic = given('IMG 1.jpg', Buffer.from('\0\0\0\x18ftypheic\0\0\0\0mif1heic', 'latin1'))
const sideways = () => document.documentElement.scrollWidth - document.documentElement.clientWidth

async function toFiles(household: AtHome): Promise<void> {
  await visit(household, 'Record')
  await household.page.getByRole('link', { name: 'Photos and papers' }).click()
  await expectPage(household.page.getByRole('heading', { level: 1, name: 'Photos and papers' })).toBeVisible()
}

async function fill(
  page: Page,
  files: Given[],
  kind: string,
  more: { caption?: string; item?: string } = {},
) {
  await page.getByLabel('Files', { exact: true }).setInputFiles(files)
  await page.getByLabel('What it shows').selectOption({ label: kind })
  if (more.item !== undefined) await page.getByLabel('Belongs to').selectOption({ label: more.item })
  await page.getByLabel('Caption').fill(more.caption ?? '')
}

const add = (page: Page) => page.getByRole('button', { name: 'Add', exact: true }).click()
const status = (page: Page) => panel(page, 'Add some').locator('.upload-form > .press-answer')
const card = (page: Page, caption: string) => page.locator('.file-card', { hasText: caption })

describe('photos and papers', () => {
  test('are added several at once; one that is refused is named, and the others are there for both', async () => {
    const { a, b } = neighbours
    await toFiles(a)
    const files = [given('gate.jpg', await madeJpeg(900, 600)), heic]
    await fill(a.page, files, 'Photo before the work', {
      caption: 'The gate, from the lane',
      item: 'Willow gate',
    })
    await add(a.page)
    await expectPage(status(a.page)).toHaveText('1 of 2 files were added.')
    const sent = panel(a.page, 'Add some').locator('.upload')
    await expectPage(sent.nth(0)).toContainText('Added.')
    await expectPage(sent.nth(1)).toContainText('“IMG 1.jpg” was not added. It is a HEIC photo')
    await expectPage(sent.nth(1)).toContainText('set the camera to “most compatible”')

    await toFiles(b)
    for (const page of [a.page, b.page]) {
      const shown = card(panel(page, 'Before the work').page(), 'The gate, from the lane')
      await expectPage(shown).toContainText('Willow gate')
      await expectPage(shown).toContainText('Heron House')
      const picture = shown.getByRole('img')
      await picture.scrollIntoViewIfNeeded()
      await expectPage.poll(() => picture.evaluate((one) => (one as HTMLImageElement).naturalWidth)).toBe(480)
      expect(await page.evaluate(sideways)).toBe(0)
    }
    await expectPage(card(b.page, 'The gate').getByRole('button', { name: 'Take away' })).toHaveCount(0)
  })

  test('of an item are shown with it, and added from there', async () => {
    const { b } = neighbours
    await visitItem(b, 'Willow gate')
    const shown = panel(b.page, 'Photos and papers')
    await expectPage(shown.locator('.file-card')).toHaveCount(1)
    await shown.getByRole('link', { name: 'Add photos or papers' }).click()
    await expectPage(b.page.getByLabel('Belongs to')).toHaveValue('g1')
    await fill(b.page, [given('letter.pdf', madePdf(), 'application/pdf')], 'Permit letter')
    await add(b.page)
    await expectPage(status(b.page)).toHaveText('One file was added.')
    await expectPage(b.page.getByLabel('Files', { exact: true })).toHaveValue('')
    await expectPage(panel(b.page, 'Permit letters').locator('.file-card')).toContainText('letter.pdf')
  })

  test('show how far they are, and can be stopped on the way', async () => {
    const { a } = neighbours
    await toFiles(a)
    const noise = await sharp(randomBytes(1000 * 1000 * 3), {
      raw: { width: 1000, height: 1000, channels: 3 },
    })
      .png()
      .toBuffer()
    expect(noise.length).toBeGreaterThan(2_500_000)
    await fill(
      a.page,
      [given('noise.png', noise, 'image/png'), given('second.png', noise, 'image/png')],
      'Something else',
    )
    const line = await a.page.context().newCDPSession(a.page)
    const slow = { offline: false, latency: 0, downloadThroughput: -1, uploadThroughput: 300_000 }
    await line.send('Network.enable')
    await line.send('Network.emulateNetworkConditions', slow)
    const before = await a.page.locator('.file-card').count()
    await add(a.page)
    const [first, second] = [a.page.locator('.upload').nth(0), a.page.locator('.upload').nth(1)]
    await expectPage(second).toContainText('Waits for its turn.')
    await expectPage(first.locator('.upload-standing')).toHaveText(/^([2-9]|[1-8][0-9])\s% sent: /)
    await expectPage
      .poll(() => first.locator('progress').evaluate((bar) => (bar as HTMLProgressElement).value))
      .toBeGreaterThan(0.02)
    await second.getByRole('button', { name: 'Stop' }).click()
    await first.getByRole('button', { name: 'Stop' }).click()
    for (const upload of [first, second])
      await expectPage(upload).toContainText('Stopped. Nothing of it was kept.')
    await expectPage(status(a.page)).toHaveText('0 of 2 files were added.')
    await line.send('Network.emulateNetworkConditions', { ...slow, uploadThroughput: -1 })
    await a.page.reload()
    await expectPage(a.page.locator('.file-card')).toHaveCount(before)
  })

  test('are told when the connection is lost, and nothing chosen is lost with it', async () => {
    const { a } = neighbours
    await toFiles(a)
    await fill(a.page, [given('later.jpg', await madeJpeg(50, 40))], 'Photo after the work', {
      caption: 'Later',
    })
    await a.page.context().setOffline(true)
    await add(a.page)
    await expectPage(a.page.locator('.upload')).toContainText(
      '“later.jpg” was not added: the connection was lost.',
    )
    await expectPage(a.page.getByLabel('Caption')).toHaveValue('Later')
    await a.page.context().setOffline(false)
    await add(a.page)
    await expectPage(card(a.page, 'Later')).toBeVisible()
  })

  test('are contained when they are opened, and no other site can send any', async () => {
    const { a } = neighbours
    await toFiles(a)
    const address = await card(a.page, 'The gate').locator('a.file-picture').getAttribute('href')
    const photo = await a.page.request.get(`${inject('baseUrl')}${address}`)
    expect(photo.headers()).toMatchObject({
      'content-type': 'image/jpeg',
      'content-security-policy': expect.stringMatching(/^default-src 'none';[^,]*; sandbox$/),
      'x-content-type-options': 'nosniff',
      'cache-control': 'private, no-cache',
    })
    const elsewhere = await a.page.request.post(`${a.home}/files/upload`, {
      headers: {
        origin: 'https://elsewhere.example',
        'x-mearing-file': encodeURIComponent('{"name":"x.jpg","kind":"other","caption":"","item":""}'),
      },
      data: Buffer.from(await madeJpeg(20, 20)),
    })
    expect(elsewhere.status()).toBe(403)
    const opened = a.page.waitForEvent('popup')
    await card(a.page, 'The gate').locator('a.file-picture').click()
    const shown = await opened
    await expectPage.poll(() => shown.evaluate(() => document.images[0]?.naturalWidth)).toBe(900)
    await shown.close()
  })

  test('larger than 20 MB are refused before they are sent', async () => {
    const { a } = neighbours
    await toFiles(a)
    await fill(a.page, [given('long film.jpg', Buffer.alloc(20_000_001, 1))], 'Something else')
    await add(a.page)
    await expectPage(a.page.locator('.upload')).toContainText('“long film.jpg” was not added. It has 20 MB')
  })

  test('are taken away by whoever added them, after a question, and stay on record', async () => {
    const { a } = neighbours
    await toFiles(a)
    const later = card(a.page, 'Later')
    await later.getByRole('button', { name: 'Take away' }).click()
    await expectPage(later.getByRole('group')).toContainText('That it was here stays on record.')
    await later.getByRole('button', { name: 'Yes: take away' }).click()
    await expectPage(card(a.page, 'Later')).toHaveCount(0)
    await expectPage(panel(a.page, 'Taken away')).toContainText(
      'Later (later.jpg), taken away by Heron House',
    )
  })

  test('are added without script, too, and refused by name', async () => {
    const { a } = neighbours
    const plain = await browser.newContext({
      javaScriptEnabled: false,
      storageState: await a.page.context().storageState(),
    })
    try {
      const page = await plain.newPage()
      await page.goto(`${a.home}/files`)
      await fill(page, [heic], 'Survey or plan')
      await add(page)
      await expectPage(status(page)).toContainText('“IMG 1.jpg” was not added. It is a HEIC photo')
      await fill(page, [given('plan.pdf', madePdf('', 'a plan'), 'application/pdf')], 'Survey or plan')
      await add(page)
      await expectPage(panel(page, 'Survey and plans').locator('.file-card')).toContainText('plan.pdf')
      expect(page.url()).toBe(`${a.home}/files`)
    } finally {
      await plain.close()
    }
  })
})

test('the record pack and the history are saved from the page of the record', async () => {
  const { b } = neighbours
  const folder = mkdtempSync(join(tmpdir(), 'mearing-pack-'))
  try {
    await visit(b, 'Record')
    const zip = join(folder, 'pack.zip')
    writeFileSync(zip, await downloaded(b.page, 'Record pack (zip)'))
    execFileSync('unzip', ['-tq', zip])
    execFileSync('unzip', ['-q', zip, '-d', join(folder, 'pack')])
    const checked = execFileSync('sha256sum', ['-c', 'sha256sums.txt'], {
      cwd: join(folder, 'pack'),
      encoding: 'utf8',
    })
    expect(checked).toContain('files/before/001-gate.jpg: OK')
    expect(checked).toContain('files/permit/001-letter.pdf: OK')
    const history = JSON.parse((await downloaded(b.page, 'History (JSON)')).toString('utf8'))
    expect(history.entries.length).toBe(history.newest.entry)
    expect(JSON.stringify(history.entries)).toContain('gate.jpg')
  } finally {
    rmSync(folder, { recursive: true, force: true })
  }
})
