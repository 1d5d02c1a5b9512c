/** What a page says while the other household is in the notebook too. */
export const liveWords = {
  hereToo: (name: string) => `${name} has this page open, too.`,
  changed: (name: string) => `${name} changed something just now. The page shows it already.`,
  changedBehind: (name: string) =>
    `${name} changed something just now. The page is left as it is, since you are typing. Show it now, and what you typed stays where its form still stands.`,
  show: 'Show it now',
  putAway: 'Put away',
} as const
