import sharp, { type Sharp } from 'sharp'
import { fileLimits, type MediaType } from '../core/agreement/attachedFile.ts'
import type { FileRefusal } from '../core/agreement/fileRefusal.ts'

export type PhotoType = Exclude<MediaType, 'application/pdf'>
export type Photo = { readonly bytes: Uint8Array } | { readonly refused: FileRefusal }

const formatOf = { 'image/jpeg': 'jpeg', 'image/png': 'png', 'image/webp': 'webp' } as const

// A cache of opened files would keep what people sent in memory; two cores serve the pages, too.
sharp.cache(false)
sharp.concurrency(1)

/**
 * A photo as it is kept: drawn anew from its pixels, upright, at most `fileLimits.edge` wide and high, of the same kind.
 * Nothing but the pixels gets through: no position, no time, no name of a camera, no profile (colours are brought to
 * sRGB), nothing that was hung on behind the picture.
 */
export function keptPhoto(bytes: Uint8Array, mediaType: PhotoType, limits = fileLimits): Promise<Photo> {
  return drawn(bytes, mediaType, limits, limits.edge, (picture) => written(picture, mediaType))
}

/** A small picture of a photo as it is kept, as WebP. */
export function smallPhoto(bytes: Uint8Array, mediaType: PhotoType): Promise<Photo> {
  return drawn(bytes, mediaType, fileLimits, fileLimits.smallEdge, (picture) => picture.webp({ quality: 75 }))
}

async function drawn(
  bytes: Uint8Array,
  mediaType: PhotoType,
  limits: { readonly pixels: number; readonly seconds: number },
  edge: number,
  write: (picture: Sharp) => Sharp,
): Promise<Photo> {
  try {
    const options = { limitInputPixels: limits.pixels, failOn: 'error', sequentialRead: true } as const
    const { format, pages = 1, width = 0, height = 0 } = await sharp(bytes, options).metadata()
    if (format !== formatOf[mediaType]) return { refused: { kind: 'broken', mediaType } }
    if (width * height > limits.pixels) return { refused: { kind: 'too-many-pixels', limit: limits.pixels } }
    if (pages > 1) return { refused: { kind: 'moving-picture' } }
    const picture = sharp(bytes, options)
      .timeout({ seconds: limits.seconds })
      .autoOrient()
      .resize({ width: edge, height: edge, fit: 'inside', withoutEnlargement: true })
      .toColourspace('srgb')
    return { bytes: await write(picture).toBuffer() }
  } catch (error) {
    return { refused: refusalFrom(error, mediaType, limits.pixels) }
  }
}

function written(picture: Sharp, mediaType: PhotoType): Sharp {
  switch (mediaType) {
    case 'image/jpeg':
      return picture.jpeg({ quality: 85 })
    case 'image/png':
      return picture.png({ compressionLevel: 9 })
    case 'image/webp':
      return picture.webp({ quality: 85 })
  }
}

/** sharp tells what was wrong in words only. */
function refusalFrom(error: unknown, mediaType: MediaType, pixels: number): FileRefusal {
  const said = error instanceof Error ? error.message : String(error)
  if (/exceeds pixel limit/i.test(said)) return { kind: 'too-many-pixels', limit: pixels }
  if (/timeout/i.test(said)) return { kind: 'took-too-long' }
  return { kind: 'broken', mediaType }
}
