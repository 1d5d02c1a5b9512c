import { dayWords } from './day.ts'

/** What a link for somebody who only reads may hold. */
export type ReaderContentName = 'summary' | 'costs' | 'everything'

type ContentWords = {
  /** In a list of links and at a choice. */
  readonly name: string
  /** For the household that chooses. */
  readonly holds: string
  /** For the reader, on the page that the link opens. */
  readonly toReader: string
}

export const readerContentWords: Readonly<Record<ReaderContentName, ContentWords>> = {
  summary: {
    name: 'The summary without costs',
    holds:
      'Where the fence stands, how it is built, the terms, the checks, the decisions and who signed. No costs, no hours, no shares. Fits a permit office.',
    toReader:
      'You can read where the fence stands, how it is built, what the two households agreed on and who signed. Costs, hours and shares are not shown.',
  },
  costs: {
    name: 'The summary with costs',
    holds: 'The whole summary, with all costs, hours, shares and what has been given so far. Fits a lender.',
    toReader: 'You can read the whole summary, with costs, hours, shares and what has been given so far.',
  },
  everything: {
    name: 'Everything',
    holds:
      'All that you two see: the summary, the notebook file with your draft, photos and papers, all that happened and all that you said to each other. Fits a buyer who takes your place.',
    toReader:
      'You can read the whole summary. Once each signed revision has its locked copy, you can save the record pack, with every file that is kept. You can read all that happened and all that was said.',
  },
}

/** Said before a household makes a link: what is left out is left out by its place, not by its sense. */
export const typedTextCaution =
  'What you typed yourselves is shown as you typed it: notes, terms, checks and decisions. If you wrote a price there, a link without costs shows it too.'

/** What was opened by a link, for the household that reads the log. */
export const openedWords: Readonly<Record<string, string>> = {
  page: 'the page',
  'summary.pdf': 'the summary (PDF)',
  'permit-sheet.pdf': 'the sheet for a permit office (PDF)',
  'land-records.pdf': 'the page for the land records (PDF)',
  'buyer-sheet.pdf': 'the sheet for a later buyer (PDF)',
  'locked-copy.pdf': 'the locked copy (PDF)',
  'agreement.json': 'the agreement file',
  'notebook.json': 'the notebook file',
  history: 'the history',
  'history.json': 'the history file',
  'record-pack.zip': 'the record pack',
}

/** How far ahead a link may run out, in days: five years. */
export const longestReading = 5 * 365

/** How many days a new link is good for unless somebody says otherwise. */
export const usualReading = 90

/** The last day on which a link works, from the first moment at which it does not: days are those of UTC. */
export function lastDayOf(expiresAt: Date): string {
  return new Date(expiresAt.getTime() - 1).toISOString().slice(0, 10)
}

/** The first moment after a day ("2027-04-30"), in UTC. */
export function endOfDay(day: string): Date {
  return new Date(Date.parse(`${day}T00:00:00Z`) + 86_400_000)
}

/** "30 April 2027, world time": the last day on which the link works. */
export function untilWords(expiresAt: Date): string {
  return `${dayWords(lastDayOf(expiresAt))}, world time`
}

/** Whether a link still works, and if not, why. */
export function readerLinkState(
  link: { readonly expiresAt: Date; readonly revokedAt?: Date },
  now: Date,
): 'open' | 'ended' | 'run out' {
  if (link.revokedAt !== undefined) return 'ended'
  return now < link.expiresAt ? 'open' : 'run out'
}

/** Which revision a reader is shown, for the head of the page. */
export function shownRevisionWords(signed: number | undefined, content: ReaderContentName): string {
  if (signed !== undefined) return `Revision ${signed}, signed by every party.`
  return content === 'everything'
    ? 'Nothing has been signed yet. What you see is a draft. It binds nobody, and it can still change.'
    : 'Nothing has been signed yet, so there is nothing to show. Come back once both households have signed.'
}

/** As long as the words for whom a link is may be, in characters. */
export const longestReader = 200

/** Why no link is made for a reader, at its field. */
export const readerRefusals = {
  label: 'Needed: for whom the link is, such as “the permit office”.',
  labelTooLong: (length: number) => `At most ${longestReader} characters; this has ${length}.`,
  content: 'Needed: choose one of the answers.',
  day: 'Needed: a day, the last on which the link works.',
  past: 'This day is over. Choose today or a later day.',
  tooFar: (last: string) => `At most five years ahead: ${last} or earlier.`,
} as const
