import { latin1, PdfScanner, type ValuesLeft, valuesLeft } from './pdfScanner.ts'
import { ofKind, type PdfDictionary, type PdfValue } from './pdfValue.ts'
import { readLimits } from './readLimits.ts'
import { RecordRefusal, refuseBuild } from './recordRefusal.ts'

/** A whole PDF file, read: its objects by number, and the root of them. Streams stay packed. */
export type PdfFile = {
  readonly bytes: Uint8Array
  readonly objects: ReadonlyMap<number, PdfObject>
  readonly root: PdfDictionary
}

/** An object, and where its stream begins and ends if it has one. */
export type PdfObject = {
  readonly value: PdfValue
  readonly stream?: { readonly from: number; readonly to: number }
}

/**
 * Reads a PDF that is built the one way in which this program builds its own, and no other: one table of objects (ISO
 * 32000-1, 7.5.4), no earlier revision, no object in a stream, no encryption, and not a byte between the first line and
 * the last that is not part of an object of the table. So nothing can hide in the file from one reader that another one
 * shows, and reading takes one pass.
 *
 * Throws a `RecordRefusal` on any other file.
 */
export function readPdfFile(bytes: Uint8Array): PdfFile {
  const left = valuesLeft(readLimits.values)
  if (latin1(bytes, 0, 5) !== '%PDF-') throw new RecordRefusal({ kind: 'not-a-pdf' })
  const { tableAt, endAt } = tailOf(bytes)
  const start = headLength(bytes)
  const { places, trailer } = readTable(bytes, tableAt, endAt, left)
  const objects = readObjects(bytes, start, tableAt, places, left)
  const root = ofKind(trailer.entries.get('Root'), 'reference')
  const catalog = root && ofKind(objects.get(root.number)?.value, 'dictionary')
  if (!catalog) return refuseBuild('the root is missing')
  return { bytes, objects, root: catalog }
}

/** What a value stands for: the object it refers to, or itself. A reference never leads to another one here. */
export function lookUp(file: PdfFile, value: PdfValue | undefined): PdfValue | undefined {
  const reference = ofKind(value, 'reference')
  return reference === undefined ? value : file.objects.get(reference.number)?.value
}

/** Length of the first line and of the comment of four high bytes under it. */
function headLength(bytes: Uint8Array): number {
  const match = /^%PDF-[0-9]\.[0-9]\n%[\x80-\xff]{4}\n/.exec(latin1(bytes, 0, 32))
  return match ? match[0].length : refuseBuild('the first lines are others')
}

/** Where the table begins, and where the last line that names it does. */
function tailOf(bytes: Uint8Array): { tableAt: number; endAt: number } {
  const from = Math.max(0, bytes.length - 48)
  const tail = /\nstartxref\n([0-9]{1,10})\n%%EOF\n?$/.exec(latin1(bytes, from, bytes.length))
  if (!tail) throw new RecordRefusal({ kind: 'cut-short' })
  return { tableAt: Number(tail[1]), endAt: from + tail.index + 1 }
}

/** The table of objects: for each number the place at which it begins; and the trailer under it. */
function readTable(
  bytes: Uint8Array,
  tableAt: number,
  endAt: number,
  left: ValuesLeft,
): { places: ReadonlyMap<number, number>; trailer: PdfDictionary } {
  const scanner = new PdfScanner(bytes, tableAt, left)
  if (tableAt >= endAt || !scanner.take('xref\n')) return refuseBuild('there is no plain table of objects')
  const places = new Map<number, number>()
  const seen = new Set<number>()
  while (!scanner.take('trailer')) {
    const first = scanner.wholeNumber()
    scanner.expect(' ')
    const count = scanner.wholeNumber()
    scanner.expect('\n')
    if (seen.size + count > readLimits.objects)
      throw new RecordRefusal({ kind: 'too-much', what: 'objects', limit: readLimits.objects })
    for (let number = first; number < first + count; number += 1) {
      const entry = /^([0-9]{10}) ([0-9]{5}) ([nf]) \n$/.exec(
        latin1(bytes, scanner.position, scanner.position + 20),
      )
      if (!entry || seen.has(number)) return refuseBuild(`object ${number} has no one place in the table`)
      seen.add(number)
      if (entry[3] === 'n') places.set(number, Number(entry[1]))
      scanner.position += 20
    }
    scanner.skipWhitespace()
  }
  const trailer = ofKind(scanner.value(), 'dictionary')
  scanner.skipWhitespace()
  if (!trailer || scanner.position !== endAt)
    return refuseBuild('the end of the table is not that of the file')
  if (trailer.entries.has('Encrypt')) throw new RecordRefusal({ kind: 'encrypted' })
  if (trailer.entries.has('Prev')) return refuseBuild('it holds an earlier version of itself')
  if (trailer.entries.has('XRefStm')) return refuseBuild('it has a second table of objects')
  return { places, trailer }
}

/** Reads every object where the table says it is; they have to follow one another without a gap, from `start` to `end`. */
function readObjects(
  bytes: Uint8Array,
  start: number,
  end: number,
  places: ReadonlyMap<number, number>,
  left: ValuesLeft,
): Map<number, PdfObject> {
  const objects = new Map<number, PdfObject>()
  const scanner = new PdfScanner(bytes, start, left)
  for (const [number, place] of [...places].sort(([, one], [, other]) => one - other)) {
    scanner.skipWhitespace()
    if (scanner.position !== place)
      return refuseBuild(`byte ${scanner.position} belongs to no object of the table`)
    scanner.expect(`${number} 0 obj\n`)
    objects.set(number, readObject(scanner))
  }
  scanner.skipWhitespace()
  return scanner.position === end
    ? objects
    : refuseBuild(`byte ${scanner.position} belongs to no object of the table`)
}

function readObject(scanner: PdfScanner): PdfObject {
  const value = scanner.value()
  scanner.skipWhitespace()
  if (scanner.take('endobj')) return { value }
  const length = ofKind(value, 'dictionary')?.entries.get('Length')
  scanner.expect('stream')
  scanner.take('\r')
  scanner.expect('\n')
  const from = scanner.position
  if (typeof length !== 'number' || !Number.isInteger(length) || length < 0)
    return refuseBuild(`the stream at byte ${from} does not say how long it is`)
  scanner.position = from + length
  scanner.skipWhitespace()
  scanner.expect('endstream')
  scanner.skipWhitespace()
  scanner.expect('endobj')
  return { value, stream: { from, to: from + length } }
}
