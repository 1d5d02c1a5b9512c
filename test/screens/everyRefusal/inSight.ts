import type { Locator } from '@playwright/test'

/**
 * What keeps somebody from reading words that stand in a place: nothing there says them, they lie outside of the window, or
 * something lies over them. Empty where they can be read. Words that take more than the window are read from their first line.
 */
export async function hiddenFromSight(place: Locator, words: string): Promise<string[]> {
  return place.evaluate((whole, sought) => {
    const plain = (node: Node) => (node.textContent ?? '').replace(/\s+/g, ' ').trim()
    if (!plain(whole).includes(sought)) return [`it says “${plain(whole)}”`]
    let said: Element = whole
    for (;;) {
      const inside = [...said.children].find((child) => plain(child).includes(sought))
      if (inside === undefined) break
      said = inside
    }
    const box = said.getBoundingClientRect()
    const height = document.documentElement.clientHeight
    const lines = box.height > height ? [box.top + 6] : [box.top + 6, box.bottom - 6]
    return lines.flatMap((y) => {
      const x = Math.min(box.left + 12, box.right - 2)
      if (y < 0 || y > height) return [`it lies at ${Math.round(y)} px of ${height}`]
      const top = document.elementFromPoint(x, y)
      const seen = top !== null && (said.contains(top) || top.contains(said))
      return seen ? [] : [`“${top?.className || top?.tagName}” lies over it at ${Math.round(y)} px`]
    })
  }, words)
}

/**
 * Whether whoever has the page read aloud hears of it: as an alert or a status, because the focus goes there, or because it
 * is all that a new page says.
 */
export async function isAnnounced(place: Locator): Promise<boolean> {
  return place.evaluate(
    (element) =>
      element.closest('[role=alert], [role=status], [aria-live=polite], [aria-live=assertive]') !== null ||
      element.contains(document.activeElement) ||
      element === document.body,
  )
}
