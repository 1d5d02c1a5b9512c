import type { Locator, Page } from '@playwright/test'
import { fieldId } from '../../app/ui/draft/fieldId.ts'
import { expectPage } from './expectPage.ts'

// A person without a pointer: everything goes through Tab, Enter, Space, the arrows and typing.

/** More than any page has stops: who comes round without having met the target has not found it. */
const mostStops = 400

/** Presses Tab until the target has the focus. */
export async function tabTo(page: Page, target: Locator): Promise<void> {
  await expectPage(target).toBeEnabled()
  for (let stop = 0; stop < mostStops; stop += 1) {
    if (await target.evaluate((one) => one === document.activeElement)) return
    await page.keyboard.press('Tab')
  }
  throw new Error(`Tab does not lead to ${String(target)}.`)
}

/** Goes to a button or a link and presses Enter. */
export async function enter(page: Page, target: Locator): Promise<void> {
  await tabTo(page, target)
  await page.keyboard.press('Enter')
}

/** Goes to a field and types over whatever stands in it. */
export async function write(page: Page, target: Locator, text: string): Promise<void> {
  await tabTo(page, target)
  await page.keyboard.press('Control+A')
  await page.keyboard.type(text)
}

/** Chooses a value by the arrows, in a list or among radios. */
export async function turnTo(page: Page, path: string, value: string): Promise<void> {
  const id = fieldId('field', path)
  const list = page.locator(`select#${id}`)
  const radios = page.locator(`input[type=radio][name="${id}"]`)
  await expectPage(list.or(radios.first())).toBeEnabled()
  if ((await list.count()) > 0) {
    await tabTo(page, list)
    await page.keyboard.press('Home')
    const most = await list.locator('option').count()
    for (let at = 0; at < most && (await list.inputValue()) !== value; at += 1) {
      await page.keyboard.press('ArrowDown')
    }
    await expectPage(list).toHaveValue(value)
    return
  }
  const wanted = page.locator(`input[type=radio][name="${id}"][value="${value}"]`)
  const within = () => radios.evaluateAll((all) => all.some((one) => one === document.activeElement))
  for (let stop = 0; stop < mostStops && !(await within()); stop += 1) await page.keyboard.press('Tab')
  await page.keyboard.press('Space')
  const most = await radios.count()
  for (let at = 0; at < most && !(await wanted.isChecked()); at += 1) await page.keyboard.press('ArrowDown')
  await expectPage(wanted).toBeChecked()
}

/** Goes to a box and ticks it. */
export async function tickByKey(page: Page, target: Locator): Promise<void> {
  await tabTo(page, target)
  await page.keyboard.press('Space')
  await expectPage(target).toBeChecked()
}

/** Types a day into a field for one, part by part, as its language asks for it: month, day, year. */
export async function writeDay(page: Page, target: Locator, day: string): Promise<void> {
  const [year = '', month = '', date = ''] = day.split('-')
  await tabTo(page, target)
  await page.keyboard.type(`${month}${date}${year}`)
  await expectPage(target).toHaveValue(day)
}
