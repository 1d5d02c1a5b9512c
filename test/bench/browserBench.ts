import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import path from 'node:path'
import type { Browser, Page } from '@playwright/test'
import { openBrowser } from '../screens/browser.ts'
import { freePort, serveProgram } from '../screens/servedProgram.ts'
import { largeNotebook } from './largeNotebook.ts'
import { lighthouseRows } from './lighthouseBench.ts'
import { scriptRows } from './scriptBench.ts'

type Row = { readonly what: string; readonly figure: number; readonly limit: number; readonly unit: string }

/** Figures that only the built program in a browser can give. It is built first where its pages are not. */
export async function browserRows(): Promise<Row[]> {
  const dataFolder = mkdtempSync(path.join(tmpdir(), 'mearing-bench-'))
  const program = await serveProgram(dataFolder, await freePort(), 600_000)
  const browser = await openBrowser()
  try {
    return [
      ...(await tryingRows(browser, program.address)),
      await otherHouseholdRow(browser, program.address),
      ...(await scriptRows(browser, program.address)),
      ...(await lighthouseRows(program.address)),
    ]
  } finally {
    await browser.close()
    program.process.kill('SIGTERM')
    await program.ended
    rmSync(dataFolder, { recursive: true, force: true })
  }
}

/** From the moment at which an input of a tried change is moved until the page has been drawn anew. */
async function tryingRows(browser: Browser, address: string): Promise<Row[]> {
  const example = await browser.newPage()
  await example.goto(address)
  await example.getByRole('button', { name: 'Open the example as the first household' }).click()
  await example.waitForURL(/\/notebook\//)
  const ofExample = await redraw(example)

  const large = await browser.newPage()
  await large.goto(address)
  // 180 sections, 18 gates and no common cost, with 3,600 cost lines.
  await large.setInputFiles('#file', {
    name: 'large.json',
    mimeType: 'application/json',
    buffer: Buffer.from(largeNotebook(18)),
  })
  await large.getByRole('button', { name: 'Start from this file' }).click()
  await large.waitForURL(/\/notebook\//)
  const ofLarge = await redraw(large)
  const what = 'A tried change in the browser, from the moving of an input to the page drawn anew'
  return [
    { what: `${what}, the example`, figure: ofExample, limit: 50, unit: 'ms' },
    { what: `${what}, 198 items with 3,600 cost lines`, figure: ofLarge, limit: 200, unit: 'ms' },
  ]
}

/** From the answer to what one household saved until the other's open page shows it. */
async function otherHouseholdRow(browser: Browser, address: string): Promise<Row> {
  const mine = await (await browser.newContext()).newPage()
  await mine.goto(address)
  await mine.getByRole('button', { name: 'Open the example as the first household' }).click()
  await mine.waitForURL(/\/notebook\//)
  const [home] = /^.*\/notebook\/[^/]+/.exec(mine.url()) ?? []
  const theirs = await mine.context().newPage()
  await theirs.goto(`${home}/terms`)
  await mine.goto(`${home}/item/s2`)
  const times: number[] = []
  for (let run = 0; run < 5; run += 1) {
    await theirs.goto(`${home}/item/s2`)
    await theirs.waitForTimeout(1500)
    const text = `seen ${run}`
    await mine.locator('#field-notes').fill(text)
    await mine.getByRole('button', { name: 'Save this section' }).click()
    await mine.locator('.save-standing', { hasText: 'Saved.' }).first().waitFor()
    const saved = performance.now()
    await theirs.waitForFunction(
      (now) => (document.querySelector('#field-notes') as HTMLTextAreaElement | null)?.value === now,
      text,
      { polling: 20 },
    )
    times.push(performance.now() - saved)
  }
  const figure = times.sort((left, right) => left - right)[2] ?? Number.NaN
  const what = 'What one household saved, until another page that is open shows it'
  return { what, figure, limit: 2000, unit: 'ms' }
}

/** Median of 5, in milliseconds. */
async function redraw(page: Page): Promise<number> {
  // tsx puts this name into what it hands to the browser, to keep the names of functions.
  await page.addInitScript('globalThis.__name = (named) => named')
  const [home] = /^.*\/notebook\/[^/]+/.exec(page.url()) ?? []
  await page.goto(`${home}/try`)
  await page.locator('details.fold > summary').first().click()
  const quantity = page.getByLabel('Quantity').first()
  await quantity.waitFor()
  const times = await quantity.evaluate(async (input: HTMLInputElement) => {
    const put = Object.getOwnPropertyDescriptor(HTMLInputElement.prototype, 'value')?.set
    const drawn = () =>
      new Promise<void>((resolve) => {
        requestAnimationFrame(() => {
          const after = new MessageChannel()
          after.port1.onmessage = () => resolve()
          after.port2.postMessage('')
        })
      })
    const totals = document.querySelector('.try-totals')
    const found: number[] = []
    for (let run = 0; run < 6; run += 1) {
      const before = totals?.textContent
      const start = performance.now()
      put?.call(input, String(40 + run))
      input.dispatchEvent(new Event('input', { bubbles: true }))
      await drawn()
      found.push(performance.now() - start)
      if (totals?.textContent === before) throw new Error('the totals did not follow the input')
      await new Promise((resolve) => setTimeout(resolve, 1500))
    }
    // The first one warms up.
    return found.slice(1)
  })
  return times.sort((left, right) => left - right)[2] ?? Number.NaN
}
