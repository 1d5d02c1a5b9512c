import { setImmediate } from 'node:timers/promises'
import { type CharacterMap, characterMap } from './characterMap.ts'
import { lookUp, type PdfFile } from './pdfFile.ts'
import { PdfScanner, type ValuesLeft, valuesLeft } from './pdfScanner.ts'
import { streamBytes, type UnpackedLeft } from './pdfStream.ts'
import { ofKind, type PdfDictionary, type PdfValue } from './pdfValue.ts'
import { readLimits } from './readLimits.ts'
import { RecordRefusal } from './recordRefusal.ts'

/** A piece of text as it is put on a page, and its height above the page's lower edge in points. */
export type PrintedPiece = { readonly text: string; readonly y: number }

/** What may still be taken out of a file for its pages. */
type Left = { readonly unpacked: UnpackedLeft; readonly values: ValuesLeft }

/**
 * Text, page by page, in the order of painting. `undefined` where a page is not built as this program builds them. Lets
 * others have their turn after each page, since there may be a thousand.
 */
export async function printedPages(
  file: PdfFile,
  unpacked: UnpackedLeft,
): Promise<readonly (readonly PrintedPiece[])[] | undefined> {
  const left = { unpacked, values: valuesLeft(readLimits.pageValues) }
  const fonts = new Map<PdfValue, CharacterMap | undefined>()
  const printed: PrintedPiece[][] = []
  for (const page of pagesOf(file)) {
    const pieces = page && printedPage(file, page, fonts, left)
    if (pieces === undefined) return undefined
    printed.push(pieces)
    await setImmediate()
  }
  return printed.length > 0 ? printed : undefined
}

/** The pages in their order; this program keeps them all in one list, so whatever else stands in it is no page. */
function pagesOf(file: PdfFile): (PdfDictionary | undefined)[] {
  const tree = ofKind(lookUp(file, file.root.entries.get('Pages')), 'dictionary')
  const kids = ofKind(lookUp(file, tree?.entries.get('Kids')), 'list')?.items ?? []
  return kids.map((kid) => {
    const page = ofKind(lookUp(file, kid), 'dictionary')
    return page?.entries.has('Kids') ? undefined : page
  })
}

function printedPage(
  file: PdfFile,
  page: PdfDictionary,
  fonts: Map<PdfValue, CharacterMap | undefined>,
  left: Left,
): PrintedPiece[] | undefined {
  const resources = ofKind(lookUp(file, page.entries.get('Resources')), 'dictionary')
  const named = ofKind(lookUp(file, resources?.entries.get('Font')), 'dictionary')
  const contents = page.entries.get('Contents')
  const streams = ofKind(lookUp(file, contents), 'list')?.items ?? [contents]
  const mapOf = (name: string): CharacterMap | undefined => {
    const font = lookUp(file, named?.entries.get(name))
    if (font === undefined) return undefined
    if (!fonts.has(font)) fonts.set(font, fontMap(file, font, left))
    return fonts.get(font)
  }
  const pieces: PrintedPiece[] = []
  for (const stream of streams) {
    const number = ofKind(stream, 'reference')?.number
    const bytes = number === undefined ? undefined : pageBytes(file, number, left)
    if (bytes === undefined) return undefined
    pieces.push(...piecesOf(new PdfScanner(bytes, 0, left.values), mapOf))
  }
  return pieces
}

function pageBytes(file: PdfFile, number: number, left: Left): Uint8Array | undefined {
  return streamBytes(file, file.objects.get(number), left.unpacked, readLimits.page)
}

function fontMap(file: PdfFile, font: PdfValue, left: Left): CharacterMap | undefined {
  const map = ofKind(ofKind(font, 'dictionary')?.entries.get('ToUnicode'), 'reference')
  const bytes = map && pageBytes(file, map.number, left)
  return bytes && characterMap(bytes)
}

/** The operators of a page that put text on it, with what they are given (ISO 32000-1, 9.4.2 and 9.4.3). */
function piecesOf(scanner: PdfScanner, mapOf: (name: string) => CharacterMap | undefined): PrintedPiece[] {
  const pieces: PrintedPiece[] = []
  let given: PdfValue[] = []
  let map: CharacterMap | undefined
  let y = 0
  for (scanner.skipWhitespace(); scanner.position < scanner.bytes.length; scanner.skipWhitespace()) {
    const read = scanner.next()
    if (typeof read !== 'string') {
      given.push(read)
      continue
    }
    const last = given.at(-1)
    if (read === 'Tf') map = mapOf(ofKind(given[0], 'name')?.name ?? '')
    else if (read === 'Tm' && typeof last === 'number') y = last
    else if (read === 'Tj')
      pieces.push({ text: textOf(ofKind(last, 'text')?.bytes ?? new Uint8Array(), map, scanner), y })
    else if (read === 'TJ' || read === "'" || read === '"' || read === 'BI')
      throw new RecordRefusal({ kind: 'pages-unreadable' })
    given = []
  }
  return pieces
}

/** Codes of two bytes, one after the other; one that the font's map does not know stands as U+FFFD. */
function textOf(bytes: Uint8Array, map: CharacterMap | undefined, scanner: PdfScanner): string {
  scanner.count(bytes.length / 2)
  const letters: string[] = []
  for (let at = 0; at + 1 < bytes.length; at += 2)
    letters.push(map?.get((bytes[at] ?? 0) * 256 + (bytes[at + 1] ?? 0)) ?? '\uFFFD')
  // Joined at the end: a text put together letter by letter takes many times its memory.
  return letters.join('')
}
