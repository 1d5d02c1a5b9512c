/** One thing that differs between two states of the same item, in words. */
export type Difference = { readonly label: string; readonly before: string; readonly after: string }

const nothing = '(nothing)'

/**
 * What differs between two pieces of a notebook, field by field, with names that a reader knows: "Height: 6 ft before,
 * 6 ft 6 in now". `null` and `undefined` stand for "no such item".
 */
export function differences(before: unknown, after: unknown): readonly Difference[] {
  const [was, is] = [fieldsOf(before), fieldsOf(after)]
  return [...new Set([...was.keys(), ...is.keys()])].flatMap((label) => {
    const [old, now] = [was.get(label) ?? nothing, is.get(label) ?? nothing]
    return old === now ? [] : [{ label, before: old, after: now }]
  })
}

/** "Height: 6 ft before, 6 ft 6 in now". */
export function differenceWords({ label, before, after }: Difference): string {
  if (before === nothing) return `${label}: now ${after}`
  if (after === nothing) return `${label}: was ${before}, now empty`
  return `${label}: ${before} before, ${after} now`
}

function fieldsOf(data: unknown): Map<string, string> {
  const fields = new Map<string, string>()
  collect(unwrapped(data), [], fields)
  return fields
}

/** Items that hold money are kept together with their currency, which says nothing while it stays the same. */
function unwrapped(data: unknown): unknown {
  if (data !== null && typeof data === 'object' && 'item' in data && 'currency' in data) {
    return { currency: data.currency, ...(data.item as object) }
  }
  return data
}

function collect(value: unknown, path: readonly (string | number)[], fields: Map<string, string>): void {
  if (value === null || value === undefined || value === '') return
  if (Array.isArray(value)) {
    for (const [index, entry] of value.entries()) collect(entry, [...path, index], fields)
    return
  }
  if (typeof value === 'object') {
    for (const [key, entry] of Object.entries(value)) {
      if (key !== 'id') collect(entry, [...path, key], fields)
    }
    return
  }
  fields.set(labelOf(path), wordsOf(value, path.at(-1)))
}

function wordsOf(value: unknown, key: string | number | undefined): string {
  if (typeof value === 'boolean') return value ? 'yes' : 'no'
  const chosen = typeof key === 'string' && chosenKeys.has(key)
  return (chosen ? wordFor(valueWords, String(value)) : undefined) ?? String(value)
}

/** A file may bring any key, and an object knows `constructor` without being told. */
function wordFor(words: Readonly<Record<string, string>>, key: string): string | undefined {
  return Object.hasOwn(words, key) ? words[key] : undefined
}

/** Keys whose values are words of the file format; anywhere else a word is what somebody typed. */
const chosenKeys = new Set([
  'principle',
  'household',
  'by',
  'suppliedBy',
  'side',
  'owner',
  'upkeep',
  'measuredFrom',
  'stands',
  'who',
])

function labelOf(path: readonly (string | number)[]): string {
  const words = path.map((key) =>
    typeof key === 'number' ? String(key + 1) : (wordFor(fieldWords, key) ?? key),
  )
  const label = words.reduce(
    (text, word) => (/^[0-9]+$/.test(word) ? `${text} ${word}` : text === '' ? word : `${text}, ${word}`),
    '',
  )
  return label === '' ? 'Text' : label.charAt(0).toUpperCase() + label.slice(1)
}

const fieldWords: Readonly<Record<string, string>> = {
  a: 'household a',
  b: 'household b',
  at: 'at station',
  from: 'from station',
  to: 'to station',
  agreed: 'agreed',
  measuredFrom: 'measured from',
  materials: 'materials',
  labour: 'labour',
  share: 'share',
  together: 'both together',
  principle: 'principle',
  basicShare: 'basic fence',
  upgradeShare: 'above the basic fence',
  basic: 'cost of the basic fence',
  aloneA: 'household a building alone',
  aloneB: 'household b building alone',
  what: 'what',
  quantity: 'quantity',
  unit: 'unit',
  unitPrice: 'unit price',
  taxPercent: 'tax percent',
  suppliedBy: 'supplied by',
  credit: 'credit',
  task: 'task',
  hours: 'hours',
  rate: 'rate',
  by: 'by',
  counts: 'counts',
  upkeep: 'kept by',
  owner: 'owned by',
  opens: 'opens',
  opening: 'clear opening',
  uses: 'passages a week',
  stands: 'stands on',
  parties: 'party',
  capacity: 'capacity',
  stations: 'station',
  gradeA: 'ground of household a',
  gradeB: 'ground of household b',
  gradeFence: 'ground under the fence',
  evidence: 'position rests on',
  name: 'name',
}

const valueWords: Readonly<Record<string, string>> = {
  equal: 'halves',
  percent: 'agreed parts',
  one: 'one household',
  length: 'by length',
  use: 'by use',
  benefit: 'by benefit',
  difference: 'pay the difference',
  saving: 'share the saving',
  a: 'household a',
  b: 'household b',
}
