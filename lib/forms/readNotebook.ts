import type { Notebook } from '../core/agreement/notebook.ts'
import { currencyDigits } from '../core/amounts/currency.ts'
import { assert } from '../core/assert.ts'
import { type Fault, type FaultFacts, wholeFile } from '../core/faults.ts'
import { held, type Result, refused, refusedAll } from '../core/result.ts'
import { nothingAsked, placesOf, shareItem } from '../core/shares/itemShares.ts'
import { issueFault } from './issueFault.ts'
import { jsonBreak } from './jsonBreak.ts'
import { joinPath, pathText, scanJson } from './jsonText.ts'
import { shown } from './leaf.ts'
import { notebookSchema } from './notebookSchema.ts'

/** A notebook file that holds. */
export type ReadNotebook = {
  /** The file as it stands, unknown keys and missing keys included: what is stored, hashed and exported. */
  readonly document: NotebookDocument
  /** The same with every default filled in: what the rules read. */
  readonly notebook: Notebook
}

/** A JSON object that has passed `readNotebook`. */
export type NotebookDocument = { readonly [key: string]: unknown }

/** No notebook nests deeper; a file that does is no notebook, and could exhaust a reader's stack. */
const deepest = 64

/**
 * Whether the shares of items that hold are tried where the file does not, so that all that is wrong comes at once. By
 * themselves they never refuse a file, so whoever changes one place in it needs not hear of them.
 */
export type SharesTried = 'shares tried' | 'file only'

/**
 * Reads a notebook file from its bytes or its text. Refused with every fault that can be found at once, each with its
 * path. Whether the shares can be worked out is another question: see `statementOf`.
 */
export function readNotebook(
  file: Uint8Array | string,
  tried: SharesTried = 'shares tried',
): Result<ReadNotebook> {
  const text = typeof file === 'string' ? held(file) : decode(file)
  if (!text.ok) return text
  const parsed = parse(text.value.replace(/^\uFEFF/, ''))
  return parsed.ok ? readDocument(parsed.value, tried) : parsed
}

function decode(bytes: Uint8Array): Result<string> {
  try {
    return held(new TextDecoder('utf-8', { fatal: true, ignoreBOM: true }).decode(bytes))
  } catch {
    return refused(whole({ kind: 'not-json', detail: 'it is not UTF-8 text' }))
  }
}

function parse(text: string): Result<unknown> {
  let document: unknown
  try {
    document = JSON.parse(text)
  } catch {
    const place = jsonBreak(text)
    assert(place !== undefined, 'what JSON.parse refuses breaks somewhere')
    return refused(whole({ kind: 'json-breaks', ...place }))
  }
  const scan = scanJson(text)
  if (scan.depth > deepest) return refused(whole({ kind: 'too-deep', limit: deepest }))
  if (scan.halfCharacter)
    return refused(whole({ kind: 'not-json', detail: 'a text in it holds half of a character' }))
  if (scan.endlessNumber)
    return refused(whole({ kind: 'not-json', detail: 'a number in it is too large to be kept' }))
  if (scan.doubledKeys.length > 0) {
    return refusedAll(scan.doubledKeys.map(({ path, key }) => ({ path, kind: 'key-twice', key })))
  }
  return held(document)
}

/** Like `readNotebook`, for a document that is JSON data already. */
export function readDocument(document: unknown, tried: SharesTried = 'shares tried'): Result<ReadNotebook> {
  if (!isObject(document)) return refused(whole({ kind: 'not-a', what: 'object', found: shown(document) }))
  const heading = headingFaults(document)
  if (heading.length > 0) return refusedAll(heading)
  const currency = currencyOf(document)
  const digits = currencyDigits(currency)
  const read = notebookSchema(currency, digits ?? 6, 'keep').safeParse(document)
  const faults = [
    ...(digits === undefined ? [currencyFault(document.currency)] : []),
    ...(read.error?.issues ?? [])
      .filter((issue) => issue.path[0] !== 'currency')
      .map((issue) => issueFault(issue, document)),
    ...idFaults(document),
  ]
  if (faults.length > 0) {
    const shares = tried === 'shares tried' ? shareFaultsElsewhere(document, faults) : []
    return refusedAll(inFileOrder([...faults, ...shares], document))
  }
  return held({ document, notebook: read.data as unknown as Notebook })
}

function headingFaults(document: NotebookDocument): Fault[] {
  const faults: Fault[] = []
  if (document.format !== 'mearing-notebook')
    faults.push({ path: 'format', kind: 'wrong-format', found: shown(document.format ?? '') })
  if (document.version !== 1)
    faults.push({ path: 'version', kind: 'wrong-version', found: shown(document.version ?? '') })
  return faults
}

/** '' where it is no text: then no currency is known by it. */
function currencyOf(document: NotebookDocument): string {
  return typeof document.currency === 'string' ? document.currency : ''
}

function currencyFault(found: unknown): Fault {
  if (found === undefined || found === '') return { path: 'currency', kind: 'needed', what: 'text' }
  return { path: 'currency', kind: 'currency-unknown', found: shown(found) }
}

/** Ids are unique over sections, gates and common costs together, and `for` names one of them. */
function idFaults(document: NotebookDocument): Fault[] {
  const faults: Fault[] = []
  const known = new Set<string>()
  for (const list of ['sections', 'gates', 'common']) {
    listOf(document[list]).forEach((item, index) => {
      const id = isObject(item) ? item.id : undefined
      if (typeof id !== 'string' || id === '') return
      if (known.has(id)) faults.push({ path: `${list}[${index}].id`, kind: 'id-twice', id })
      known.add(id)
    })
  }
  // Enough to show what an id looks like; a file with a thousand items would repeat them all in each fault.
  const firstKnown = [...known].slice(0, 12)
  listOf(document.contributions).forEach((entry, index) => {
    const id = isObject(entry) ? entry.for : undefined
    if (typeof id !== 'string' || id === '' || known.has(id)) return
    faults.push({ path: `contributions[${index}].for`, kind: 'id-unknown', id, known: firstKnown })
  })
  return faults
}

/**
 * Where the file does not hold, the shares of those items that do are still tried, so that all faults come at once:
 * an item is tried alone, in a notebook of nothing else.
 */
function shareFaultsElsewhere(document: NotebookDocument, faults: readonly Fault[]): Fault[] {
  const currency = currencyOf(document)
  const digits = currencyDigits(currency)
  if (digits === undefined) return []
  const atFault = new Set(faults.map((fault) => /^(?:sections|gates|common)\[[0-9]+\]/.exec(fault.path)?.[0]))
  const found: Fault[] = []
  for (const list of ['sections', 'gates', 'common']) {
    listOf(document[list]).forEach((item, index) => {
      const path = joinPath(list, index)
      if (atFault.has(path)) return
      const alone = {
        format: 'mearing-notebook',
        version: 1,
        currency: document.currency,
        households: { a: {}, b: {} },
        [list]: [item],
      }
      const read = notebookSchema(currency, digits, 'keep').safeParse(alone)
      const place = read.success ? placesOf(read.data as unknown as Notebook)[0] : undefined
      const shared = place && shareItem({ ...place, path }, digits, nothingAsked)
      // What a common cost would be laid on is not there when it is tried alone.
      if (shared && !shared.ok) found.push(...shared.faults.filter(({ kind }) => kind !== 'spread-nowhere'))
    })
  }
  return found
}

/**
 * Paths of keys that the format does not know, in a document that holds. They are kept and shown; signing is refused
 * while there are any.
 */
export function unknownKeys(document: NotebookDocument): string[] {
  const currency = currencyOf(document)
  const strict = notebookSchema(currency, currencyDigits(currency) ?? 0, 'find').safeParse(document)
  return (strict.error?.issues ?? []).flatMap((issue) =>
    issue.code === 'unrecognized_keys' ? issue.keys.map((key) => pathText([...issue.path, key])) : [],
  )
}

/** Faults in the order in which a reader meets the fields in the file; a missing key comes after those that are there. */
function inFileOrder(faults: readonly Fault[], document: NotebookDocument): Fault[] {
  return faults
    .map((fault) => ({ fault, places: placesAlong(fault.path, document) }))
    .sort((left, right) => comparePlaces(left.places, right.places))
    .map(({ fault }) => fault)
}

/** For each step of a path, the place of its key in the object, or its index in the list. */
function placesAlong(path: string, document: NotebookDocument): number[] {
  let here: unknown = document
  return [...path.matchAll(/[^.[\]]+/g)].map(([step]) => {
    const keys = isObject(here) ? Object.keys(here) : []
    const place = Array.isArray(here) ? Number(step) : keys.indexOf(step)
    here = here !== null && typeof here === 'object' ? (here as Record<string, unknown>)[step] : undefined
    return place < 0 ? Number.POSITIVE_INFINITY : place
  })
}

function comparePlaces(left: readonly number[], right: readonly number[]): number {
  const step = left.findIndex((place, index) => place !== right[index])
  if (step < 0 || right[step] === undefined) return left.length - right.length
  return (left[step] ?? 0) < right[step] ? -1 : 1
}

function whole(facts: FaultFacts): Fault {
  return { path: wholeFile, ...facts }
}

export function isObject(value: unknown): value is Record<string, unknown> {
  return value !== null && typeof value === 'object' && !Array.isArray(value)
}

function listOf(value: unknown): unknown[] {
  return Array.isArray(value) ? value : []
}
