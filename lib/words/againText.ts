/** Entering once more what was taken back. */
export const againWords = { label: 'Enter it again' } as const

/** Why it is not entered again, and what would be right. */
export const againRefusals = {
  stands:
    'Nothing was entered: an entry that says the same stands in the book after this one. If the same was given twice, enter it in the form.',
  gone: 'Nothing was entered: this entry is not one that you took back, or the book has changed since. Load the page again.',
} as const

/** Above the form that asks for money in the place of hours, after one's own request was taken back. */
export const conversionBackWords =
  'What you took back stands in the form again: send it once more if you did not mean to.'
