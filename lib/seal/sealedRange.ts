import type { RecordProblem } from '../core/agreement/recordFindings.ts'
import type { PlacedDictionary } from './everyDictionary.ts'
import { lookUp, type PdfFile } from './pdfFile.ts'
import { latin1 } from './pdfScanner.ts'
import { nameAt, ofKind, type PdfDictionary } from './pdfValue.ts'

/** The bytes that are sealed, in two pieces, and the signature between them. */
export type SealedRange = {
  readonly pieces: readonly [Uint8Array, Uint8Array]
  readonly signature: Uint8Array
}

/**
 * The one signature of a file, if its ByteRange is the whole file but the signature itself (ISO 32000-1, 12.8.1): it
 * begins at byte 0, leaves out exactly the text of Contents with its brackets, and ends where the file ends.
 */
export function sealedRange(
  file: PdfFile,
  dictionaries: readonly PlacedDictionary[],
): SealedRange | RecordProblem {
  const signatures = dictionaries.filter(({ dictionary }) => isSignature(dictionary))
  const fields = dictionaries.filter(({ dictionary }) => nameAt(dictionary, 'FT') === 'Sig')
  const count = Math.max(signatures.length, fields.length)
  const [signature, field] = [signatures[0], fields[0]]
  if (count > 1) return { kind: 'several-seals', count }
  if (!signature || !field || !isFieldOf(file, field, signature)) return { kind: 'no-seal' }
  const { entries } = signature.dictionary
  const range = ofKind(entries.get('ByteRange'), 'list')?.items
  const contents = ofKind(entries.get('Contents'), 'text')
  if (!range || !contents?.hexadecimal || range.length !== 4) return { kind: 'seal-form' }
  // The signature's own digits are all that it does not cover: they have one spelling, so that no byte can be changed.
  const digits = latin1(file.bytes, contents.from, contents.to)
  if (digits !== digits.toLowerCase()) return { kind: 'seal-form' }
  const [from, length, from2, length2] = range
  if (typeof from2 !== 'number' || typeof length2 !== 'number') return { kind: 'seal-form' }
  const end = from2 + length2
  if (from === 0 && length === contents.from && from2 === contents.to && end === file.bytes.length)
    return {
      pieces: [file.bytes.subarray(0, contents.from), file.bytes.subarray(contents.to)],
      signature: contents.bytes,
    }
  return end > 0 && end < file.bytes.length
    ? { kind: 'added-after', bytes: file.bytes.length - end }
    : { kind: 'range-open' }
}

/**
 * How many bytes were added behind the end of what is sealed, in a file that can't be read as one piece: told from the text
 * of its ByteRange, if the signature still stands where that says; else 0.
 */
export function bytesAddedAfter(bytes: Uint8Array): number {
  const text = latin1(bytes, 0, bytes.length)
  const at = text.indexOf('/ByteRange')
  if (at < 0 || text.indexOf('/ByteRange', at + 1) >= 0) return 0
  const range = /^\/ByteRange ?\[ ?0 ([0-9]{1,10}) ([0-9]{1,10}) ([0-9]{1,10}) ?\]/.exec(
    text.slice(at, at + 80),
  )
  const [length = 0, from = 0, length2 = 0] = range?.slice(1).map(Number) ?? []
  const isInPlace = text.charAt(length) === '<' && text.charAt(from - 1) === '>'
  return isInPlace ? Math.max(0, bytes.length - from - length2) : 0
}

function isSignature(dictionary: PdfDictionary): boolean {
  return nameAt(dictionary, 'Type') === 'Sig' || dictionary.entries.has('ByteRange')
}

/** Whether the form of the document lists the field, and the field's value is the signature. */
function isFieldOf(file: PdfFile, field: PlacedDictionary, signature: PlacedDictionary): boolean {
  const form = ofKind(lookUp(file, file.root.entries.get('AcroForm')), 'dictionary')
  const fields = ofKind(lookUp(file, form?.entries.get('Fields')), 'list')?.items ?? []
  return (
    fields.some((one) => ofKind(one, 'reference')?.number === field.object) &&
    lookUp(file, field.dictionary.entries.get('V')) === signature.dictionary
  )
}
