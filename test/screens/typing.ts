import type { Locator, Page } from '@playwright/test'
import { fieldId } from '../../app/ui/draft/fieldId.ts'
import { plainBlanks } from '../shownMarkup.ts'
import { expectPage } from './expectPage.ts'

// Fields are found by their path in the draft, which their ids are made from. That each has a label is checked in looks.test.ts.

/** The field at a path of the draft, such as `materials[0].quantity`. */
export function field(page: Page, path: string, form = 'field') {
  return page.locator(`#${fieldId(form, path)}`)
}

/** Unfolds the row that a field is in, as a person would before typing there. */
export async function openRowOf(inside: Locator): Promise<void> {
  const closed = inside.locator('xpath=ancestor::details[contains(@class,"row-fold") and not(@open)]')
  await inside.first().waitFor({ state: 'attached' })
  if ((await closed.count()) > 0) await closed.first().locator('> summary').click()
}

/** Types a text over whatever stands in the field. */
export async function put(page: Page, path: string, text: string, form?: string): Promise<void> {
  await openRowOf(field(page, path, form))
  await field(page, path, form).fill(text)
}

/** Chooses a value, whether the choice is shown as a list to open or as radios. */
export async function choose(page: Page, path: string, value: string): Promise<void> {
  const id = fieldId('field', path)
  const radio = page.locator(`input[type=radio][name="${id}"][value="${value}"]`)
  const list = page.locator(`select#${id}`)
  await expectPage(radio.or(list).first()).toBeEnabled()
  await openRowOf(radio.or(list).first())
  if ((await list.count()) > 0) await list.selectOption(value)
  else await radio.check()
}

/** Ticks a box, or takes the tick off. */
export async function tick(page: Page, path: string, ticked: boolean, form?: string): Promise<void> {
  await openRowOf(field(page, path, form))
  await field(page, path, form).setChecked(ticked)
}

/** What stands below a length field: how the length is understood. */
export async function readingOf(page: Page, path: string): Promise<string> {
  return plainBlanks((await page.locator(`#${fieldId('field', path)}-reading`).textContent()) ?? '')
}

/** What stands at a field that was refused. */
export function faultAt(page: Page, path: string, form = 'field') {
  return page.locator(`#${fieldId(form, path)}-error`)
}

/** Presses the save button of a form that stays on the page, and waits until it says that it is saved. */
export async function save(page: Page, label: string): Promise<void> {
  const form = formOf(page, label)
  await form.getByRole('button', { name: label, exact: true }).click()
  await expectPage(form.locator('.save-standing')).toHaveText(/^(Saved\.|Nothing had changed\.)$/)
}

/** The form that has a save button with this label. */
export function formOf(page: Page, label: string) {
  return page.locator('form.draft-form', { has: page.getByRole('button', { name: label, exact: true }) })
}

/** Presses the save button of a form and leaves it to the caller what is to come of it. */
export async function trySaving(page: Page, label: string): Promise<void> {
  await formOf(page, label).getByRole('button', { name: label, exact: true }).click()
}
