import { crc32 } from 'node:zlib'
import sharp, { type Sharp } from 'sharp'

/** A picture of stripes, in which every pixel tells where it was: `width` by `height` pixels. */
export async function madePixels(width: number, height: number): Promise<Sharp> {
  const pixels = Buffer.alloc(width * height * 3)
  for (let y = 0; y < height; y += 1) {
    for (let x = 0; x < width; x += 1) {
      const at = 3 * (y * width + x)
      pixels[at] = Math.floor((255 * x) / width)
      pixels[at + 1] = Math.floor((255 * y) / height)
      pixels[at + 2] = 128
    }
  }
  return sharp(pixels, { raw: { width, height, channels: 3 } })
}

export async function madeJpeg(width = 64, height = 48): Promise<Uint8Array<ArrayBuffer>> {
  return Uint8Array.from(await (await madePixels(width, height)).jpeg().toBuffer())
}

export async function madePng(width = 64, height = 48): Promise<Uint8Array<ArrayBuffer>> {
  return Uint8Array.from(await (await madePixels(width, height)).png().toBuffer())
}

/**
 * A small whole PDF, put together by hand: a header, one object, a table of objects, and where that begins.
 * `trailing` is what comes after its end.
 */
export function madePdf(trailing = '', words = 'a survey'): Uint8Array<ArrayBuffer> {
  const header = '%PDF-1.4\n'
  const object = `1 0 obj\n<< /Type /Catalog /Note (${words}) >>\nendobj\n`
  const table = header.length + object.length
  const entry = String(header.length).padStart(10, '0')
  const xref = `xref\n0 2\n0000000000 65535 f \n${entry} 00000 n \n`
  const trailer = `trailer\n<< /Size 2 /Root 1 0 R >>\nstartxref\n${table}\n%%EOF\n`
  return Uint8Array.from(Buffer.from(header + object + xref + trailer + trailing, 'latin1'))
}

/** Bytes of characters with codes up to 255. */
export function latinBytes(text: string): Uint8Array<ArrayBuffer> {
  return Uint8Array.from(Buffer.from(text, 'latin1'))
}

/**
 * A picture that says of itself to be a hundred thousand pixels wide and high. W3C PNG 11.2.1: both are the first numbers of the
 * first chunk, whose check sum follows it.
 */
export async function vastPicture(): Promise<Uint8Array> {
  const png = Buffer.from(await madePng(4, 4))
  png.writeUInt32BE(100_000, 16)
  png.writeUInt32BE(100_000, 20)
  png.writeUInt32BE(crc32(png.subarray(12, 29)), 29)
  return png
}

export async function movingPicture(): Promise<Uint8Array> {
  const frame = (background: string) =>
    sharp({ create: { width: 8, height: 8, channels: 3, background } })
      .png()
      .toBuffer()
  const frames = [await frame('#f00'), await frame('#00f')]
  return sharp(frames, { join: { animated: true } })
    .webp({ delay: [100, 100] })
    .toBuffer()
}
