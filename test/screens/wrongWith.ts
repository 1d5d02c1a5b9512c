import AxeBuilder from '@axe-core/playwright'
import type { Page } from '@playwright/test'

// WCAG 2.2, levels A and AA: what axe can find of it by itself; `target-size` is success criterion 2.5.8, 24 by 24 px.
const rules = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa']

/**
 * Everything that is wrong with the page as it stands, one line each: all rules in the scheme that it is shown in, the
 * rules about contrast in the other one too, and whether it scrolls sideways.
 *
 * @param part a selector, where the rest of the page is looked at elsewhere
 */
export async function wrongWith(page: Page, part = 'html'): Promise<string[]> {
  // Legacy mode spares a second page for each look; it leaves out frames of other origins, and there are none.
  // What sticks to an edge of the window covers whatever is there just now, and lets go of it with a bit of scrolling.
  const loose = await page.addStyleTag({
    content: '.save-bar, .stay-current, .try-totals { position: static !important }',
  })
  const looking = () => new AxeBuilder({ page }).setLegacyMode().include(part)
  const asShown = await looking().withTags(rules).analyze()
  const shown = await page.evaluate(() => matchMedia('(prefers-color-scheme: dark)').matches)
  await page.emulateMedia({ colorScheme: shown ? 'light' : 'dark' })
  const otherwise = await looking().withRules(['color-contrast']).analyze()
  await page.emulateMedia({ colorScheme: shown ? 'dark' : 'light' })
  await loose.evaluate((style) => (style as HTMLStyleElement).remove())
  return [
    ...asShown.violations.flatMap((one) => told(one)),
    ...otherwise.violations.flatMap((one) => told(one, shown ? ' in light' : ' in dark')),
    ...(await scrollsSideways(page)),
  ]
}

/** That the page is wider than the screen, as one line; an empty list where it is not. */
export async function scrollsSideways(page: Page): Promise<string[]> {
  const sideways = await page.evaluate(
    () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
  )
  return sideways > 0 ? [`scrolls ${sideways} px sideways`] : []
}

type Violation = Awaited<ReturnType<AxeBuilder['analyze']>>['violations'][number]

function told({ id, nodes }: Violation, where = ''): string[] {
  return nodes.map(({ target, failureSummary }) => `${id}${where}: ${target.join(' ')}: ${failureSummary}`)
}

/** Opens a page and gives all that is wrong with it, what the browser complains of included. */
export async function lookAt(page: Page, address: string, missing = false): Promise<string[]> {
  const complaints: string[] = []
  const hear = (text: string) => complaints.push(`console: ${text}`)
  page.on('console', (message) => message.type() === 'error' && hear(message.text()))
  page.on('pageerror', (error) => hear(String(error)))
  await page.goto(address)
  const found = await wrongWith(page)
  page.removeAllListeners('console')
  page.removeAllListeners('pageerror')
  // A browser counts the answer "not found" to the page itself as an error.
  return [...found, ...complaints.filter((text) => !missing || !text.includes('404'))]
}

/** Of pages that differ only in the item that they are about, or in what they were asked for, so many are looked at. */
const mostAlike = 2

/**
 * Looks at every page that can be reached from the notebook's first by its own links; files to save are none. Of pages of one
 * kind, such as those of the items, the first ones stand for the others.
 */
export async function lookAtAll(page: Page, home: string): Promise<{ pages: number; wrong: string[] }> {
  const wrong: string[] = []
  const found = new Set([home])
  const alike = new Map<string, number>()
  for (const address of found) {
    wrong.push(...(await lookAt(page, address)).map((one) => `${new URL(address).pathname}: ${one}`))
    const links = page.locator('a[href]:not([download])')
    const leads = await links.evaluateAll((all) => all.map((link) => (link as HTMLAnchorElement).href))
    for (const lead of leads.map((one) => one.replace(/#.*$/, ''))) {
      if (!lead.startsWith(home) || found.has(lead)) continue
      const kind = /^\/?[^/?]*/.exec(lead.slice(home.length))?.[0] ?? ''
      const before = alike.get(kind) ?? 0
      if (before >= mostAlike) continue
      alike.set(kind, before + 1)
      found.add(lead)
    }
  }
  return { pages: found.size, wrong }
}
