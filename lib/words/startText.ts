/** What the page that starts a notebook says. */
export const startWords = {
  title: 'Start a notebook',
  lead: 'Three names, and you are in. You get a private link to keep; your neighbours are invited whenever you are ready.',
  save: 'Start the notebook',
  fence: 'What you both call this fence',
  fenceHint: 'Such as “Orchard line”.',
  own: 'Your household',
  ownHint: 'Short, as it should stand everywhere: “No. 12”.',
  neighbours: 'Your neighbours’ household',
  money: 'Money and lengths',
  later: 'All this can be changed later. Parties, with their full names, are added before signing.',
} as const

/** Why no notebook is started yet, at the name of each household. */
export const startRefusals = {
  a: 'Your household needs a name: what it is called everywhere in the notebook, such as “No. 12”.',
  b: 'Your neighbours’ household needs a name: what it is called everywhere in the notebook, such as “No. 14”.',
} as const

export const unitNames = { 'ft-in': 'Feet and inches', metric: 'Metres' } as const

/** The guess, beside the fold in which it is changed: "USD, feet and inches: change". */
export function guessWords(currency: string, units: keyof typeof unitNames): string {
  return `${currency}, ${unitNames[units].toLowerCase()}. Open to change.`
}
