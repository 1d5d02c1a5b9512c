import { execFileSync } from 'node:child_process'
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import fc from 'fast-check'
import { PDFDocument } from 'pdf-lib'
import sharp from 'sharp'
import { describe, expect, test } from 'vitest'
import { keepable } from '../../lib/files/keepable.ts'
import { pdfIsWhole, recognise } from '../../lib/files/recognise.ts'
import { latinBytes, madeJpeg, madePdf, madePixels, madePng } from './madePictures.ts'

const brandBox = (major: string, ...compatible: string[]) =>
  latinBytes(
    `\0\0\0${String.fromCharCode(16 + 4 * compatible.length)}ftyp${major}\0\0\0\0${compatible.join('')}mdat`,
  )

describe('a file is known by its content', () => {
  test.each<[string, () => Promise<Uint8Array> | Uint8Array, object]>([
    ['a JPEG', () => madeJpeg(), { mediaType: 'image/jpeg' }],
    ['a PNG', () => madePng(), { mediaType: 'image/png' }],
    ['a WebP', async () => (await madePixels(9, 9)).webp().toBuffer(), { mediaType: 'image/webp' }],
    [
      'a WebP without loss',
      async () => (await madePixels(9, 9)).webp({ lossless: true }).toBuffer(),
      { mediaType: 'image/webp' },
    ],
    ['a PDF', () => madePdf(), { mediaType: 'application/pdf' }],
    ['a GIF', async () => (await madePixels(9, 9)).gif().toBuffer(), { other: 'gif' }],
    ['a TIFF', async () => (await madePixels(9, 9)).tiff().toBuffer(), { other: 'tiff' }],
    ['an AVIF', async () => (await madePixels(16, 16)).avif().toBuffer(), { other: 'avif' }],
    // Brands: ISO/IEC 23008-12 10.2 (heic, mif1), as phones write them.
    ['a HEIC', () => brandBox('heic', 'mif1', 'heic'), { other: 'heic' }],
    ['a HEIC under a general brand', () => brandBox('mif1', 'mif1', 'heic'), { other: 'heic' }],
    ['a film', () => brandBox('isom', 'isom', 'mp41'), { other: 'unknown' }],
    ['an SVG', () => latinBytes('<svg xmlns="http://www.w3.org/2000/svg"/>'), { other: 'svg' }],
    [
      'an SVG after a declaration',
      () => latinBytes('<?xml version="1.0"?>\n<!-- x -->\n<svg >'),
      { other: 'svg' },
    ],
    ['a page', () => latinBytes('<!doctype html><script>alert(1)</script>'), { other: 'text' }],
    ['a zip', () => latinBytes('PK\x03\x04\x14\0'), { other: 'zip' }],
    ['a BMP', () => latinBytes('BM\x46\0\0\0\0\0\0\0\x36\0\0\0'), { other: 'bmp' }],
    ['a program', () => latinBytes('\x7fELF\x02\x01\x01\0'), { other: 'unknown' }],
    ['nothing', () => new Uint8Array(), { other: 'text' }],
  ])('%s', async (_what, make, known) => {
    expect(recognise(await make())).toEqual(known)
  })

  test('and any bytes at all are something, without an error', () => {
    fc.assert(
      fc.property(
        fc.uint8Array({ maxLength: 400 }),
        fc.constantFrom('', '\xff\xd8\xff', '%PDF-1.7', '\0\0\0\x18ftyp', '\xff\xff\xff\xffftypheic'),
        (rest, start) => {
          const bytes = Uint8Array.from([...latinBytes(start), ...rest])
          expect(Object.keys(recognise(bytes))).toHaveLength(1)
          expect(pdfIsWhole(bytes)).toBe(false)
        },
      ),
    )
  })
})

describe('a PDF is whole', () => {
  test('where pdf-lib wrote it, with a table of objects or a stream of them', async () => {
    for (const useObjectStreams of [true, false]) {
      const pdf = await PDFDocument.create()
      pdf.addPage([200, 200]).drawText('A survey')
      expect(pdfIsWhole(await pdf.save({ useObjectStreams }))).toBe(true)
    }
  })

  test('where Debian’s qpdf rewrote it, plain or in the order of pages', () => {
    const folder = mkdtempSync(join(tmpdir(), 'mearing-pdf-'))
    try {
      const [from, to] = [join(folder, 'from.pdf'), join(folder, 'to.pdf')]
      writeFileSync(from, wholePdf)
      for (const how of ['--object-streams=generate', '--linearize', '--qdf']) {
        execFileSync('qpdf', [how, from, to])
        expect([how, pdfIsWhole(readFileSync(to))]).toEqual([how, true])
      }
    } finally {
      rmSync(folder, { recursive: true })
    }
  })

  test.each<[string, Uint8Array, boolean]>([
    ['as it is', madePdf(), true],
    ['with blank lines after it', madePdf('\r\n\n \0'), true],
    ['cut short', madePdf().slice(0, -20), false],
    ['with its end cut off', madePdf().slice(0, 60), false],
    ['with a program behind it', madePdf('<script>alert(1)</script>'), false],
    ['with something before it', Uint8Array.from([...latinBytes('GIF89a'), ...madePdf()]), false],
    ['with a zip behind it', Uint8Array.from([...madePdf(), ...zipEnd('')]), false],
    ['with a zip behind it that ends as a PDF', zipThatEndsAsPdf(), false],
    ['with no table where it should be', latinBytes('%PDF-1.4\nstartxref\n3\n%%EOF'), false],
    ['with its table beyond its end', latinBytes('%PDF-1.4\nstartxref\n9999999999\n%%EOF'), false],
    [
      'of a version that never was',
      latinBytes(`%PDF-9.4${Buffer.from(madePdf()).toString('latin1', 8)}`),
      false,
    ],
  ])('%s: %s', async (_what, bytes, whole) => {
    expect(pdfIsWhole(bytes)).toBe(whole)
    expect('bytes' in (await keepable(bytes))).toBe(whole)
  })

  test('and is kept byte for byte', async () => {
    expect(await keepable(madePdf())).toEqual({ mediaType: 'application/pdf', bytes: madePdf() })
  })
})

/** The last record of an empty zip with a comment: APPNOTE 4.3.16. */
function zipEnd(comment: string): Uint8Array<ArrayBuffer> {
  return latinBytes(
    `PK\x05\x06${'\0'.repeat(16)}${String.fromCharCode(comment.length % 256, comment.length >> 8)}${comment}`,
  )
}

/** A zip reader takes the PDF's own end for a comment, a PDF reader finds it where it belongs. */
function zipThatEndsAsPdf(): Uint8Array<ArrayBuffer> {
  const text = Buffer.from(madePdf()).toString('latin1')
  const at = text.indexOf('trailer')
  return latinBytes(text.slice(0, at) + Buffer.from(zipEnd(`\n${text.slice(at)}`)).toString('latin1'))
}

const wholePdf = await (async () => {
  const pdf = await PDFDocument.create()
  pdf.addPage([200, 200])
  return pdf.save()
})()

describe('a picture that is none to its end is refused', () => {
  test.each(['jpeg', 'png', 'webp'] as const)('%s', async (format) => {
    const whole = await (await madePixels(200, 150)).toFormat(format).toBuffer()
    for (const bytes of [
      whole.subarray(0, Math.floor(whole.length / 2)),
      whole.subarray(0, 16),
      Buffer.concat([whole.subarray(0, 16), Buffer.from('<script>alert(1)</script>'.repeat(40))]),
    ]) {
      const mediaType = `image/${format}`
      expect(await keepable(bytes)).toEqual({ refused: { kind: 'broken', mediaType } })
    }
  })

  test('and what hangs on behind a whole one is not kept', async () => {
    const more = Buffer.from('PK\x03\x04 <script>alert(1)</script>')
    for (const whole of [await madeJpeg(), await madePng()]) {
      const kept = await keepable(Buffer.concat([whole, more]))
      if (!('bytes' in kept)) throw new Error('It was refused.')
      expect(Buffer.from(kept.bytes).includes('<script>')).toBe(false)
      expect(Buffer.from(kept.bytes).includes('PK\x03\x04')).toBe(false)
    }
  })
})

test('other formats are refused as what they are, an empty file as empty, a large one as too large', async () => {
  expect(await keepable(brandBox('heic', 'mif1'))).toEqual({ refused: { kind: 'not-taken', format: 'heic' } })
  expect(await keepable(new Uint8Array())).toEqual({ refused: { kind: 'empty' } })
  expect(await keepable(new Uint8Array(20_000_001))).toEqual({
    refused: { kind: 'too-large', limit: 20_000_000, bytes: 20_000_001 },
  })
})

test('a moving picture is refused', async () => {
  const frames = await Promise.all(
    ['#f00', '#00f'].map((background) =>
      sharp({ create: { width: 8, height: 8, channels: 3, background } })
        .png()
        .toBuffer(),
    ),
  )
  const moving = await sharp(frames, { join: { animated: true } })
    .webp({ delay: [100, 100] })
    .toBuffer()
  expect((await sharp(moving).metadata()).pages).toBe(2)
  expect(await keepable(moving)).toEqual({ refused: { kind: 'moving-picture' } })
})
