/**
 * How much of a stranger's PDF is read. A locked copy of the largest notebook stays far below each of these; a hostile
 * file reaches one of them before it costs memory or time.
 */
export const readLimits = {
  /** Bytes of the file. */
  file: 20_000_000,
  /** Objects of the file. */
  objects: 50_000,
  /** Numbers, names, texts, lists and dictionaries in all of them and on the pages, and the letters on the pages. */
  values: 2_000_000,
  /** Lists and dictionaries inside one another. */
  depth: 32,
  /** Bytes that all packed streams together may come to. */
  unpacked: 64_000_000,
  /** Bytes that the notebook file, or that of the signatures, may come to. */
  attachment: 8_000_000,
} as const
