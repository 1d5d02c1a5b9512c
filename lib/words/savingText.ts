/** Said at every figure for building alone that comes without its source. */
export const savingRefusals = {
  source: 'Needed: where this figure comes from, such as an offer with its date, or your own reckoning.',
} as const

/** Said where shares by the saving are entered. */
export const savingFits =
  'It fits only where each of you would build alone. Whoever would not build would pay nothing alone, and has no saving to share.'
