import sharp from 'sharp'
import { describe, expect, test } from 'vitest'
import { fileLimits } from '../../lib/core/agreement/attachedFile.ts'
import { keptPhoto, type PhotoType, smallPhoto } from '../../lib/files/photo.ts'
import { madePixels } from './madePictures.ts'

const types = ['image/jpeg', 'image/png', 'image/webp'] as const
const formatOf = (type: PhotoType) => type.slice('image/'.length) as 'jpeg' | 'png' | 'webp'

/** A photo as a phone makes it: with its position, its maker, a comment and a profile, held sideways. */
async function phonePhoto(type: PhotoType): Promise<Buffer> {
  return (await madePixels(120, 80))
    .withExif({
      IFD0: { Make: 'Hollowmead', ImageDescription: 'a secret place', Orientation: '6' },
      IFD3: {
        GPSLatitudeRef: 'N',
        GPSLatitude: '51/1 30/1 0/1',
        GPSLongitudeRef: 'W',
        GPSLongitude: '0/1 7/1 0/1',
      },
    })
    .withXmp('<x:xmpmeta xmlns:x="adobe:ns:meta/"><note>a secret place</note></x:xmpmeta>')
    .withIccProfile('p3', { attach: true })
    .withMetadata({ orientation: 6 })
    .toFormat(formatOf(type))
    .toBuffer()
}

/** The number of a tag in the first directory of EXIF data; undefined where it is not there. TIFF 6.0 section 2. */
function exifTag(exif: Buffer, tag: number): number | undefined {
  const start = exif.indexOf('Exif\0\0') === 0 ? 6 : 0
  const tiff = exif.subarray(start)
  const little = tiff.toString('latin1', 0, 2) === 'II'
  const [short, long] = [
    (at: number) => (little ? tiff.readUInt16LE(at) : tiff.readUInt16BE(at)),
    (at: number) => (little ? tiff.readUInt32LE(at) : tiff.readUInt32BE(at)),
  ]
  const directory = long(4)
  for (let entry = 0; entry < short(directory); entry += 1) {
    const at = directory + 2 + 12 * entry
    if (short(at) === tag) return long(at + 8)
  }
  return undefined
}

/** Where GPS data begin: EXIF 2.32 table 3, tag 0x8825. */
const positionTag = 0x8825

async function kept(bytes: Uint8Array, type: PhotoType): Promise<Uint8Array> {
  const photo = await keptPhoto(bytes, type)
  if ('refused' in photo) throw new Error(photo.refused.kind)
  return photo.bytes
}

describe.each(types)('a photo as %s', (type) => {
  test('is kept without its position and all else that the phone wrote into it', async () => {
    const photo = await phonePhoto(type)
    const before = await sharp(photo).metadata()
    expect(exifTag(before.exif ?? Buffer.alloc(0), positionTag)).toBeGreaterThan(0)
    expect(photo.includes('a secret place')).toBe(true)

    const bytes = await kept(photo, type)
    const after = await sharp(bytes).metadata()
    for (const data of ['exif', 'xmp', 'icc', 'iptc', 'orientation', 'comments'] as const)
      expect([data, after[data]]).toEqual([data, undefined])
    for (const word of ['Exif', 'GPS', 'secret', 'Hollowmead', 'xmpmeta'])
      expect([word, Buffer.from(bytes).includes(word)]).toEqual([word, false])
  })

  test('is kept upright, as the same kind', async () => {
    const bytes = await kept(await phonePhoto(type), type)
    const { format, width, height } = await sharp(bytes).metadata()
    expect([format, width, height]).toEqual([formatOf(type), 80, 120])
    // Orientation 6 (TIFF 6.0, tag 274): the first column on paper is the last row as stored, so what was at its left is on top.
    const { data, info } = await sharp(bytes).raw().toBuffer({ resolveWithObject: true })
    const red = (x: number, y: number) => data[info.channels * (y * info.width + x)] ?? -1
    expect(red(40, 5)).toBeLessThan(50)
    expect(red(40, 114)).toBeGreaterThan(200)
  })

  test('is kept at its size, or at the largest size where it is larger', async () => {
    const limits = { ...fileLimits, edge: 100 }
    const photo = await (await madePixels(300, 150)).toFormat(formatOf(type)).toBuffer()
    const smaller = await keptPhoto(photo, type, limits as unknown as typeof fileLimits)
    const whole = await sharp(await kept(photo, type)).metadata()
    expect([whole.width, whole.height]).toEqual([300, 150])
    if ('refused' in smaller) throw new Error(smaller.refused.kind)
    const { width, height } = await sharp(smaller.bytes).metadata()
    expect([width, height]).toEqual([100, 50])
  })

  test('has a small picture, that is a WebP', async () => {
    const small = await smallPhoto(
      await (await madePixels(1000, 500)).toFormat(formatOf(type)).toBuffer(),
      type,
    )
    if ('refused' in small) throw new Error(small.refused.kind)
    const { format, width, height } = await sharp(small.bytes).metadata()
    expect([format, width, height]).toEqual(['webp', 480, 240])
  })

  test('with more pixels than are taken is refused before they are unpacked', async () => {
    const many = await sharp({ create: { width: 3000, height: 2000, channels: 3, background: '#777' } })
      .toFormat(formatOf(type))
      .toBuffer()
    const limits = { ...fileLimits, pixels: 5_999_999 } as unknown as typeof fileLimits
    expect(await keptPhoto(many, type, limits)).toEqual({
      refused: { kind: 'too-many-pixels', limit: 5_999_999 },
    })
    expect('bytes' in (await keptPhoto(many, type))).toBe(true)
  })
})

test('a picture of a hundred thousand by a hundred thousand pixels in a few bytes is refused at once', async () => {
  // W3C PNG 11.2.1: width and height are the first two numbers of the first chunk; its check sum is that of the chunk.
  const png = Buffer.from(await (await madePixels(4, 4)).png().toBuffer())
  png.writeUInt32BE(100_000, 16)
  png.writeUInt32BE(100_000, 20)
  const { crc32 } = await import('node:zlib')
  png.writeUInt32BE(crc32(png.subarray(12, 29)), 29)
  expect(await keptPhoto(png, 'image/png')).toEqual({
    refused: { kind: 'too-many-pixels', limit: fileLimits.pixels },
  })
})

test('a transparent picture stays so', async () => {
  const clear = await sharp({ create: { width: 20, height: 20, channels: 4, background: '#ff000080' } })
    .png()
    .toBuffer()
  expect((await sharp(await kept(clear, 'image/png')).metadata()).hasAlpha).toBe(true)
})

test('a photo in the colours of print comes out in those of a screen', async () => {
  const print = await (await madePixels(40, 40)).toColourspace('cmyk').jpeg().toBuffer()
  expect((await sharp(print).metadata()).space).toBe('cmyk')
  expect((await sharp(await kept(print, 'image/jpeg')).metadata()).space).toBe('srgb')
})

test('the same photo is kept as the same bytes each time', async () => {
  const photo = await phonePhoto('image/jpeg')
  expect(
    Buffer.from(await kept(photo, 'image/jpeg')).equals(Buffer.from(await kept(photo, 'image/jpeg'))),
  ).toBe(true)
})
