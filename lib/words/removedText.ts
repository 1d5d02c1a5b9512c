/** Why an item can't be put back as it was. */
export type NotPutBack = 'there already' | 'other currency' | 'not on record'

export const removedWords = {
  heading: 'Removed',
  said: (title: string) => `${title} was taken out of the notebook by you.`,
  hint: 'It comes back as it was, at the end of its list and without marks.',
  putBack: 'Put it back',
} as const

/** Why something is not put back, and what would be right. */
export const notPutBackWords: Readonly<Record<NotPutBack, string>> = {
  'there already': 'Nothing was changed: it stands in the notebook again already.',
  'other currency':
    'Nothing was changed: the currency of the notebook has changed since, so its prices would mean something else. Add it anew.',
  'not on record': 'Nothing was changed: the record does not say what it was.',
}
