import { randomBytes } from 'node:crypto'
import { once } from 'node:events'
import { existsSync, readdirSync } from 'node:fs'
import { request } from 'node:http'
import { connect } from 'node:net'
import { join } from 'node:path'
import AxeBuilder from '@axe-core/playwright'
import type { Browser, Page } from '@playwright/test'
import sharp from 'sharp'
import { afterAll, beforeAll, describe, expect, inject, test } from 'vitest'
import { closeDatabase, database } from '../../lib/store/database.ts'
import { largeNotebook } from '../bench/largeNotebook.ts'
import { madeJpeg, madePdf } from '../files/madePictures.ts'
import { openBrowser } from './browser.ts'
import { expectPage } from './expectPage.ts'
import { shortNotebook } from './shortNotebook.ts'
import { chooseFile, type Neighbours, neighboursWith } from './twoHouseholds.ts'
import { downloaded, exported, panel } from './visiting.ts'

let browser: Browser
let neighbours: Neighbours
let large: Neighbours
let noise: Buffer

beforeAll(async () => {
  process.env.MEARING_DATA = inject('dataFolder')
  browser = await openBrowser()
  neighbours = await neighboursWith(browser, shortNotebook)
  large = await neighboursWith(browser, JSON.parse(largeNotebook(3)))
  const raw = { width: 1000, height: 1000, channels: 3 } as const
  noise = await sharp(randomBytes(3_000_000), { raw }).png().toBuffer()
})
afterAll(async () => {
  await neighbours?.close()
  await large?.close()
  await closeDatabase()
  delete process.env.MEARING_DATA
  await browser?.close()
})

// WCAG 2.2, levels A and AA: what axe can find of it by itself.
const wcag = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa']
const faultsIn = async (page: Page) =>
  (await new AxeBuilder({ page }).withTags(wcag).analyze()).violations.map(({ id }) => id)

/** Bytes a second that a page's connection carries from here on, up and down; -1: all it can. */
async function connectionOf(page: Page) {
  const line = await page.context().newCDPSession(page)
  await line.send('Network.enable')
  return (up: number, down = -1) =>
    line.send('Network.emulateNetworkConditions', {
      offline: false,
      latency: 0,
      uploadThroughput: up,
      downloadThroughput: down,
    })
}

/** What the install keeps: files on its disk, also half ones, and rows of a table. */
async function kept() {
  const folder = join(inject('dataFolder'), 'files')
  const files = existsSync(folder)
    ? readdirSync(folder, { recursive: true, withFileTypes: true })
        .filter((one) => one.isFile())
        // Small pictures are made when they are first shown; whole files have no ending, also while they arrive.
        .filter(({ name }) => !name.endsWith('.webp'))
    : []
  return database().read(async (tables) => ({
    files: files.length,
    rows: await tables.storedFile.count(),
    notebooks: await tables.notebook.count(),
  }))
}

/** Writes down every sentence that a page says aloud from now on. */
async function listen(page: Page): Promise<() => Promise<string[]>> {
  await page.evaluate(() => {
    const heard: string[] = []
    Object.assign(window, { heard })
    const note = () => {
      for (const one of document.querySelectorAll('[role=status]')) {
        const said = one.textContent?.trim() ?? ''
        if (said !== '' && heard.at(-1) !== said) heard.push(said)
      }
    }
    new MutationObserver(note).observe(document.body, { subtree: true, childList: true, characterData: true })
  })
  return () => page.evaluate(() => (window as unknown as { heard: string[] }).heard)
}

const image = (name: string, bytes: Uint8Array) => ({
  name,
  mimeType: 'image/png',
  buffer: Buffer.from(bytes),
})

async function toFiles(): Promise<Page> {
  const { page, home } = neighbours.a
  await page.goto(`${home}/files`)
  return page
}

async function fillUpload(page: Page, files: ReturnType<typeof image>[]): Promise<void> {
  await page.getByLabel('Files', { exact: true }).setInputFiles(files)
  await page.getByLabel('What it shows').selectOption({ label: 'Something else' })
  await page.getByLabel('Caption').fill('As it was typed')
}
const add = (page: Page) => page.getByRole('button', { name: 'Add', exact: true }).click()

describe('files on their way', () => {
  test('tell bytes and percent, are said aloud by quarters, and leave nothing once they are stopped', async () => {
    const page = await toFiles()
    const before = await kept()
    await fillUpload(page, [image('noise.png', noise), image('second.png', noise)])
    const carry = await connectionOf(page)
    const heard = await listen(page)
    await carry(400_000)
    await add(page)
    const first = page.locator('.upload').nth(0)
    await expectPage(first.locator('.upload-standing')).toHaveText(
      /^([3-9]|[1-9][0-9])\s% sent: [0-9.]+\s(kB|MB) of 3\sMB$/,
    )
    await expectPage(first.getByRole('progressbar', { name: 'How much of noise.png is sent' })).toBeVisible()
    expect(await faultsIn(page)).toEqual([])
    await expectPage.poll(async () => (await heard()).join()).toMatch(/noise\.png, 1 of 2: 25\s%/)
    await page.getByRole('button', { name: 'Stop all that are left' }).click()
    for (const at of [0, 1])
      await expectPage(page.locator('.upload').nth(at)).toContainText('Stopped. Nothing of it was kept.')
    const percents = (await heard()).filter((said) => said.includes('%'))
    expect(percents.filter((said) => !/: (0|25|50|75|100)\s%$/.test(said))).toEqual([])
    await expectPage(page.getByLabel('Caption')).toHaveValue('As it was typed')
    await carry(-1)
    expect(await kept()).toEqual(before)
  })

  test('of which the connection is cut in the middle leave nothing on the server', async () => {
    const page = await toFiles()
    const before = await kept()
    const { host, hostname, port, pathname } = new URL(`${neighbours.a.home}/files/upload`)
    const cookies = await page.context().cookies()
    const about = { name: 'cut.png', kind: 'other', caption: '', item: '' }
    const head = [
      `POST ${pathname} HTTP/1.1`,
      `Host: ${host}`,
      `Origin: http://${host}`,
      `Cookie: ${cookies.map(({ name, value }) => `${name}=${value}`).join('; ')}`,
      `X-Mearing-File: ${encodeURIComponent(JSON.stringify(about))}`,
      `Content-Length: ${noise.length}`,
      '',
      '',
    ].join('\r\n')
    await new Promise<void>((resolve, reject) => {
      const socket = connect(Number(port), hostname, () => {
        socket.write(head)
        socket.write(noise.subarray(0, 400_000), () => socket.destroy())
      })
      socket.once('close', () => resolve())
      socket.once('error', reject)
    })
    // One that comes after it is taken, and is all that is there then.
    await fillUpload(page, [image('whole.png', await madeJpeg(60, 40))])
    await add(page)
    await expectPage(page.locator('.upload-form > [role=status].press-answer')).toHaveText(
      'One file was added.',
    )
    expect(await kept()).toEqual({ ...before, files: before.files + 1, rows: before.rows + 1 })
  })

  test('are stopped while they wait to be looked through, and the page says what came of it', async () => {
    const page = await toFiles()
    const before = await kept()
    // Large photos that are drawn anew one after the other keep the queue busy.
    const wide = { width: 9000, height: 9000, channels: 3, background: '#7a5' } as const
    const slow = await sharp({ create: wide }).png({ compressionLevel: 1 }).toBuffer()
    const cookies = (await page.context().cookies()).map(({ name, value }) => `${name}=${value}`).join('; ')
    const sent = ['before', 'after', 'survey', 'permit', 'receipt'].map((kind) => {
      const about = { name: 'wide.png', kind, caption: '', item: '' }
      const headers = {
        cookie: cookies,
        origin: inject('baseUrl'),
        'content-length': slow.length,
        'x-mearing-file': encodeURIComponent(JSON.stringify(about)),
      }
      const asked = request(`${neighbours.a.home}/files/upload`, { method: 'POST', headers })
      const answered = once(asked, 'response').then(([answer]) => {
        answer.resume()
        return answer.statusCode as number
      })
      asked.end(slow)
      return answered
    })
    // Once one of them is drawn anew, the others have long been waiting for their turn.
    await Promise.race(sent)
    await fillUpload(page, [image('late.png', await madeJpeg(50, 30))])
    await add(page)
    const late = page.locator('.upload')
    await expectPage(late).toContainText('All is sent. It is being checked and stored.')
    await late.getByRole('button', { name: 'Stop' }).click()
    expect(await Promise.all(sent)).toEqual([201, 201, 201, 201, 201])
    await expectPage(late).toContainText(/Stopped\. Nothing of it was kept\.|Added\./)
    const added = (await late.textContent())?.includes('Added.') === true ? 1 : 0
    await page.reload()
    await expectPage(page.locator('.file-card', { hasText: 'late.png' })).toHaveCount(added)
    // The wide photos all come to the same bytes.
    const files = before.files + 1 + added
    expect(await kept()).toEqual({ ...before, files, rows: before.rows + 5 + added })
  })
})

describe('the record pack', () => {
  const pack = (page: Page) => page.getByRole('link', { name: 'Record pack (zip)' })
  const said = (page: Page) => panel(page, /record pack$/).locator('.work-said')

  test('tells how many papers and files are ready, and is then saved whole', async () => {
    const { page, home } = neighbours.a
    await page.goto(`${home}/record`)
    const heard = await page.evaluate(() => {
      const seen: string[] = []
      Object.assign(window, { seen })
      new MutationObserver(() => {
        const now = document.querySelector('.work .upload-standing')?.textContent
        if (now && seen.at(-1) !== now) seen.push(now)
      }).observe(document.body, { subtree: true, childList: true, characterData: true })
      return seen
    })
    expect(heard).toEqual([])
    const zip = await downloaded(page, 'Record pack (zip)')
    // APPNOTE.TXT of the zip format, 4.3.16: a whole one ends with this record.
    expect(zip.subarray(-22, -18).toString('latin1')).toBe('PK\x05\x06')
    await expectPage(said(page)).toHaveText(
      /^The record pack is made, [0-9.]+\skB, and being saved by your browser\.$/,
    )
    const seen = await page.evaluate(() => (window as unknown as { seen: string[] }).seen)
    expect(seen[0]).toBe('Looking what belongs to it\u00a0…')
    const all = 1 + (await kept()).rows
    const told = seen.slice(1).map((one) => /^([0-9]+) of ([0-9]+) papers and files are ready\.$/.exec(one))
    expect(told.length).toBeGreaterThan(0)
    expect(told.filter((one) => Number(one?.[2]) !== all || Number(one?.[1]) > all)).toEqual([])
  })

  test('is stopped while it is made; nothing is saved, and it can be asked for again', async () => {
    const { page, home } = large.a
    await page.goto(`${home}/record`)
    let saved = 0
    page.on('download', () => {
      saved += 1
    })
    await pack(page).click()
    await expectPage(
      page.getByRole('progressbar', { name: 'How much of the record pack is ready' }),
    ).toBeVisible()
    await page.getByRole('button', { name: 'Stop' }).click()
    await expectPage(said(page)).toHaveText('Stopped. Nothing was saved, and the notebook is as it was.')
    await expectPage(page.locator('.work')).toHaveCount(0)
    expect(saved).toBe(0)
    expect((await downloaded(page, 'Record pack (zip)')).length).toBeGreaterThan(100_000)
    expect(saved).toBe(1)
  })

  test('is saved by the plain link where there is no script', async () => {
    const plain = await browser.newContext({
      javaScriptEnabled: false,
      storageState: await neighbours.a.page.context().storageState(),
    })
    try {
      const page = await plain.newPage()
      await page.goto(`${neighbours.a.home}/record`)
      const zip = await downloaded(page, 'Record pack (zip)')
      expect(zip.subarray(-22, -18).toString('latin1')).toBe('PK\x05\x06')
    } finally {
      await plain.close()
    }
  })
})

describe('a notebook file on its way', () => {
  const text = JSON.stringify(shortNotebook)
  const padded = text + ' '.repeat(1_900_000 - text.length)
  const start = (page: Page) => page.getByRole('button', { name: 'Start from this file' }).click()
  const work = (page: Page) => page.locator('.work')

  test('tells how much is sent, is stopped and leaves no notebook, and is sent again as it was chosen', async () => {
    const context = await browser.newContext()
    try {
      const page = await context.newPage()
      await page.goto(inject('baseUrl'))
      const before = await kept()
      await chooseFile(page, padded)
      const carry = await connectionOf(page)
      await carry(300_000)
      await start(page)
      await expectPage(work(page)).toContainText(/^[0-9.]+\s(kB|MB) of 1\.9\sMB sent\./)
      await expectPage
        .poll(() =>
          work(page)
            .locator('progress')
            .evaluate((bar) => (bar as HTMLProgressElement).value),
        )
        .toBeGreaterThan(0.02)
      expect(await faultsIn(page)).toEqual([])
      await work(page).getByRole('button', { name: 'Stop' }).click()
      await expectPage(page.locator('.press-answer', { hasText: 'Stopped.' })).toHaveText(
        'Stopped. Nothing was stored, and the file is still chosen.',
      )
      expect(await kept()).toEqual(before)
      await carry(-1)
      await start(page)
      await expectPage(page.getByRole('textbox', { name: 'Private link' })).toBeVisible()
      expect((await kept()).notebooks).toBe(before.notebooks + 1)
    } finally {
      await context.close()
    }
  })

  test('that does not hold says what is wrong, and stays chosen', async () => {
    const context = await browser.newContext()
    try {
      const page = await context.newPage()
      await page.goto(inject('baseUrl'))
      const before = await kept()
      await chooseFile(page, text.replace('"60 ft"', '"60 fathoms"'))
      await start(page)
      await expectPage(page.locator('.press-answer[data-kind=refused]', { hasText: 'line' })).toBeVisible()
      const chosen = page.locator('input[type=file]')
      expect(await chosen.evaluate((input) => (input as HTMLInputElement).files?.length)).toBe(1)
      expect(await kept()).toEqual(before)
    } finally {
      await context.close()
    }
  })

  test('starts a notebook from an ordinary form where there is no script', async () => {
    const context = await browser.newContext({ javaScriptEnabled: false })
    try {
      const page = await context.newPage()
      await page.goto(inject('baseUrl'))
      await chooseFile(page, text)
      await start(page)
      await page.waitForURL(/\/links$/)
      await expectPage(page.getByRole('heading', { level: 1, name: 'Links' })).toBeVisible()
    } finally {
      await context.close()
    }
  })

  test('that was to take a notebook’s place leaves it as it is once it is stopped', async () => {
    const { page, home } = neighbours.a
    const before = await exported(neighbours.a)
    await page.goto(`${home}/record`)
    await chooseFile(page, JSON.stringify({ ...shortNotebook, title: 'Other' }) + ' '.repeat(1_500_000))
    const carry = await connectionOf(page)
    await carry(300_000)
    await page.getByRole('button', { name: 'Put this file in its place' }).click()
    await page.getByRole('button', { name: 'Yes: put this file in its place' }).click()
    await work(page).getByRole('button', { name: 'Stop' }).click()
    await expectPage(page.locator('.press-answer', { hasText: 'Nothing was stored' })).toBeVisible()
    await carry(-1)
    expect((await exported(neighbours.a)).equals(before)).toBe(true)
  })
})

describe('a paper on its way', () => {
  const paper = (page: Page) => page.getByRole('link', { name: 'Draft summary (PDF)' })

  test('that takes a while says so, can be stopped, and is saved the next time', async () => {
    const { page, home } = large.b
    await page.goto(`${home}/record`)
    const carry = await connectionOf(page)
    await carry(-1, 20_000)
    await paper(page).click()
    const work = page.locator('.work')
    await expectPage(work.getByRole('progressbar', { name: 'The PDF is being made' })).toBeVisible()
    await expectPage(work).toContainText(/[0-9.]+\s(kB|MB) of [0-9.]+\s(kB|MB) are here/)
    await expectPage(paper(page)).toHaveAttribute('aria-disabled', 'true')
    expect(await faultsIn(page)).toEqual([])
    await work.getByRole('button', { name: 'Stop' }).click()
    await expectPage(page.locator('.work-said', { hasText: 'Stopped' })).toHaveText(
      'Stopped. Nothing was saved.',
    )
    await carry(-1)
    const pdf = await downloaded(page, 'Draft summary (PDF)')
    expect(pdf.subarray(0, 5).toString('latin1')).toBe('%PDF-')
    expect(pdf.toString('latin1').trimEnd().endsWith('%%EOF')).toBe(true)
  })

  test('has the name that its address gives it', async () => {
    const { page, home } = neighbours.a
    await page.goto(`${home}/record`)
    const coming = page.waitForEvent('download')
    await paper(page).click()
    expect((await coming).suggestedFilename()).toBe('heron-bank-draft.pdf')
  })
})

test('a record on its way to be checked tells how much is sent, and is stopped', async () => {
  const context = await browser.newContext()
  try {
    const page = await context.newPage()
    await page.goto(`${inject('baseUrl')}/check`)
    const pdf = Buffer.concat([Buffer.from(madePdf()), randomBytes(2_000_000)])
    await page
      .locator('#record')
      .setInputFiles({ name: 'copy.pdf', mimeType: 'application/pdf', buffer: pdf })
    const carry = await connectionOf(page)
    await carry(300_000)
    await page.getByRole('button', { name: 'Check it' }).click()
    await expectPage(page.locator('.work')).toContainText(/[0-9.]+\s(kB|MB) of 2\sMB sent\./)
    expect(await faultsIn(page)).toEqual([])
    await page.locator('.work').getByRole('button', { name: 'Stop' }).click()
    await expectPage(page.locator('.record-findings')).toContainText('nothing of it was kept')
    await carry(-1)
    await page.getByRole('button', { name: 'Check it' }).click()
    await expectPage(page.locator('.record-findings')).toContainText('Does not hold')
    await expectPage(page.locator('.record-findings')).toContainText('copy.pdf')
  } finally {
    await context.close()
  }
})
