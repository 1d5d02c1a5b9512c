/** What to do first, said where a notebook has nothing to draw yet. */
export const firstStepsWords = {
  heading: 'Begin with three steps',
  /** Where the first split is the beginning, and this the other way. */
  instead: 'Or lay it out step by step',
  line: 'Say where the line is',
  lineWhy: 'Its two ends, what its place rests on, and a station or two along it.',
  section: 'Lay out the first section',
  sectionWhy: 'A stretch of fence that is built in one way: from where to where, and how high.',
  invite: 'Invite your neighbours',
  inviteWhy: 'They see and change the same pages. Nothing binds anyone before all have signed.',
  invited: 'Your neighbours are in. You both see the same pages.',
} as const

/** Under the title of The line: its two ends, or what to do first. */
export function lineLead(line: { readonly start: string; readonly end: string }, empty: boolean): string {
  const { start, end } = line
  if (start !== '' || end !== '') return `From ${start || 'its start'} to ${end || 'its end'}.`
  return empty
    ? 'Nothing is laid out yet.'
    : 'Say where the line runs, then lay out sections and gates along it.'
}
