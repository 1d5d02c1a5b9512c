import type { Page } from '@playwright/test'
import { expectPage } from './expectPage.ts'
import { type AtHome, panel, visit } from './visiting.ts'

/** Marks every item that waits for this household's mark, one after the other, from the page for signing. */
export async function agreeToAll(household: AtHome): Promise<number> {
  const { page } = household
  await visit(household, 'Sign')
  const buttons = page.getByRole('button', { name: /^Agree as it stands/ })
  const all = await buttons.count()
  for (let left = all; left > 0; left -= 1) {
    await buttons.first().click()
    await expectPage(buttons).toHaveCount(left - 1)
  }
  return all
}

/** The part of an item's page that says who has marked it and what last changed. */
export function standing(page: Page) {
  return panel(page, 'Where this stands')
}

/** Marks the item whose page is open. */
export async function agreeHere(page: Page): Promise<void> {
  await standing(page).getByRole('button', { name: 'Agree to this as it stands' }).click()
  await expectPage(standing(page).getByRole('button', { name: 'Take your mark off' })).toBeVisible()
}

/** Puts the notebook up for signing and gives the hash that the page then shows. */
export async function putUp(household: AtHome, revision: number): Promise<string> {
  await visit(household, 'Sign')
  await household.page.getByRole('button', { name: `Put revision ${revision} up for signing` }).click()
  await expectPage(
    household.page.getByRole('heading', { name: `Revision ${revision} is up for signing` }),
  ).toBeVisible()
  return shownHash(household.page)
}

/** The hash of the revision that stands, as the page for signing shows it. */
export async function shownHash(page: Page): Promise<string> {
  return (await page.locator('p.hash code').first().textContent()) ?? ''
}

/** Types the name, ticks the sentence and signs for one party of the household. */
export async function sign(page: Page, party: string): Promise<void> {
  const part = panel(page, `${party} signs`)
  await part.getByLabel('Type your full name').fill(party)
  await part.getByRole('checkbox').check()
  await part.getByRole('button', { name: `Sign as ${party}` }).click()
  await expectPage(part).toHaveCount(0)
}
