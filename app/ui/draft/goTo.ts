/** Brings an element into view and puts the focus on it, opening whatever it is folded away in. */
export function goTo(element: HTMLElement): void {
  let fold = element.closest('details')
  while (fold !== null) {
    fold.open = true
    fold = fold.parentElement?.closest('details') ?? null
  }
  const label = element.closest('.field') ?? element
  label.scrollIntoView({ block: 'start' })
  element.focus({ preventScroll: true })
}

/**
 * Brings an element into the window, clear of what sticks to its edges. What is in sight already stays where it is; of what
 * is larger than half of the window the beginning comes into sight.
 */
export function bringIntoSight(element: HTMLElement): void {
  const fits = element.getBoundingClientRect().height < window.innerHeight / 2
  element.scrollIntoView({ block: fits ? 'nearest' : 'start' })
}

/**
 * The field that an id names inside a form, else the first inside what it names, else whatever stands for what would
 * hold it: a field may be there only once a button was pressed, and then that button has the shorter id.
 */
export function fieldNamed(form: ParentNode, id: string): HTMLElement | undefined {
  const parts = id.split('-')
  for (let count = parts.length; count > 1; count -= 1) {
    const name = CSS.escape(parts.slice(0, count).join('-'))
    const own = form.querySelector<HTMLElement>(`#${name}`)
    if (own !== null) return own
    const inside =
      count === parts.length
        ? form.querySelector<HTMLElement>(`:is(input, select, textarea)[id^="${name}-"]`)
        : null
    if (inside !== null) return inside
  }
  return undefined
}
