/** What a field is called on the page, and what it stands in: its group, its list and its row, outermost first. */
export type FieldName = { readonly label: string; readonly within: readonly string[] }

/**
 * The entries of a summary. Where several read the same, the field's label stands before each, with all that the field
 * stands in where the labels are the same too. What has no field stays as it is.
 */
export function namedEntries(
  entries: readonly { readonly message: string; readonly name: FieldName | undefined }[],
): readonly string[] {
  return entries.map(({ message, name }) => {
    const alike = entries.filter((other) => other.message === message)
    if (alike.length < 2 || name === undefined || name.label === '') return message
    const sameLabel = alike.filter((other) => other.name?.label === name.label)
    return `${(sameLabel.length < 2 ? [name.label] : [...name.within, name.label]).join(', ')}: ${message}`
  })
}

/** The name of a field as the page shows it; undefined where the page has no such field. */
export function fieldNameOn(page: Document, id: string): FieldName | undefined {
  const field = page.getElementById(id)?.closest('.field')
  if (!field) return undefined
  const within: string[] = []
  for (let around = field.parentElement; around !== null && around.tagName !== 'FORM'; ) {
    const place = placeName(around)
    if (place !== '') within.unshift(place)
    around = around.parentElement
  }
  return { label: wordsOf(field.querySelector('.field-label, .rows-label, .choice label')), within }
}

function placeName(around: Element): string {
  if (around instanceof HTMLElement && around.dataset.part !== undefined) return around.dataset.part
  if (around.matches('.row')) return wordsOf(around.querySelector('.row-name'))
  return around.matches('fieldset') ? wordsOf(around.querySelector('legend')) : ''
}

/** Longer names of rows are cut: they are there to be told apart, and somebody may have typed a page. */
const longestName = 60

/** Without the sign at its end: another follows. */
function wordsOf(element: Element | null): string {
  const words = (element?.textContent ?? '').replaceAll(/\s+/g, ' ').trim()
  return words.length > longestName ? `${words.slice(0, longestName)}…` : words.replace(/[\s:.?]+$/, '')
}
