import type { Browser, BrowserContext, Page } from '@playwright/test'
import { inject } from 'vitest'
import { expectPage } from './expectPage.ts'
import type { AtHome } from './visiting.ts'

// Without smooth scrolling: a press that comes while the page still glides would go beside its button.
const still = { reducedMotion: 'reduce' } as const

/** A laptop at the kitchen table. */
export async function openLaptop(browser: Browser): Promise<BrowserContext> {
  return patient(await browser.newContext({ ...still, viewport: { width: 1280, height: 900 } }))
}

/** A phone at the same table. */
export async function openPhone(browser: Browser): Promise<BrowserContext> {
  const viewport = { width: 390, height: 844 }
  return patient(await browser.newContext({ ...still, viewport, isMobile: true, hasTouch: true }))
}

/** Long enough for a busy machine, short enough to end before the test does. */
function patient(context: BrowserContext): BrowserContext {
  context.setDefaultTimeout(15_000)
  return context
}

/** The notebook that the page is in: its address without what follows the id. */
export function homeOf(page: Page): string {
  const home = /^.*\/notebook\/[A-Za-z0-9_-]{22}/.exec(page.url())?.[0]
  if (home === undefined) throw new Error(`This page is in no notebook: ${page.url()}`)
  return home
}

/** Makes the invitation on the page of links and gives its address. */
export async function makeInvitation(page: Page): Promise<string> {
  await page.getByRole('button', { name: 'Make an invitation' }).click()
  return page.getByRole('textbox', { name: 'Invitation, works once' }).inputValue()
}

/** Notes down the private link that is shown this once. */
export async function keepPrivateLink(page: Page): Promise<string> {
  const link = await page.getByRole('textbox', { name: 'Private link' }).inputValue()
  await page.getByRole('button', { name: 'I have kept it' }).click()
  await expectPage(page.getByRole('textbox', { name: 'Private link' })).toHaveCount(0)
  return link
}

export type Neighbours = { readonly a: AtHome; readonly b: AtHome; close: () => Promise<void> }

/** Two households in a notebook that was started from a file, each at a browser of its own. */
export async function neighboursWith(browser: Browser, document: object): Promise<Neighbours> {
  const [laptop, phone] = [await openLaptop(browser), await openPhone(browser)]
  const [a, b] = [await laptop.newPage(), await phone.newPage()]
  await a.goto(inject('baseUrl'))
  await chooseFile(a, JSON.stringify(document))
  await a.getByRole('button', { name: 'Start from this file' }).click()
  await expectPage(a.getByRole('textbox', { name: 'Private link' })).toBeVisible()
  const invitation = await makeInvitation(a)
  await keepPrivateLink(a)
  await b.goto(invitation)
  await b.getByRole('button', { name: /^Come in as / }).click()
  await keepPrivateLink(b)
  return {
    a: { page: a, home: homeOf(a) },
    b: { page: b, home: homeOf(b) },
    close: async () => {
      await laptop.close()
      await phone.close()
    },
  }
}

/**
 * A notebook in which the first household is alone at a laptop, and a phone at which the second is to come in. Its invitation
 * leads to the address of the install in the house, so the second household's own `homeOf` is another one.
 */
export async function startedAlone(browser: Browser, document: object) {
  const [laptop, phone] = [await openLaptop(browser), await openPhone(browser)]
  const [a, b] = [await laptop.newPage(), await phone.newPage()]
  await a.goto(inject('baseUrl'))
  await chooseFile(a, JSON.stringify(document))
  await a.getByRole('button', { name: 'Start from this file' }).click()
  await keepPrivateLink(a)
  return {
    a,
    b,
    home: homeOf(a),
    close: async () => {
      await laptop.close()
      await phone.close()
    },
  }
}

/** A page that stays as it was opened, as on a bad connection: nothing tells it what the other household does. */
export async function hearsNothing(page: Page): Promise<void> {
  await page.route('**/live?*', (route) => route.abort())
}

/** Chooses a notebook file that holds this text. */
export async function chooseFile(page: Page, content: string | Buffer): Promise<void> {
  await page.locator('input[type=file]').setInputFiles({
    name: 'notebook.json',
    mimeType: 'application/json',
    buffer: Buffer.from(content),
  })
}
