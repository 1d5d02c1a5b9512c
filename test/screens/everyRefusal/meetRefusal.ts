import type { Page, Request } from '@playwright/test'
import { expect } from 'vitest'
import { expectPage } from '../expectPage.ts'
import { faultAt, field } from '../typing.ts'
import type { AtHome } from '../visiting.ts'
import { scrollsSideways } from '../wrongWith.ts'
import { hiddenFromSight, isAnnounced } from './inSight.ts'
import type { Place, RefusalRow, Table } from './refusalRow.ts'

/** The windows of the two devices at the kitchen table. */
const windows = [
  { device: 'a phone', width: 390, height: 844 },
  { device: 'a laptop', width: 1280, height: 900 },
] as const

/** A test machine may be busy. */
const patient = { timeout: 15_000 }

/** A form's summary, or the answer to a press, whichever of them refuses. */
const refusing = '.summary-faults, .press-answer[data-kind=refused]'

/**
 * Meets one refusal on a phone and then, without typing anything anew, on a laptop: it is in sight, says what is wrong and
 * what would be right, is announced, keeps what was typed and leads to its field, and nothing in the notebook has changed.
 */
export async function meetRefusal(row: RefusalRow, table: Table, page: Page): Promise<void> {
  const asking = { ...table[row.by ?? 'a'], page }
  await row.given?.(table)
  try {
    await page.setViewportSize(windows[0])
    await open(row, table, asking)
    const before = await stored(asking)
    const posts = postsOf(page)
    for (const { device, ...size } of windows) {
      await page.setViewportSize(size)
      const again = posts.soFar() > 0
      if (!again || row.once !== true) {
        await row.press(page)
        // The first answer stands until the second one comes.
        if (again) await expect.poll(() => posts.next(), patient).toBe('answered')
      }
      await expectRefused(row, page, device)
    }
    expect(await stored(asking), 'nothing in the notebook has changed').toEqual(before)
  } finally {
    await leave(page)
    await row.after?.(table)
  }
}

/** What a page sends with its presses: how much so far, and whether more than at the last look was sent and answered. */
function postsOf(page: Page) {
  let [sent, ended, seen] = [0, 0, 0]
  const isPost = (request: Request) => request.method() === 'POST'
  const end = (request: Request) => {
    if (isPost(request)) ended += 1
  }
  page.on('request', (request) => {
    if (isPost(request)) sent += 1
  })
  // Not once it is read to its end: an answer that no script understands is never read.
  page.on('response', (response) => end(response.request()))
  page.on('requestfailed', end)
  return {
    soFar: () => {
      seen = sent
      return sent
    },
    next: () => (sent === seen ? 'not sent' : ended < sent ? 'not answered' : 'answered'),
  }
}

/** Opens the page, lets happen what happens meanwhile, and types. */
async function open(row: RefusalRow, table: Table, { page, home }: AtHome): Promise<void> {
  if (row.meanwhile !== undefined) await page.route('**/live?*', (route) => route.abort())
  const at = typeof row.at === 'string' ? row.at : await row.at(table)
  await page.goto(at.startsWith('http') ? at : `${home}${at}`)
  await row.meanwhile?.(table)
  await row.typed?.(page)
}

async function expectRefused(row: RefusalRow, page: Page, device: string): Promise<void> {
  const [first, ...more] = [row.says].flat()
  const places = row.answer?.(page) ?? page.locator(refusing)
  const place = places.filter({ hasText: first ?? '', visible: true }).first()
  await expectPage(place, `${device}: ${row.what}`).toBeVisible()
  for (const words of more) await expectPage(place).toContainText(words)
  await expect
    .poll(() => hiddenFromSight(place, first ?? ''), { ...patient, message: `${device}: in sight` })
    .toEqual([])
  await expect.poll(() => isAnnounced(place), { ...patient, message: `${device}: announced` }).toBe(true)
  expect(await scrollsSideways(page), device).toEqual([])
  for (const [where, value] of row.keeps ?? []) await expectPage(at(page, where, row.form)).toHaveValue(value)
  const named = typeof row.names === 'string' ? { [row.names]: first ?? '' } : (row.names ?? {})
  for (const [path, words] of Object.entries(named)) await expectNamed(page, path, words, row.form)
}

/** The field is marked as wrong and described by what is wrong with it, and the summary leads to it. */
async function expectNamed(page: Page, path: string, words: string, form?: string): Promise<void> {
  await expectPage(faultAt(page, path, form)).toContainText(words)
  const control = field(page, path, form)
  // Of choices side by side the group is marked, and the first of them is led to.
  const group = page.getByRole('radiogroup').filter({ has: control })
  const marked = (await group.count()) > 0 ? group : control
  // A list of rows is no control that could be invalid, but it is described all the same.
  const isList = await control.evaluate((element) => element.matches('fieldset'))
  if (!isList) await expectPage(marked).toHaveAttribute('aria-invalid', 'true')
  await expectPage(marked).toHaveAccessibleDescription(new RegExp(escaped(words)))
  const lead = page.locator('.summary-faults').getByRole('link', { name: words })
  await lead.and(page.locator(`[href="#${await control.getAttribute('id')}"]`)).click()
  await expectPage(control).toBeFocused()
}

function at(page: Page, place: Place, form?: string) {
  return typeof place === 'string' ? field(page, place, form) : place(page)
}

/** All that is kept of the notebook: what it says, and what happened in it. Nothing where the page is in none. */
async function stored({ page, home }: AtHome): Promise<readonly string[]> {
  if (home === '') return []
  const answers = ['notebook.json', 'history.json'].map((file) => page.request.get(`${home}/${file}`))
  return Promise.all(answers.map(async (answer) => (await answer).text()))
}

/** Leaves what is typed here unsaved, so that the next row can open its page without being asked. */
async function leave(page: Page): Promise<void> {
  await page.unrouteAll({ behavior: 'ignoreErrors' })
  await page.evaluate(() => localStorage.clear())
  await page.goto('about:blank')
}

function escaped(text: string): string {
  // A figure is bound to its unit by a space that does not break.
  return text.replace(/[.*+?^${}()|[\]\\]/g, '\\$&').replaceAll(' ', '\\s')
}
