/**
 * How much of a stranger's PDF is read. A locked copy of the largest notebook stays far below each of these; a hostile
 * file reaches one of them before it costs memory or time.
 */
export const readLimits = {
  /** Bytes of the file. */
  file: 20_000_000,
  /** Objects of the file. */
  objects: 50_000,
  /** Numbers, names, texts, lists and dictionaries in all of them. */
  values: 500_000,
  /** The same on the pages, and the letters on them. The paper of a notebook of 2 MB comes to 7 million. */
  pageValues: 10_000_000,
  /** Lists and dictionaries inside one another. */
  depth: 32,
  /** Bytes that all packed streams together may come to. */
  unpacked: 64_000_000,
  /** Bytes that what stands on one page may come to, or the table of a font. */
  page: 2_000_000,
  /** Bytes that the notebook file may come to, or that of the signatures: the most that a notebook may have, and a little. */
  attachment: 2_500_000,
} as const
