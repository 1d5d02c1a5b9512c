import type { MediaType } from './attachedFile.ts'

/** Kinds of file that are known by their content and still not kept. */
export type OtherFormat = 'heic' | 'avif' | 'gif' | 'svg' | 'tiff' | 'bmp' | 'zip' | 'text' | 'unknown'

/** Why a file is not kept. Nothing of it is on record or on disk then. */
export type FileRefusal =
  | { readonly kind: 'empty' }
  /** `bytes` is undefined where it was not read to its end. */
  | { readonly kind: 'too-large'; readonly limit: number; readonly bytes?: number }
  | { readonly kind: 'not-taken'; readonly format: OtherFormat }
  /** It begins like one and is not one to its end. */
  | { readonly kind: 'broken'; readonly mediaType: MediaType }
  | { readonly kind: 'too-many-pixels'; readonly limit: number }
  | { readonly kind: 'moving-picture' }
  | { readonly kind: 'took-too-long' }
  | { readonly kind: 'there-already' }
  | { readonly kind: 'too-many-files'; readonly limit: number }
  | { readonly kind: 'notebook-full'; readonly limit: number }
  | { readonly kind: 'disk-full' }
  | { readonly kind: 'not-written' }
  /** The connection ended before the file did. */
  | { readonly kind: 'broke-off' }
  /** By whoever sent it, before anything of it was kept. */
  | { readonly kind: 'stopped' }
  | { readonly kind: 'no-such-kind' }
  | { readonly kind: 'no-such-item' }
  | { readonly kind: 'caption-too-long'; readonly limit: number }
  /** What came with the file is not what the form sends. */
  | { readonly kind: 'unreadable-form' }

/** A file on disk that can't be given out as it was kept. */
export type FileDamage = 'missing' | 'altered' | 'unreadable'
