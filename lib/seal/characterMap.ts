import { latin1 } from './pdfScanner.ts'

/** From the codes of a font, of two bytes, to characters. */
export type CharacterMap = ReadonlyMap<number, string>

/** A code of two bytes, and what it stands for: up to four units of UTF-16, such as the three of “ffi”. */
const pair = /<([0-9A-Fa-f]{4})>\s*<([0-9A-Fa-f]{4,16})>/g

/**
 * The characters of a font's codes, from its ToUnicode map (ISO 32000-1, 9.10.3), which this program writes as single
 * pairs; ranges are not read.
 */
export function characterMap(bytes: Uint8Array): CharacterMap {
  const characters = new Map<number, string>()
  for (const part of latin1(bytes, 0, bytes.length).split('beginbfchar').slice(1)) {
    const end = part.indexOf('endbfchar')
    for (const [, code = '', units = ''] of part.slice(0, Math.max(0, end)).matchAll(pair))
      characters.set(Number.parseInt(code, 16), utf16(units))
  }
  return characters
}

function utf16(digits: string): string {
  const units = digits.match(/[0-9A-Fa-f]{4}/g) ?? []
  return String.fromCharCode(...units.map((unit) => Number.parseInt(unit, 16)))
}
