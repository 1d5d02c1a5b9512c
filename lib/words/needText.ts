import type { MetBy, Need, NeedWeight } from '../core/agreement/needs.ts'
import { needKindOf } from '../core/agreement/needs.ts'
import type { MetNeed, NeedKind, Notebook } from '../core/agreement/notebook.ts'
import { householdName } from './labels.ts'
import { capitalised, itemTitle, spokenList } from './summary/names.ts'

/** What a household may need of a fence, as it stands in a sentence. */
export const needWords: Readonly<Record<NeedKind, string>> = {
  'animals-in': 'a dog or another pet kept in',
  privacy: 'not being looked at',
  light: 'light and air let through',
  stock: 'livestock held back',
  'low-cost': 'little to pay',
  repair: 'a repair is enough',
}

/** What each need means, for whoever says it. */
export const needMeaning: Readonly<Record<NeedKind, string>> = {
  'animals-in': 'Nothing it can slip under, climb or jump.',
  privacy: 'Where you sit, or where your windows look out.',
  light: 'For beds, windows, or a view that is to stay.',
  stock: 'Cattle, sheep, horses: on your land, or kept off it.',
  'low-cost': 'Money, or hours, that your household can spare.',
  repair: 'You would not build anew if it were yours alone.',
}

export const weightWords: Readonly<Record<NeedWeight, string>> = {
  must: 'must have',
  like: 'would like',
}

/** The longest that a household may add to a need, and the longest need in its own words. In characters. */
export const longestNeedNote = 500
export const longestOwnNeed = 120
/** How many needs of its own a household may say. */
export const mostOwnNeeds = 12

export const needFaults = {
  nothing: 'Needed: say at least one need, above or in your own words.',
  weight: 'Needed: must have, or would like.',
  words: 'Needed: what your household needs, in a few words.',
  twice: 'This need stands above already; say it once.',
  ofTheSix: 'This is one of the six above; choose it there.',
  unmeant: 'You wrote something here. Choose must have or would like, or take the words out.',
  noteTooLong: (length: number) => `At most ${longestNeedNote} characters; this has ${length}.`,
  ownTooLong: (length: number) => `At most ${longestOwnNeed} characters; this has ${length}.`,
  tooMany: `At most ${mostOwnNeeds} needs of your own; put some of them together.`,
} as const

export const needsKept = 'Kept.'

/** A need in words: one of the six, or the household's own. */
export function needText(need: string): string {
  const kind = needKindOf(need)
  return kind === undefined ? need : needWords[kind]
}

/** "must have: not being looked at (the terrace)". */
export function needLine({ need, weight, words }: Need): string {
  return `${weightWords[weight]}: ${needText(need)}${words === '' ? '' : ` (${words})`}`
}

/** Which sections meet a need, or that it is open. */
export function metByWords(notebook: Notebook, { sections }: MetBy): string {
  if (sections.length === 0) return 'Open: no section meets it yet.'
  const titles = sections.map((index) => itemTitle('section', index, notebook.sections[index]?.name ?? ''))
  return `Met by ${spokenList(titles)}.`
}

/** What a section meets, for the paper that both sign: "not being looked at, for no. 14". Empty where it says nothing. */
export function meetsWords(notebook: Notebook, meets: readonly MetNeed[]): string {
  return meets
    .map(({ household, need }) => `${needText(need)}, for ${householdName(notebook, household)}`)
    .join('; ')
}

/** Where the two stand with their needs, for one of them. */
export function needsStanding(
  said: { readonly own: boolean; readonly other: boolean },
  other: string,
): string {
  if (said.own && said.other) return 'Both have said what they need, so each sees the other’s.'
  if (said.own)
    return `Yours is kept. ${capitalised(other)} has not said its needs yet; once it has, each sees the other’s.`
  if (said.other) return `${capitalised(other)} has said its needs. They are shown once you have said yours.`
  return `${capitalised(other)} has not said its needs yet. Neither sees the other’s before both have said theirs.`
}

export const needsInvitation =
  'Before any price: say what your household needs of this fence. The other sees it only once it has said its own.'
export const meetsHint =
  'Once both households have said what they need, tick here which needs this section meets.'
export const noLongerSaid = 'no longer said as a need'
