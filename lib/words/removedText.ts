/** Why an item can't be put back as it was. */
export type NotPutBack = 'there already' | 'other currency' | 'not on record'

/** Why an edit can't be taken back. */
export type NotUndone = NotPutBack | 'changed since' | 'as it was'

export const removedWords = {
  heading: 'Removed',
  said: (title: string) => `${title} was taken out of the notebook by you.`,
  hint: 'It comes back as it was, at the end of its list and without marks.',
  putBack: 'Put it back',
} as const

/** Why something is not put back, and what would be right. */
export const putBackRefusals: Readonly<Record<NotUndone, string>> = {
  'there already': 'Nothing was changed: it stands in the notebook again already.',
  'other currency':
    'Nothing was changed: the currency of the notebook has changed since, so its prices would mean something else. Add it anew.',
  'changed since':
    'Nothing was changed: something of it was changed again since, and that would go with it. Change it by hand.',
  'as it was': 'Nothing was changed: it stands already as it stood before that edit.',
  'not on record': 'Nothing was changed: the record does not say what it was.',
}

/** Taking back one's own last edits, on the page of the changes. */
export const undoWords = {
  heading: 'Put back what you changed',
  meaning:
    'Your own edits of the last day, as long as nothing of them was changed again. Putting back is an edit like any other: what it changes loses both marks, and both edits stay on record.',
  label: 'Put back what stood before',
  /** What an edit changed, by name; the rest is counted. */
  names: (titles: readonly string[]) =>
    titles.length <= 3 ? titles.join(', ') : `${titles.slice(0, 3).join(', ')} and ${titles.length - 3} more`,
} as const
