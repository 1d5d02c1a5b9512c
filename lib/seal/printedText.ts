import { type CharacterMap, characterMap } from './characterMap.ts'
import { lookUp, type PdfFile } from './pdfFile.ts'
import { PdfScanner } from './pdfScanner.ts'
import { streamBytes, type UnpackedLeft } from './pdfStream.ts'
import { ofKind, type PdfDictionary, type PdfValue } from './pdfValue.ts'
import { RecordRefusal } from './recordRefusal.ts'

/** A piece of text as it is put on a page, and its height above the page's lower edge in points. */
export type PrintedPiece = { readonly text: string; readonly y: number }

/** Text, page by page, in the order of painting. `undefined` where a page is not built as this program builds them. */
export function printedPages(
  file: PdfFile,
  left: UnpackedLeft,
): readonly (readonly PrintedPiece[])[] | undefined {
  const fonts = new Map<PdfValue, CharacterMap | undefined>()
  const pages = pagesOf(file)?.map((page) => printedPage(file, page, fonts, left))
  return pages?.every((page) => page !== undefined) ? pages : undefined
}

/** The pages in their order: this program keeps them all in one list. */
function pagesOf(file: PdfFile): PdfDictionary[] | undefined {
  const tree = ofKind(lookUp(file, file.root.entries.get('Pages')), 'dictionary')
  const kids = ofKind(lookUp(file, tree?.entries.get('Kids')), 'list')?.items ?? []
  const pages = kids.map((kid) => ofKind(lookUp(file, kid), 'dictionary'))
  const all = pages.every((page) => page !== undefined && !page.entries.has('Kids'))
  return all && pages.length > 0 ? (pages as PdfDictionary[]) : undefined
}

function printedPage(
  file: PdfFile,
  page: PdfDictionary,
  fonts: Map<PdfValue, CharacterMap | undefined>,
  left: UnpackedLeft,
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
    const bytes = number === undefined ? undefined : streamBytes(file, file.objects.get(number), left)
    if (bytes === undefined) return undefined
    pieces.push(...piecesOf(new PdfScanner(bytes, 0, file.left), mapOf))
  }
  return pieces
}

function fontMap(file: PdfFile, font: PdfValue, left: UnpackedLeft): CharacterMap | undefined {
  const map = ofKind(ofKind(font, 'dictionary')?.entries.get('ToUnicode'), 'reference')
  const bytes = map && streamBytes(file, file.objects.get(map.number), left)
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
  const codes = Buffer.from(bytes).toString('hex').match(/.{4}/g) ?? []
  return codes.map((code) => map?.get(code) ?? '\uFFFD').join('')
}
