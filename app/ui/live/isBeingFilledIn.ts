/**
 * Whether something on the page was typed or chosen and not sent yet, or is being typed: in forms that keep a draft, and in
 * the small ones around a button.
 */
export function isBeingFilledIn(page: Document): boolean {
  if (page.querySelector('form[data-unsaved]') !== null) return true
  const active = page.activeElement
  if (active?.matches('main :is(input, select, textarea)')) return true
  return [...page.querySelectorAll<HTMLFormElement>('main form.press-form')].some((form) =>
    [...form.elements].some(
      (field) =>
        (field instanceof HTMLInputElement &&
          field.type !== 'hidden' &&
          (field.value !== field.defaultValue || field.checked !== field.defaultChecked)) ||
        (field instanceof HTMLTextAreaElement && field.value !== field.defaultValue),
    ),
  )
}
