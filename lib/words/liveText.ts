/** What a page says while the other household is in the notebook too. */
export const liveWords = {
  hereToo: (name: string) => `${name} has this page open, too.`,
  changed: (name: string) => `${name} changed something just now. The page shows it already.`,
} as const
