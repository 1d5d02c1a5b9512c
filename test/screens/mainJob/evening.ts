import type { Browser, BrowserContext, Page } from '@playwright/test'
import { openBrowser } from '../browser.ts'
import { openLaptop, openPhone } from '../twoHouseholds.ts'
import { type AtHome, exported } from '../visiting.ts'

// The evening that all steps of the main job share: who is at which browser, and what each has noted down.

let browser: Browser | undefined
/** Household a at a laptop; `home` is empty until the notebook is started. */
export let a: AtHome
/** Household b at a phone; `home` is empty until it is invited. */
export let b: AtHome
export let phone: BrowserContext
/** A browser that neither household has let in. */
export let stranger: BrowserContext

/** The addresses that were shown once, as the households noted them down. */
export const links = { linkOfA: '', linkOfB: '', invitation: '' }

/** What the households' browsers complained of so far; an answer “not found” to a page that is none yet is left out. */
export const complaints: string[] = []

function hear(page: Page): Page {
  page.on('console', (message) => {
    const text = `${message.text()} (${page.url()})`
    if (message.type() === 'error' && !text.includes('status of 404')) complaints.push(text)
  })
  page.on('pageerror', (error) => complaints.push(`${error} (${page.url()})`))
  return page
}

export async function beginEvening(): Promise<void> {
  browser = await openBrowser()
  phone = await openPhone(browser)
  stranger = await openLaptop(browser)
  a = { page: hear(await (await openLaptop(browser)).newPage()), home: '' }
  b = { page: hear(await phone.newPage()), home: '' }
}

export async function endEvening(): Promise<void> {
  await browser?.close()
}

/** Says at which address a household reaches its notebook. */
export function enterAs(household: 'a' | 'b', home: string): void {
  if (household === 'a') a = { ...a, home }
  else b = { ...b, home }
}

/** The notebook file as it stands. */
export async function fileNow(): Promise<Record<string, unknown>> {
  return JSON.parse((await exported(a)).toString('utf8')) as Record<string, unknown>
}
