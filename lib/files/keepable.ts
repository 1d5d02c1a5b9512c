import { fileLimits, type MediaType } from '../core/agreement/attachedFile.ts'
import type { FileRefusal } from '../core/agreement/fileRefusal.ts'
import { keptPhoto } from './photo.ts'
import { pdfIsWhole, recognise } from './recognise.ts'

export type Keepable =
  | { readonly mediaType: MediaType; readonly bytes: Uint8Array }
  | { readonly refused: FileRefusal }

/** What of a file that was sent is to be kept, or why it is not: a photo drawn anew, a PDF as it is. */
export async function keepable(sent: Uint8Array): Promise<Keepable> {
  if (sent.length === 0) return { refused: { kind: 'empty' } }
  if (sent.length > fileLimits.bytes)
    return { refused: { kind: 'too-large', limit: fileLimits.bytes, bytes: sent.length } }
  const recognised = recognise(sent)
  if ('other' in recognised) return { refused: { kind: 'not-taken', format: recognised.other } }
  const { mediaType } = recognised
  if (mediaType === 'application/pdf')
    return pdfIsWhole(sent) ? { mediaType, bytes: sent } : { refused: { kind: 'broken', mediaType } }
  const photo = await keptPhoto(sent, mediaType)
  return 'refused' in photo ? photo : { mediaType, bytes: photo.bytes }
}
