import { currencyDigits } from '../core/amounts/currency.ts'
import { minorUnits } from '../core/amounts/money.ts'
import { isNumber } from '../core/amounts/typedNumber.ts'
import { type Around, valueInWords } from './differenceValues.ts'
import { fieldWords, fieldWordsIn, valueWords } from './fieldWords.ts'
import type { HouseholdNames } from './labels.ts'
import { moneyWords } from './money.ts'

/** One thing that differs between two states of the same item, in words. */
export type Difference = { readonly label: string; readonly before: string; readonly after: string }

/** What is known of the notebook beside the pieces themselves. */
export type KnownBeside = {
  /** Of figures of money, where the pieces do not say it. */
  readonly currency?: string
  /** Without them it is "household a" and "household b". */
  readonly names?: HouseholdNames
}

const nothing = '(nothing)'

/**
 * What differs between two pieces of a notebook, field by field, with names that a reader knows: "Height: 6 ft before,
 * 6 ft 6 in now". `null` and `undefined` stand for "no such item". Two texts that read the same, such as 25 and 25.00 of a
 * currency, are shown as they were typed.
 */
export function differences(before: unknown, after: unknown, known: KnownBeside = {}): readonly Difference[] {
  const [was, is] = [fieldsOf(before, known), fieldsOf(after, known)]
  return [...new Set([...was.keys(), ...is.keys()])].flatMap((label) => {
    const [old, now] = [was.get(label) ?? absent, is.get(label) ?? absent]
    if (old.typed === now.typed) return []
    return old.words === now.words
      ? [{ label, before: old.typed, after: now.typed }]
      : [{ label, before: old.words, after: now.words }]
  })
}

/** "Height: 6 ft before, 6 ft 6 in now". */
export function differenceWords({ label, before, after }: Difference): string {
  if (before === nothing) return `${label}: now ${after}`
  if (after === nothing) return `${label}: ${before} before, nothing now`
  return `${label}: ${before} before, ${after} now`
}

/** Said where an item was saved anew, and nothing in it reads otherwise. */
export const sameInWords = 'It reads as before: only what the app notes beside it changed.'

type Field = { readonly typed: string; readonly words: string }
const absent: Field = { typed: nothing, words: nothing }

function fieldsOf(data: unknown, known: KnownBeside): Map<string, Field> {
  const fields = new Map<string, Field>()
  const whole = unwrapped(data)
  const { currency = known.currency } = objectOf(whole)
  const around = { siblings: {}, inside: '', currency: typeof currency === 'string' ? currency : '' }
  collect(whole, [], around, { fields, names: known.names })
  return fields
}

function objectOf(value: unknown): Readonly<Record<string, unknown>> {
  return value !== null && typeof value === 'object' ? (value as Record<string, unknown>) : {}
}

/** Items that hold money are kept together with their currency, which says nothing while it stays the same. */
function unwrapped(data: unknown): unknown {
  if (data !== null && typeof data === 'object' && 'item' in data && 'currency' in data) {
    const { currency, item } = data
    return { currency, ...(item as object), ...costSoFar(data, currency) }
  }
  if (data !== null && typeof data === 'object' && 'arrangements' in data && 'currency' in data) {
    return { currency: data.currency, ...(data.arrangements as object) }
  }
  return data
}

/** What an item came to, where that is further above the plan than was agreed. */
function costSoFar(data: object, currency: unknown): { readonly costSoFar?: string } {
  if (!('beyondTolerance' in data) || typeof data.beyondTolerance !== 'string') return {}
  const figure = data.beyondTolerance
  const digits = typeof currency === 'string' ? currencyDigits(currency) : undefined
  const known = digits !== undefined && isNumber(figure.replace(/^-/, ''), digits)
  const amount = known ? moneyWords(minorUnits(figure, digits), String(currency)) : figure
  return { costSoFar: `${amount}, further above the plan than the tolerance agreed on` }
}

function collect(
  value: unknown,
  path: readonly (string | number)[],
  around: Around,
  into: { readonly fields: Map<string, Field>; readonly names: HouseholdNames | undefined },
): void {
  if (value === null || value === undefined || value === '') return
  if (Array.isArray(value)) {
    for (const [index, entry] of value.entries()) collect(entry, [...path, index], around, into)
    return
  }
  if (typeof value === 'object') {
    const inside = path.findLast((one) => typeof one === 'string')
    const within: Around = { ...around, siblings: objectOf(value), inside: String(inside ?? '') }
    for (const [key, entry] of Object.entries(value)) {
      if (key !== 'id') collect(entry, [...path, key], within, into)
    }
    return
  }
  into.fields.set(labelOf(path, into.names), {
    typed: typedOf(value),
    words: wordsOf(value, path.at(-1), around, into.names),
  })
}

function typedOf(value: unknown): string {
  return typeof value === 'boolean' ? (value ? 'yes' : 'no') : String(value)
}

function wordsOf(
  value: unknown,
  key: string | number | undefined,
  around: Around,
  names: HouseholdNames | undefined,
): string {
  if (typeof value !== 'string' || typeof key !== 'string') return typedOf(value)
  // Words of the file format stand at a few keys only; anywhere else a word is what somebody typed.
  const words = Object.hasOwn(valueWords, key) ? valueWords[key] : undefined
  const word = words ? wordFor(words, value) : undefined
  return word === undefined ? valueInWords(value, key, around) : named(word, names)
}

/** A word of ours with the households by their names. */
function named(words: string, names: HouseholdNames | undefined): string {
  return names === undefined
    ? words
    : words.replace(/\bhousehold ([ab])\b/, (_whole, which) => (which === 'a' ? names.a : names.b))
}

/** A file may bring any key, and an object knows `constructor` without being told. */
function wordFor(words: Readonly<Record<string, string>>, key: string): string | undefined {
  return Object.hasOwn(words, key) ? words[key] : undefined
}

/** What one row of a list is called, where the list's own word is that of a pot. */
const rowWords: Readonly<Record<string, string>> = { materials: 'cost line', labour: 'work line' }

/** What the field at a path is called: "Rails, one above the other". */
export function labelOf(path: readonly (string | number)[], names?: HouseholdNames): string {
  const words = path.map((key, index) => {
    if (typeof key === 'number') return String(key + 1)
    const row = typeof path[index + 1] === 'number' ? wordFor(rowWords, key) : undefined
    const word = row ?? wordInside(path.slice(0, index), key)
    return word === undefined ? key : named(word, names)
  })
  const label = words.reduce(
    (text, word) =>
      /^[0-9]+$/.test(word) ? `${text || 'row'} ${word}` : text === '' ? word : `${text}, ${word}`,
    '',
  )
  return label === '' ? 'Text' : label.charAt(0).toUpperCase() + label.slice(1)
}

/** A key's word, which may be another inside some things: the opening of a gate and that of a mesh. */
function wordInside(around: readonly (string | number)[], key: string): string | undefined {
  const parent = around.findLast((one) => typeof one === 'string')
  const own =
    typeof parent === 'string' && Object.hasOwn(fieldWordsIn, parent) ? fieldWordsIn[parent] : undefined
  return (own ? wordFor(own, key) : undefined) ?? wordFor(fieldWords, key)
}
