import { isObject } from './readNotebook.ts'

/** What a missing key of the file means; a draft that says the same as a missing key leaves the file as it was. */
const meansMissing: Readonly<Record<string, unknown>> = {
  changed: false,
  counts: true,
  credit: false,
  done: false,
  doubled: false,
  rakes: false,
  reclaimed: false,
  taxPercent: '0',
  welded: false,
}

/**
 * Takes out of a draft what a form adds without saying anything: empty texts, defaults, empty groups. What stands in
 * the file already is left as it stands, so that looking at a page and saving it changes nothing, not even the hash.
 *
 * @param draft JSON data as the form sends it
 * @param current the same place in the file as it stands; undefined on a new one
 */
export function tidyDraft(draft: unknown, current: unknown): unknown {
  if (Array.isArray(draft)) {
    const before = Array.isArray(current) ? current : []
    return draft.map((entry, index) => tidyDraft(entry, before[index]))
  }
  if (!isObject(draft)) return draft
  const before = isObject(current) ? current : {}
  const kept = Object.entries(draft).flatMap(([key, value]) => {
    const tidy = tidyDraft(value, before[key])
    return key in before && sameEmptiness(tidy, before[key])
      ? [[key, tidy]]
      : saysNothing(key, tidy)
        ? []
        : [[key, tidy]]
  })
  return Object.fromEntries(kept)
}

/** A file that has an empty text keeps it; a text that was emptied goes, since figures may not be empty. */
function sameEmptiness(value: unknown, before: unknown): boolean {
  return JSON.stringify(value) === JSON.stringify(before)
}

function saysNothing(key: string, value: unknown): boolean {
  if (value === '' || value === undefined || value === null) return true
  if (key in meansMissing) return value === meansMissing[key]
  if (Array.isArray(value)) return value.length === 0
  return isObject(value) && Object.keys(value).length === 0
}
