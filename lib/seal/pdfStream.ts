import { inflateSync } from 'node:zlib'
import type { PdfFile, PdfObject } from './pdfFile.ts'
import { ofKind, type PdfDictionary } from './pdfValue.ts'
import { readLimits } from './readLimits.ts'
import { RecordRefusal } from './recordRefusal.ts'

/** How many bytes may still come out of packed streams, over all streams of a file. */
export type UnpackedLeft = { bytes: number }

/**
 * The bytes of a stream, unpacked (ISO 32000-1, 7.4.4); `undefined` where there is none, it is damaged, or packed in
 * another way. Throws a `RecordRefusal` where more would come out than `most` or than may come out of the whole file.
 */
export function streamBytes(
  file: PdfFile,
  object: PdfObject | undefined,
  left: UnpackedLeft,
  most: number = readLimits.unpacked,
): Uint8Array | undefined {
  const dictionary = ofKind(object?.value, 'dictionary')
  if (object?.stream === undefined || dictionary === undefined) return undefined
  const packed = file.bytes.subarray(object.stream.from, object.stream.to)
  const limit = Math.min(most, left.bytes)
  const bytes = isPacked(dictionary) ? inflated(packed, limit) : isPlain(dictionary) ? packed : undefined
  if (bytes === undefined) return undefined
  if (bytes.length > limit) throw tooMuch(limit)
  left.bytes -= bytes.length
  return bytes
}

function inflated(packed: Uint8Array, limit: number): Uint8Array | undefined {
  try {
    return inflateSync(packed, { maxOutputLength: Math.max(1, limit) })
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === 'ERR_BUFFER_TOO_LARGE') throw tooMuch(limit)
    return undefined
  }
}

function tooMuch(limit: number): RecordRefusal {
  return new RecordRefusal({ kind: 'too-much', what: 'unpacked bytes', limit })
}

function isPacked({ entries }: PdfDictionary): boolean {
  const filter = entries.get('Filter')
  const list = ofKind(filter, 'list')
  const only = list ? (list.items.length === 1 ? list.items[0] : undefined) : filter
  return ofKind(only, 'name')?.name === 'FlateDecode' && !entries.has('DecodeParms')
}

function isPlain({ entries }: PdfDictionary): boolean {
  return !entries.has('Filter') && !entries.has('F')
}
