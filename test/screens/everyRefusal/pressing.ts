import type { Locator, Page } from '@playwright/test'
import { readPart } from '../../../lib/forms/parts.ts'
import type { NotebookDocument } from '../../../lib/forms/readNotebook.ts'
import { fingerprintOf } from '../../../lib/store/fingerprint.ts'
import { expectPage } from '../expectPage.ts'

/** The document as it stands, for what a program that is no browser would send. */
export async function documentAt(page: Page): Promise<NotebookDocument> {
  const home = /^.*\/notebook\/[A-Za-z0-9_-]{22}/.exec(page.url())?.[0] ?? ''
  return (await page.request.get(`${home}/notebook.json`)).json()
}

/** Presses a button by its name, or the beginning of its name. */
export const pressed = (name: string | RegExp) => (page: Page) => button(page, name).click()

export function button(page: Page, name: string | RegExp): Locator {
  return page.getByRole('button', { name }).first()
}

/** Presses a button that asks first, and says yes. */
export const pressedTwice = (name: string | RegExp) => async (page: Page) => {
  await button(page, name).click()
  await page.getByRole('button', { name: /^Yes: / }).click()
}

/** What the form around a button sends is changed, as a program that is no browser could: hidden and chosen values too. */
export async function sends(on: Locator, fields: Readonly<Record<string, string>>): Promise<void> {
  await expectPage(on).toBeEnabled()
  await on.evaluate((one, values) => {
    const form = one.closest('form')
    for (const [name, value] of Object.entries(values)) {
      const field = form?.elements.namedItem(name)
      if (field instanceof HTMLSelectElement) field.add(new Option(value, value))
      if (
        !(
          field instanceof HTMLInputElement ||
          field instanceof HTMLSelectElement ||
          field instanceof HTMLTextAreaElement
        )
      )
        throw new Error(`The form has no field ${name}.`)
      for (const limit of ['min', 'max', 'maxlength', 'required']) field.removeAttribute(limit)
      field.value = value
    }
  }, fields)
}

/** The same for the form around a button that the row presses. */
export const sending = (name: string | RegExp, fields: Readonly<Record<string, string>>) => (page: Page) =>
  sends(button(page, name), fields)

/** Changes what a page sends on its way, where no field of it holds that. */
export const rewriting = (written: string, crafted: string) => async (page: Page) => {
  await page.route('**/*', async (route) => {
    const sent = route.request().postData() ?? ''
    await route.fallback(sent.includes(written) ? { postData: sent.replaceAll(written, crafted) } : {})
  })
}

/**
 * What is posted comes to another address than that of the page, as if a page of somebody else had sent it: a browser's own
 * Origin can't be changed, the host that a proxy names can. Server actions stay as they are; Next checks them by itself.
 */
export async function fromElsewhere(page: Page): Promise<void> {
  await page.route('**/*', async (route) => {
    const headers = route.request().headers()
    const asks = route.request().method() === 'POST' && headers['next-action'] === undefined
    await route.fallback(asks ? { headers: { ...headers, 'x-forwarded-host': 'elsewhere.invalid' } } : {})
  })
}

/** Opens what is folded away under these words. */
export const opened = (words: string | RegExp) => async (page: Page) => {
  await page.locator('summary', { hasText: words }).first().click()
}

/** One after the other. */
export const all =
  (...steps: readonly ((page: Page) => Promise<unknown>)[]) =>
  async (page: Page) => {
    for (const step of steps) await step(page)
  }

/** What the inputs of an entry's form name: its place, and what stands there. */
export const entryFields = (entries: unknown, place: number) => ({
  index: String(place),
  fingerprint: fingerprintOf((entries as readonly unknown[])[place]),
})

/** The form around a button is about another item, as it stands. */
export const aboutItem =
  (name: string | RegExp, id: string, more: Record<string, string> = {}) =>
  async (page: Page) => {
    const item = readPart(await documentAt(page), { part: 'item', id })
    await sends(button(page, name), { id, fingerprint: fingerprintOf(item), ...more })
  }
