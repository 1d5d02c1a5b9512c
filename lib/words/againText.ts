/** Entering once more what was taken back. */
export const againWords = {
  label: 'Enter it again',
  gone: 'Nothing was entered: this entry is not one that you took back, or the book has changed since. Load the page again.',
} as const
