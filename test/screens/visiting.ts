import type { Page } from '@playwright/test'
import { expectPage } from './expectPage.ts'

/** A household at its own browser, in a notebook. */
export type AtHome = { readonly page: Page; readonly home: string }

/** Goes to a page of the notebook by its entry in the navigation, which is folded away on a phone. */
export async function visit({ page }: AtHome, label: string): Promise<void> {
  const folded = page.locator('.frame-nav-narrow > summary')
  if (await folded.isVisible()) {
    // It stays open where the link pressed last led to the page that was shown already.
    if ((await page.locator('.frame-nav-narrow[open]').count()) === 0) await folded.click()
    await page.locator('.frame-nav-narrow').getByRole('link', { name: label, exact: true }).click()
  } else {
    await page.locator('.frame-nav-wide').getByRole('link', { name: label, exact: true }).click()
  }
  await expectPage(page.getByRole('heading', { level: 1, name: label, exact: true })).toBeVisible()
}

/** Goes to the page of one section, gate or common cost, from the line. */
export async function visitItem(household: AtHome, name: string): Promise<void> {
  await visit(household, 'The line')
  await household.page.locator('.item-rows').getByRole('link', { name, exact: true }).click()
  await expectPage(household.page.getByRole('heading', { level: 1, name, exact: true })).toBeVisible()
}

/** Follows one of the matters that are still open, whose list is folded away on a phone. */
export async function goToMatter(page: Page, name: string): Promise<void> {
  const folded = page.locator('.open-matters-narrow:not([open]) > summary')
  if (await folded.isVisible()) await folded.click()
  await page.locator('.open-matters').getByRole('link', { name }).click()
}

/** The part of a page under a heading. */
export function panel(page: Page, heading: string | RegExp) {
  const exact = typeof heading === 'string'
  return page.locator('section.panel', { has: page.getByRole('heading', { name: heading, exact }) }).last()
}

/** Presses a link that saves a file, and gives its bytes. */
export async function downloaded(page: Page, label: string | RegExp): Promise<Buffer> {
  // A record pack of a large notebook is long work, and the test machine may be busy.
  const coming = page.waitForEvent('download', { timeout: 120_000 })
  await page.getByRole('link', { name: label, exact: true }).first().click()
  const stream = await (await coming).createReadStream()
  const pieces: Buffer[] = []
  for await (const piece of stream) pieces.push(piece as Buffer)
  return Buffer.concat(pieces)
}

/** The notebook file as this household is given it, from the page with the record. */
export async function exported(household: AtHome): Promise<Buffer> {
  const answer = await household.page.request.get(`${household.home}/notebook.json`)
  expectPage(answer.status()).toBe(200)
  return answer.body()
}
