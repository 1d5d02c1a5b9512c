import type { NotebookDocument } from '../../lib/forms/readNotebook.ts'

/** Keys that stand in a pair, one for each household. */
const pairs: Readonly<Record<string, string>> = {
  a: 'b',
  b: 'a',
  aloneA: 'aloneB',
  aloneB: 'aloneA',
  gradeA: 'gradeB',
  gradeB: 'gradeA',
}

/** Keys whose value names a household. */
const naming = new Set([
  'household',
  'suppliedBy',
  'by',
  'side',
  'who',
  'owner',
  'upkeep',
  'stands',
  'measuredFrom',
  'toward',
])

/** The same notebook with the two households under each other's letter. */
export function withHouseholdsSwapped(document: NotebookDocument): NotebookDocument {
  return swapped(document) as NotebookDocument
}

function swapped(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(swapped)
  if (value === null || typeof value !== 'object') return value
  return Object.fromEntries(
    Object.entries(value).map(([key, entry]) => [
      pairs[key] ?? key,
      naming.has(key) && typeof entry === 'string' ? (pairs[entry] ?? entry) : swapped(entry),
    ]),
  )
}
