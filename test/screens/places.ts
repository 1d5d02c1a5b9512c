import type { Locator, Page } from '@playwright/test'

/** Where something stands in the window, in CSS pixels. */
export type Place = {
  readonly left: number
  readonly top: number
  readonly right: number
  readonly bottom: number
}

/** Where an element stands in the window at this moment, also where it is scrolled out of it. */
export function placeOf(element: Locator): Promise<Place> {
  return element.evaluate((one) => {
    const { left, top, right, bottom } = one.getBoundingClientRect()
    return { left, top, right, bottom }
  })
}

/** Whether two places have more in common than an edge. */
export function covers(one: Place, other: Place): boolean {
  return (
    one.left < other.right - 0.5 &&
    other.left < one.right - 0.5 &&
    one.top < other.bottom - 0.5 &&
    other.top < one.bottom - 0.5
  )
}

/** Whether all of an element is inside the window. */
export async function inSight(page: Page, element: Locator): Promise<boolean> {
  const { left, top, right, bottom } = await placeOf(element)
  const window = page.viewportSize()
  return window !== null && left >= 0 && top >= 0 && right <= window.width && bottom <= window.height
}
