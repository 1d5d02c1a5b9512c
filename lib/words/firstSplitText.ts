import type { Fault } from '../core/faults.ts'
import type { ForBoth } from '../core/people/household.ts'
import type { FirstSplit, FirstWay } from '../core/shares/firstSplit.ts'
import { capitalised, spokenList } from './summary/names.ts'

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

/** What the split still waits for, while it is typed: what is missing, what can’t be read yet, what comes to nothing. */
export function firstSplitWaits(faults: readonly Fault[], names: ForBoth<string>): readonly string[] {
  const named = (one: Fault) => fieldNames(names)[one.path as keyof FirstSplit] ?? one.path
  const missing = faults.filter(({ kind }) => kind === 'needed')
  const unread = faults.filter(({ kind }) => unreadKinds.has(kind))
  const rest = faults.filter(({ kind }) => kind !== 'needed' && !unreadKinds.has(kind))
  return [
    ...(missing.length === 0 ? [] : [`Type ${spokenList(missing.map(named))}, and the split stands here.`]),
    ...unread.map((one) => `${capitalised(named(one))} can’t be read yet.`),
    ...(rest.length === 0 ? [] : [comesToNothing]),
  ]
}

/** The one fault that is left where every figure is there and can be read. */
const comesToNothing = 'The two lengths add to nothing: one of them has to be more than 0.'

const unreadKinds: ReadonlySet<string> = new Set([
  'length-form',
  'length-negative',
  'number-form',
  'money-digits',
])

function fieldNames(names: ForBoth<string>): Readonly<Partial<Record<keyof FirstSplit, string>>> {
  return {
    length: 'the length',
    height: 'the height',
    materials: 'a cost',
    hours: 'the hours of all the work',
    rate: 'what an hour of the work is worth',
    frontA: `the length along the ground of ${names.a}`,
    frontB: `the length along the ground of ${names.b}`,
    basic: 'what a fence that would do for both costs',
  }
}
