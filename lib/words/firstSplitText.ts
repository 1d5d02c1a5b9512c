import type { FirstWay } from '../core/shares/firstSplit.ts'

/** What a notebook without a section says first, and what the page of the first split says. */
export const firstSplitWords = {
  title: 'A first split',
  lead: 'Four figures are enough to see what would be fair. It becomes one section, and everything about it can be refined later.',
  /** On The line, while nothing is written down. */
  begin: 'Begin with a first split',
  invitation:
    'Four figures are enough to see at once what each household would be asked for: how long the fence is, what it takes, and what seems fair.',
  open: 'Work out a first split',
  save: 'Keep this split',
  fence: 'The fence',
  costs: 'What it takes',
  way: 'What seems fair',
  result: 'What each is asked for',
  waiting: 'Type the length and a cost, and the split stands here.',
  basic: 'A fence that would do for both costs',
  binds: 'Nobody is bound by it: both mark what they agree to, and sign when they are ready.',
} as const

/** What the section and its lines are called until somebody gives them names of their own. */
export const firstSectionNames = {
  name: 'Along the line',
  materials: 'all materials',
  work: 'all the work',
  unit: 'lot',
} as const

export const firstWayHints: Readonly<Record<FirstWay, string>> = {
  equal: 'Each household is asked for half.',
  length: 'Each is asked in proportion to the length that runs along its own ground.',
  difference: 'Halves of a fence that would do for both; whoever wants more pays what is above it.',
}

/** What a household that works still brings in money. A minus is money that comes to it. */
export function broughtAsHours(worker: string, hours: string, left: string): string {
  return `${worker} brings ${hours} as hours, which leaves ${left} of its share in money.`
}
