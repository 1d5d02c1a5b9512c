/** A place that both sides changed, in words, with what they have there. Missing there is `undefined`. */
export type MergeClash = {
  readonly path: string
  readonly label: string
  readonly mine: string
  readonly theirs: string
  readonly theirValue: unknown
}

/** Two versions of a draft brought together. */
export type Merging = {
  /** What only one side changed as that side has it; at a clash what is mine. */
  readonly draft: unknown
  readonly clashes: readonly MergeClash[]
  /** What of theirs came in without a question: the names of the places. */
  readonly taken: readonly string[]
  /** Nothing in it differs from theirs. */
  readonly isTheirs: boolean
}

/** Brings what is on the page together with what was saved meanwhile; both were made from `opened`. */
export type MergeSaved = (opened: unknown, mine: unknown, theirs: unknown) => Promise<Merging>
