/** What to do first, said where a notebook has nothing to draw yet. */
export const firstStepsWords = {
  heading: 'Begin with three steps',
  line: 'Say where the line is',
  lineWhy: 'Its two ends, what its place rests on, and a station or two along it.',
  section: 'Lay out the first section',
  sectionWhy: 'A stretch of fence that is built in one way: from where to where, and how high.',
  invite: 'Invite your neighbours',
  inviteWhy: 'They see and change the same pages. Nothing binds anyone before all have signed.',
  invited: 'Your neighbours are in. You both see the same pages.',
} as const
