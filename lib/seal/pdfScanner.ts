import type { PdfText, PdfValue } from './pdfValue.ts'
import { readLimits } from './readLimits.ts'
import { RecordRefusal, refuseBuild } from './recordRefusal.ts'

/** How many values may still be read, and how many there were to be. */
export type ValuesLeft = { values: number; readonly limit: number }

export function valuesLeft(limit: number): ValuesLeft {
  return { values: limit, limit }
}

const [regular, whitespace, delimiter] = [0, 1, 2]
/** What each byte is among the other characters (ISO 32000-1, 7.2.2). */
const classes = new Uint8Array(256).fill(regular)
for (const byte of [0x00, 0x09, 0x0a, 0x0c, 0x0d, 0x20]) classes[byte] = whitespace
for (const character of '()<>[]{}/%') classes[character.charCodeAt(0)] = delimiter

/** In bytes; the longest that this program writes is the signature, of 8,192 digits. */
const longestText = 100_000

/**
 * Reads values one after the other from bytes (ISO 32000-1, 7.2 and 7.3), never deeper and never more than the limits
 * say. Comments are refused: this program writes none between values.
 */
export class PdfScanner {
  readonly bytes: Buffer
  position: number
  private readonly left: ValuesLeft

  constructor(bytes: Uint8Array, position: number, left: ValuesLeft) {
    this.bytes = bufferOf(bytes)
    this.position = position
    this.left = left
  }

  skipWhitespace(): void {
    while (classOf(this.bytes[this.position]) === whitespace) this.position += 1
  }

  /** Whether these characters stand here; if so, goes on after them. */
  take(word: string): boolean {
    for (let index = 0; index < word.length; index += 1)
      if (this.bytes[this.position + index] !== word.charCodeAt(index)) return false
    this.position += word.length
    return true
  }

  expect(word: string): void {
    if (!this.take(word)) refuseBuild(`“${word.trim()}” is missing at byte ${this.position}`)
  }

  /** Counts values against the limit; a letter of a page counts as one too. */
  count(values: number): void {
    this.left.values -= values
    if (this.left.values < 0)
      throw new RecordRefusal({ kind: 'too-much', what: 'values', limit: this.left.limit })
  }

  /** The next value; a word that is none, such as an operator of a page, is handed back as text. */
  next(depth = 0): PdfValue | string {
    if (depth > readLimits.depth) throw new RecordRefusal({ kind: 'too-deep', limit: readLimits.depth })
    this.count(1)
    this.skipWhitespace()
    switch (this.bytes[this.position]) {
      case 0x2f: // /
        return { kind: 'name', name: this.name() }
      case 0x28: // (
        return this.literalText()
      case 0x5b: // [
        this.position += 1
        return this.list(depth)
      case 0x3c: // <
        if (this.bytes[this.position + 1] !== 0x3c) return this.hexadecimalText()
        this.position += 2
        return this.dictionary(depth)
      default:
        return this.word()
    }
  }

  /** The next value; anything else is refused. */
  value(depth = 0): PdfValue {
    const value = this.next(depth)
    return typeof value === 'string' ? refuseBuild(`“${value}” is no value`) : value
  }

  /** A whole number without a sign, of at most ten digits. */
  wholeNumber(): number {
    const from = this.position
    while (this.position - from < 11 && isDigit(this.bytes[this.position])) this.position += 1
    const length = this.position - from
    if (length === 0 || length > 10) refuseBuild(`a whole number is missing at byte ${from}`)
    return Number(this.bytes.toString('latin1', from, this.position))
  }

  private list(depth: number): PdfValue {
    const items: PdfValue[] = []
    for (;;) {
      this.skipWhitespace()
      if (this.take(']')) return { kind: 'list', items }
      items.push(this.value(depth + 1))
    }
  }

  private dictionary(depth: number): PdfValue {
    const entries = new Map<string, PdfValue>()
    for (;;) {
      this.skipWhitespace()
      if (this.take('>>')) return { kind: 'dictionary', entries }
      if (this.bytes[this.position] !== 0x2f) refuseBuild(`a key is missing at byte ${this.position}`)
      const key = this.name()
      // Two readers may take two different ones.
      if (entries.has(key)) refuseBuild(`the key /${key} stands twice in one dictionary`)
      entries.set(key, this.value(depth + 1))
    }
  }

  private name(): string {
    const from = this.position + 1
    this.position = from
    while (isRegular(this.bytes[this.position])) this.position += 1
    if (this.position - from > 1000) refuseBuild('a name is longer than names are')
    const name = this.bytes.toString('latin1', from, this.position)
    return name.includes('#') ? name.replace(/#([0-9A-Fa-f]{2})/g, decoded) : name
  }

  /** A number, a reference, a yes or no, nothing, or a word that is none of these. */
  private word(): PdfValue | string {
    const from = this.position
    while (this.position - from < 128 && isRegular(this.bytes[this.position])) this.position += 1
    const word = this.bytes.toString('latin1', from, this.position)
    if (word === '' || word.length === 128) refuseBuild(`nothing that can be read stands at byte ${from}`)
    if (/^[+-]?(?:[0-9]+\.?[0-9]*|\.[0-9]+)$/.test(word)) return this.reference(word) ?? Number(word)
    if (word === 'true' || word === 'false') return word === 'true'
    return word === 'null' ? null : word
  }

  /** “12 0 R” refers to object 12. */
  private reference(word: string): PdfValue | undefined {
    const isReference =
      /^[0-9]{1,10}$/.test(word) &&
      this.bytes[this.position] === 0x20 &&
      this.bytes[this.position + 1] === 0x30 &&
      this.bytes[this.position + 2] === 0x20 &&
      this.bytes[this.position + 3] === 0x52 &&
      !isRegular(this.bytes[this.position + 4])
    if (!isReference) return undefined
    this.position += 4
    return { kind: 'reference', number: Number(word) }
  }

  private hexadecimalText(): PdfText {
    const from = this.position
    const end = this.bytes.indexOf(0x3e, from)
    if (end < 0 || end - from > longestText) refuseBuild(`the text that begins at byte ${from} does not end`)
    const digits = this.bytes.toString('latin1', from + 1, end)
    if (!/^[0-9A-Fa-f]*$/.test(digits) || digits.length % 2 === 1)
      refuseBuild(`the text at byte ${from} is not made of pairs of hexadecimal digits`)
    this.position = end + 1
    return { kind: 'text', bytes: Buffer.from(digits, 'hex'), hexadecimal: true, from, to: end + 1 }
  }

  /** A text in brackets, which may hold brackets in pairs. */
  private literalText(): PdfText {
    const from = this.position
    const bytes: number[] = []
    let open = 0
    do {
      const byte = this.bytes[this.position]
      if (byte === undefined || this.position - from > longestText)
        return refuseBuild(`the text that begins at byte ${from} does not end`)
      this.position += 1
      if (byte === 0x5c) {
        this.escaped(bytes)
        continue
      }
      if (byte === 0x28) open += 1
      if (byte === 0x29) open -= 1
      if (open > 0 && !(byte === 0x28 && open === 1)) bytes.push(byte)
    } while (open > 0)
    return { kind: 'text', bytes: Uint8Array.from(bytes), hexadecimal: false, from, to: this.position }
  }

  /** What follows a backslash: a sign of its own, up to three octal digits, or a line's end that counts as nothing. */
  private escaped(bytes: number[]): void {
    const byte = this.bytes[this.position]
    const signs: Readonly<Record<number, number>> = { 110: 0x0a, 114: 0x0d, 116: 0x09, 98: 0x08, 102: 0x0c }
    const octal = /^[0-7]{1,3}/.exec(this.bytes.toString('latin1', this.position, this.position + 3))?.[0]
    this.position += octal?.length ?? 1
    if (octal !== undefined) bytes.push(Number.parseInt(octal, 8) & 0xff)
    else if (byte === 0x0d && this.bytes[this.position] === 0x0a) this.position += 1
    else if (byte !== undefined && byte !== 0x0a && byte !== 0x0d) bytes.push(signs[byte] ?? byte)
  }
}

function classOf(byte: number | undefined): number {
  return byte === undefined ? delimiter : (classes[byte] ?? regular)
}

function isRegular(byte: number | undefined): boolean {
  return classOf(byte) === regular
}

function decoded(_: string, digits: string): string {
  return String.fromCharCode(Number.parseInt(digits, 16))
}

function isDigit(byte: number | undefined): boolean {
  return byte !== undefined && byte >= 0x30 && byte <= 0x39
}

/** Bytes as characters, one for one. */
export function latin1(bytes: Uint8Array, from: number, to: number): string {
  return bufferOf(bytes).toString('latin1', from, to)
}

function bufferOf(bytes: Uint8Array): Buffer {
  return Buffer.from(bytes.buffer, bytes.byteOffset, bytes.byteLength)
}
