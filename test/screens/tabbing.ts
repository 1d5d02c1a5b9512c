import type { Page } from '@playwright/test'

export type Walk = {
  /** What can be pressed or filled in, and was not reached. */
  readonly unreached: readonly string[]
  /** What was reached and had no visible outline, or lay under something else. */
  readonly unseen: readonly string[]
  readonly reached: number
}

type Stop = { readonly at: number; readonly name: string; readonly fault: string | undefined }

/**
 * Numbers everything on the page that can be pressed or filled in, and says what each is. One radio stands for its group.
 * A link that only a pointer is shown, over a drawing, needs no stop where another link of the page leads the same way.
 */
function numberAll(page: Page): Promise<string[]> {
  return page.evaluate(() => {
    const whole = 'a[href], button, input:not([type=hidden]), select, textarea, summary, [tabindex="0"]'
    const groups = new Set<string>()
    const found: string[] = []
    const leads = [...document.querySelectorAll<HTMLAnchorElement>('a[href]:not([aria-hidden])')]
    const ways = new Set(leads.map((link) => link.href))
    for (const one of document.querySelectorAll<HTMLElement>(whole)) {
      if (
        !one.checkVisibility({ visibilityProperty: true }) ||
        one.matches(':disabled') ||
        one.closest('[inert]') !== null
      )
        continue
      if (one instanceof HTMLAnchorElement && one.ariaHidden === 'true' && ways.has(one.href)) continue
      if (one instanceof HTMLInputElement && one.type === 'radio') {
        if (groups.has(one.name)) continue
        groups.add(one.name)
        for (const other of document.getElementsByName(one.name)) other.dataset.tabStop = String(found.length)
      }
      one.dataset.tabStop = String(found.length)
      const name = one.getAttribute('aria-label') ?? one.textContent?.trim().slice(0, 40)
      found.push(`${one.tagName.toLowerCase()}: ${name || one.id}`)
    }
    return found
  })
}

/** What has the focus, and whether that can be seen; undefined where nothing on the page has it. */
function focused(page: Page): Promise<Stop | undefined> {
  return page.evaluate(() => {
    const one = document.activeElement as HTMLElement | null
    if (one === null || one === document.body) return undefined
    const name = `${one.tagName.toLowerCase()}: ${one.textContent?.trim().slice(0, 40) || one.id}`
    const at = Number(one.dataset.tabStop ?? -1)
    const outlined = [one, one.parentElement, ...one.querySelectorAll('*')].some((box) => {
      if (box === null) return false
      const { outlineStyle, outlineWidth } = getComputedStyle(box)
      return outlineStyle !== 'none' && Number.parseFloat(outlineWidth) >= 2
    })
    const { left, top, right, bottom } = one.getBoundingClientRect()
    const within = (low: number, high: number, most: number) => (Math.max(low, 0) + Math.min(high, most)) / 2
    const x = within(left, right, innerWidth)
    const y = within(top, bottom, innerHeight)
    const out = right <= 0 || left >= innerWidth || bottom <= 0 || top >= innerHeight
    // Of a thing that is partly covered the rest is enough: three heights are tried.
    const seen = [y, top + 2, bottom - 2].some((height) => {
      const hit = document.elementFromPoint(x, height)
      return hit !== null && (one.contains(hit) || hit.contains(one) || hit.closest('label')?.contains(one))
    })
    const fault = !outlined ? 'no outline' : out ? 'out of sight' : seen ? undefined : 'covered'
    return { at, name, fault }
  })
}

/** Goes through the whole page by Tab, from its top, until the focus leaves the page or comes back to where it began. */
export async function walkByTab(page: Page): Promise<Walk> {
  const all = await numberAll(page)
  const reached = new Set<number>()
  const unseen: string[] = []
  let first: number | undefined
  // Twice as many presses as things: a trap ends here too, and what lies behind it is not reached.
  for (let press = 0; press < 2 * all.length + 5; press += 1) {
    await page.keyboard.press('Tab')
    const stop = await focused(page)
    if (stop === undefined) {
      if (reached.size > 0) break
      continue
    }
    if (stop.at >= 0 && stop.at === first) break
    first ??= stop.at >= 0 ? stop.at : undefined
    reached.add(stop.at)
    if (stop.fault !== undefined) unseen.push(`${stop.name}: ${stop.fault}`)
  }
  return { unreached: all.filter((_, at) => !reached.has(at)), unseen, reached: reached.size }
}
