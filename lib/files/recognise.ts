import type { MediaType } from '../core/agreement/attachedFile.ts'
import type { OtherFormat } from '../core/agreement/fileRefusal.ts'

export type Recognised = { readonly mediaType: MediaType } | { readonly other: OtherFormat }

/**
 * What a file is by its first bytes, never by its name. Only how it begins: whether it is one to its end is for
 * `pdfIsWhole`, or for whoever decodes the picture.
 *
 * Sources: JPEG, ISO/IEC 10918-1 B.1.1.3 (SOI, then another marker); PNG, W3C PNG 5.2; WebP, RFC 9649 section 2.4;
 * PDF, ISO 32000-1 7.5.2; HEIF and AVIF, ISO/IEC 14496-12 4.3 and 23008-12 10.2 (the brands of the `ftyp` box);
 * GIF, GIF89a 17; TIFF 6.0 section 2; ZIP, APPNOTE 4.3.7.
 */
export function recognise(bytes: Uint8Array): Recognised {
  const begins = (signature: string, at = 0) => latin(bytes, at, at + signature.length) === signature
  if (begins('\xff\xd8\xff')) return { mediaType: 'image/jpeg' }
  if (begins('\x89PNG\r\n\x1a\n')) return { mediaType: 'image/png' }
  if (begins('RIFF') && begins('WEBPVP8', 8)) return { mediaType: 'image/webp' }
  if (/^%PDF-[12]\.[0-9]/.test(latin(bytes, 0, 8))) return { mediaType: 'application/pdf' }
  if (begins('ftyp', 4)) return { other: otherByBrand(bytes) }
  if (begins('GIF87a') || begins('GIF89a')) return { other: 'gif' }
  if (begins('II*\0') || begins('MM\0*') || begins('II+\0') || begins('MM\0+')) return { other: 'tiff' }
  if (begins('BM') && begins('\0\0\0\0', 6)) return { other: 'bmp' }
  if (begins('PK\x03\x04') || begins('PK\x05\x06')) return { other: 'zip' }
  return { other: otherText(bytes) }
}

const heifBrands = ['heic', 'heix', 'heim', 'heis', 'hevc', 'hevx', 'hevm', 'hevs', 'mif1', 'msf1']
const avifBrands = ['avif', 'avis']

/** The brands of an ISO base media file: the major one, and those that it is compatible with. */
function otherByBrand(bytes: Uint8Array): OtherFormat {
  const boxEnd = Math.min(new DataView(bytes.buffer, bytes.byteOffset).getUint32(0), 256)
  const brands = [latin(bytes, 8, 12)]
  for (let at = 16; at + 4 <= boxEnd; at += 4) brands.push(latin(bytes, at, at + 4))
  if (brands.some((brand) => avifBrands.includes(brand))) return 'avif'
  return brands.some((brand) => heifBrands.includes(brand)) ? 'heic' : 'unknown'
}

function otherText(bytes: Uint8Array): OtherFormat {
  const beginning = bytes.subarray(0, 4096)
  if (beginning.includes(0)) return 'unknown'
  if (/<svg[\s/>]/i.test(latin(beginning, 0, beginning.length))) return 'svg'
  try {
    new TextDecoder('utf-8', { fatal: true }).decode(beginning, { stream: true })
    return 'text'
  } catch {
    return 'unknown'
  }
}

/** Bytes as characters of the same codes, so that they can be searched. */
function latin(bytes: Uint8Array, from: number, to: number): string {
  return Buffer.from(bytes.buffer, bytes.byteOffset, bytes.byteLength).toString('latin1', from, to)
}

/** What may stand after the end of a PDF: white space (ISO 32000-1 table 1). */
const pdfEnd = /startxref[\0\t\n\f\r ]+([0-9]{1,10})[\0\t\n\f\r ]+%%EOF[\0\t\n\f\r ]*$/

/**
 * Whether a file is a PDF from its first byte to its last: a header at the very start, at the end the offset of its
 * table of objects, and at that offset such a table (ISO 32000-1 7.5.2, 7.5.4, 7.5.5, 7.5.8). A file that is a PDF and
 * another thing at once has something before, or after.
 */
export function pdfIsWhole(bytes: Uint8Array): boolean {
  if (!('mediaType' in recognise(bytes))) return false
  const end = pdfEnd.exec(latin(bytes, Math.max(0, bytes.length - 1024), bytes.length))
  const table = Number(end?.[1] ?? Number.NaN)
  if (!(table > 0 && table < bytes.length)) return false
  if (!/^[\0\t\n\f\r ]*(xref\b|[0-9]+ +[0-9]+ +obj\b)/.test(latin(bytes, table, table + 64))) return false
  return !endsAsZip(bytes)
}

/** A ZIP is found from its end: a record there gives the length of a comment that reaches exactly to the last byte. */
function endsAsZip(bytes: Uint8Array): boolean {
  const from = Math.max(0, bytes.length - 65_557)
  const end = latin(bytes, from, bytes.length)
  for (let at = end.indexOf('PK\x05\x06'); at !== -1; at = end.indexOf('PK\x05\x06', at + 1)) {
    const comment = end.charCodeAt(at + 20) + 256 * end.charCodeAt(at + 21)
    if (at + 22 + comment === end.length) return true
  }
  return false
}
