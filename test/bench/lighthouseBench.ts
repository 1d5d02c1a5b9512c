import { execFile } from 'node:child_process'
import { createRequire } from 'node:module'
import { promisify } from 'node:util'
import type { Result } from 'lighthouse'
import { openBrowser } from '../screens/browser.ts'
import { openExample } from '../screens/examplePages.ts'
import { freePort } from '../screens/servedProgram.ts'

type Row = { readonly what: string; readonly figure: number; readonly limit: number; readonly unit: string }

const categories = ['performance', 'accessibility', 'best-practices'] as const
const runs = 5
const program = createRequire(import.meta.url).resolve('lighthouse/cli/index.js')

/**
 * What Lighthouse finds on the mobile setting, as points that are missing of its 100: at most 5 may. Its throttling to a phone
 * is worked out from what this machine took, so a busy one lowers the first figure. Every run has a browser of its own.
 */
export async function lighthouseRows(address: string): Promise<Row[]> {
  const { home, cookie } = await openedExample(address)
  const pages = [
    ['the start page', address],
    ['The line', home],
    ['an item', `${home}/item/s2`],
    ['Sign', `${home}/sign`],
  ] as const
  const rows: Row[] = []
  for (const [name, page] of pages) {
    const found: Points[] = []
    for (let run = 0; run < runs; run += 1) found.push(await pointsOf(page, cookie))
    for (const category of categories) {
      const figures = found.map((points) => points[category]).sort((left, right) => left - right)
      const median = figures[Math.floor(runs / 2)] ?? Number.NaN
      const what = `Lighthouse, mobile, ${category} of ${name}: ${median} of 100 (median of ${runs})`
      rows.push({ what, figure: 100 - median, limit: 5, unit: 'points missing' })
    }
  }
  return rows
}

/** Lighthouse opens a tab of its own, which has no session: the one of the example goes along as a header. */
async function openedExample(address: string): Promise<{ home: string; cookie: string }> {
  const browser = await openBrowser()
  try {
    const context = await browser.newContext()
    const home = await openExample(context, address)
    const cookies = await context.cookies()
    return { home, cookie: cookies.map(({ name, value }) => `${name}=${value}`).join('; ') }
  } finally {
    await browser.close()
  }
}

type Points = Readonly<Record<(typeof categories)[number], number>>

/**
 * One run, in a process of its own: where the browser is lost, Lighthouse can end the process that it runs in. Such a run says
 * nothing about the page, and is made again.
 *
 * @throws Error where the page could not be measured, or another was
 */
async function pointsOf(page: string, cookie: string, attempts = 3): Promise<Points> {
  const port = await freePort()
  const browser = await openBrowser([`--remote-debugging-port=${port}`])
  try {
    const { stdout } = await promisify(execFile)(
      process.execPath,
      [
        program,
        page,
        `--port=${port}`,
        '--quiet',
        '--output=json',
        '--form-factor=mobile',
        '--no-enable-error-reporting',
        `--only-categories=${categories.join(',')}`,
        `--extra-headers=${JSON.stringify({ Cookie: cookie })}`,
      ],
      { maxBuffer: 64 * 1024 * 1024, timeout: 120_000 },
    )
    return pointsIn(JSON.parse(stdout), page)
  } catch (error) {
    if (attempts === 1) throw error
  } finally {
    await browser.close()
  }
  return pointsOf(page, cookie, attempts - 1)
}

function pointsIn(found: Result, page: string): Points {
  if (found.runtimeError !== undefined) {
    throw new Error(`Lighthouse could not measure ${page}: ${found.runtimeError.message}`)
  }
  if (found.finalDisplayedUrl.replace(/\/$/, '') !== page.replace(/\/$/, '')) {
    throw new Error(`Lighthouse measured ${found.finalDisplayedUrl} in place of ${page}`)
  }
  const points = (category: string) => {
    const score = found.categories[category]?.score
    if (typeof score !== 'number') throw new Error(`Lighthouse gives no score of ${category}`)
    return Math.round(score * 100)
  }
  return {
    performance: points('performance'),
    accessibility: points('accessibility'),
    'best-practices': points('best-practices'),
  }
}
