import type { Browser, BrowserContext } from '@playwright/test'
import { afterAll, beforeAll, expect, inject, test } from 'vitest'
import { serveBarePage } from './barePage.ts'
import { openBrowser } from './browser.ts'
import { examplePages, openExample } from './examplePages.ts'
import { shippedScript } from './shippedScript.ts'

// No limit of anybody else: what this program allows itself over the least page of the same Next and React.
const mostTimes = 1.35
const mostTimesWhereSharesAreWorkedOut = 1.6

const workingSharesOut = ['/first-split', '/try']

let browser: Browser
let example: BrowserContext
let home: string
let bare: number

beforeAll(async () => {
  browser = await openBrowser()
  const served = await serveBarePage()
  try {
    bare = await shippedScript(await browser.newContext(), served.address)
  } finally {
    await served.stop()
  }
  example = await browser.newContext()
  home = await openExample(example, inject('baseUrl'))
}, 600_000)
afterAll(async () => {
  await browser?.close()
})

/** How many times the script of a bare page an address ships. */
const times = async (address: string) => (await shippedScript(example, address)) / bare

test('a bare page ships script, so that there is something to hold the others against', () => {
  expect(bare).toBeGreaterThan(50_000)
  expect(examplePages).toEqual(expect.arrayContaining(['', '/item/s2', '/sign', ...workingSharesOut]))
})

test.each(['/', '/start', '/check'])(
  'before a notebook, %s ships little more script than a bare page',
  async (page) => {
    expect(await times(inject('baseUrl') + page)).toBeLessThanOrEqual(mostTimes)
  },
)

test.each(examplePages.filter((page) => !workingSharesOut.includes(page)))(
  'in a notebook, “%s” ships little more script than a bare page',
  async (page) => {
    expect(await times(home + page)).toBeLessThanOrEqual(mostTimes)
  },
)

test.each(workingSharesOut)(
  'in a notebook, “%s”, which works shares out in the browser, ships not much more',
  async (page) => {
    expect(await times(home + page)).toBeLessThanOrEqual(mostTimesWhereSharesAreWorkedOut)
  },
)
