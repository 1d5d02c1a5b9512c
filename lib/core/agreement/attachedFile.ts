/** What a photo or a paper that is kept with a notebook shows. */
export const fileKinds = ['before', 'after', 'survey', 'permit', 'receipt', 'other'] as const
export type FileKind = (typeof fileKinds)[number]

/** What is kept; anything else is refused with what to do about it. */
export const mediaTypes = ['image/jpeg', 'image/png', 'image/webp', 'application/pdf'] as const
export type MediaType = (typeof mediaTypes)[number]

/** How much is kept. Choices of this program: common practice, no source. */
export const fileLimits = {
  /** Bytes of one file as it is sent. */
  bytes: 20_000_000,
  /** Files of one notebook that are shown. */
  files: 200,
  /** Bytes of one notebook's files in all, those taken away too, for they stay on disk. */
  bytesInAll: 500_000_000,
  /** Pixels of a photo as it is sent. */
  pixels: 110_000_000,
  /** Width and height of a photo as it is kept, in pixels. */
  edge: 4096,
  /** Width and height of a small picture, in pixels. */
  smallEdge: 480,
  /** How long one photo may take to be read, in seconds. */
  seconds: 60,
  /** Characters of a caption. */
  caption: 500,
  /** Characters of a name. */
  name: 120,
} as const
