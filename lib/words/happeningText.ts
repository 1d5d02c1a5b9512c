import { type AgreedItem, wholeNotebook } from '../core/agreement/agreedItems.ts'
import { capacities } from '../core/agreement/notebook.ts'
import { bookHappening } from './bookHappeningText.ts'
import { dayWords } from './day.ts'
import { entryHappening, isEntryHappening } from './entryHappeningText.ts'
import { changedItemTitle, itemTitle } from './itemWords.ts'
import { capacityWords } from './labels.ts'
import { messageKindWords } from './messageText.ts'
import { readerContentWords, untilWords } from './readerText.ts'
import { spokenList } from './summary/names.ts'

/** An entry of the history as far as it is told in words; `kind` is `edit` or what else happened. */
export type Happened = {
  readonly kind: string
  readonly itemKey: string
  readonly before: unknown
  readonly after: unknown
  readonly detail?: Readonly<Record<string, unknown>>
}

/** What the history can be narrowed down to. */
export const historyGroups = {
  edits: { label: 'Edits', kinds: ['edit'] },
  marks: { label: 'Marks', kinds: ['mark', 'unmark'] },
  signing: { label: 'Revisions, signatures and locked copies', kinds: ['freeze', 'sign', 'seal'] },
  links: { label: 'Links and readers', kinds: ['link', 'reader'] },
  files: { label: 'Files', kinds: ['file'] },
  said: {
    label: 'What was said and proposed',
    kinds: ['message', 'held back', 'first answer', 'proposal', 'reply'],
  },
  books: { label: 'The books and the final account', kinds: ['books', 'account'] },
} as const satisfies Readonly<Record<string, { readonly label: string; readonly kinds: readonly string[] }>>

export type HistoryGroup = keyof typeof historyGroups

/**
 * What happened, in one sentence, for everything but an edit. `title` is what the item is called; `titleOf` gives what an
 * item is called by its id.
 */
export function happeningWords(
  { kind, detail = {} }: Happened,
  title: string,
  titleOf?: (id: string) => string,
): string {
  const said = (key: string) => textOf(detail[key])
  switch (kind) {
    case 'mark':
      return detail.proposal === undefined
        ? `Marked “${title}” as agreed.`
        : `Marked “${title}” as agreed, by proposal ${said('proposal')}.`
    case 'unmark':
      return `Took the mark off “${title}”.`
    case 'freeze':
      return `Put revision ${said('revision')} up for signing.`
    case 'sign':
      return `Signed revision ${said('revision')} as ${capacityOf(said('capacity'))}: ${said('partyName')}.`
    case 'seal':
      return `The locked copy of revision ${said('revision')} was made.`
    case 'link':
      return wordsFor(linkWords, said('link')) ?? 'Changed a private link.'
    case 'reader':
      return readerWords(detail)
    case 'file':
      return fileWords(detail)
    case 'message':
      return messageWords(detail)
    case 'held back':
      return said('subject') === 'needs'
        ? 'Wrote down its own needs.'
        : `Counted the passages of ${title} by itself.`
    case 'first answer':
      return `Answered the invitation: ${said('answer')}${said('until') === '' ? '' : `, ask again on ${dayWords(said('until'))}`}.${quoted(said('text'))}`
    case 'proposal':
      return `Made proposal ${said('proposal')}${forItems(detail.items, titleOf)}.${quoted(said('text'))}`
    case 'reply':
      return replySentence(detail)
    case 'books':
      if (said('books') === 'conversion') return conversionHappening(detail, title)
      if (isEntryHappening(detail)) return entryHappening(detail)
      return bookHappening(detail)
    case 'account':
      return said('account') === 'sign'
        ? `Signed final account ${said('number')} as ${capacityOf(said('capacity'))}: ${said('partyName')}.`
        : `Drew up final account ${said('number')}.`
    default:
      return `Something happened that this page has no words for: ${kind}.`
  }
}

const linkWords: Readonly<Record<string, string>> = {
  first: 'Got its first private link.',
  invitation: 'Made an invitation for the second household.',
  claimed: 'Claimed the invitation, and got a private link of its own.',
  replaced: 'Replaced its private link. The one before stopped working.',
}

const replyWords: Readonly<Record<string, string>> = {
  accepted: 'Accepted',
  declined: 'Declined',
  withdrawn: 'Withdrew',
}

function replySentence(detail: Readonly<Record<string, unknown>>): string {
  const [kind, number, by] = [textOf(detail.reply), textOf(detail.proposal), textOf(detail.by)]
  if (kind === 'answered')
    return `Answered proposal ${number} with ${by === '' ? 'another one' : `proposal ${by}`}.`
  const ended = by === '' ? '' : ` Proposal ${by} takes its place.`
  return `${wordsFor(replyWords, kind) ?? 'Replied to'} proposal ${number}.${ended}${quoted(textOf(detail.text))}`
}

/** Each step of turning hours into money, or money into hours, with its figures. */
function conversionHappening(detail: Readonly<Record<string, unknown>>, title: string): string {
  const [step, hours, rate] = [textOf(detail.step), textOf(detail.hours), textOf(detail.rate)]
  const what =
    detail.to === 'hours' ? `${hours} h of work in the place of money` : `money in the place of ${hours} h`
  return `${wordsFor(conversionSteps, step) ?? 'Kept the books:'} ${what} on ${title}, at ${rate} an hour.`
}

const conversionSteps: Readonly<Record<string, string>> = {
  asked: 'Asked to give',
  agreed: 'Agreed that the other household gives',
  withdrawn: 'Took back that it gives',
}

/** " for Slope on clay and Lane to the gardens" */
function forItems(items: unknown, titleOf: ((id: string) => string) | undefined): string {
  const ids = Array.isArray(items) ? items.filter((one) => typeof one === 'string') : []
  return titleOf === undefined || ids.length === 0 ? '' : ` for ${spokenList(ids.map(titleOf))}`
}

function quoted(text: string): string {
  return text === '' ? '' : ` “${text}”`
}

function capacityOf(stored: string): string {
  const known = capacities.find((capacity) => capacity === stored)
  return known === undefined ? 'a party' : capacityWords[known]
}

function readerWords(detail: Readonly<Record<string, unknown>>): string {
  const label = textOf(detail.label)
  if (detail.reader === 'ended') return `Ended the reader’s link for ${label}.`
  const content = textOf(detail.content)
  const shows = wordsFor(readerContentWords, content)?.name ?? content
  const expiresAt = new Date(textOf(detail.expiresAt))
  const until = Number.isNaN(expiresAt.getTime()) ? '' : ` It works through ${untilWords(expiresAt)}.`
  return `Made a reader’s link for ${label}. It shows: ${shows.charAt(0).toLowerCase()}${shows.slice(1)}.${until}`
}

function fileWords(detail: Readonly<Record<string, unknown>>): string {
  const [name, caption] = [textOf(detail.name), textOf(detail.caption)]
  if (detail.file === 'taken away') return `Took a file away: ${name}.`
  return `Added a file: ${name}${caption === '' ? '' : `, “${caption}”`}.`
}

function messageWords(detail: Readonly<Record<string, unknown>>): string {
  const kind = textOf(detail.kind)
  const name = wordsFor(messageKindWords, kind) ?? 'Remark'
  return `${name}: “${textOf(detail.text)}”`
}

/** What a table has for a stored word; an object knows `constructor` without being told. */
function wordsFor<Words>(table: Readonly<Record<string, Words>>, stored: string): Words | undefined {
  return Object.hasOwn(table, stored) ? table[stored] : undefined
}

function textOf(value: unknown): string {
  return typeof value === 'string' || typeof value === 'number' ? String(value) : ''
}

/**
 * What each item of a history is called, by key: by its name now, else by the last name that the history knows.
 *
 * @param oldestFirst the whole history, so that the name of a removed item is found
 */
export function historyTitles(
  oldestFirst: readonly Happened[],
  items: readonly AgreedItem[],
): ReadonlyMap<string, string> {
  const lastEdit = new Map<string, Happened>()
  for (const entry of oldestFirst) {
    if (!lastEdit.has(entry.itemKey) || entry.kind === 'edit') lastEdit.set(entry.itemKey, entry)
  }
  return new Map([...lastEdit].map(([key, entry]) => [key, titleOf(key, entry, items)]))
}

function titleOf(key: string, entry: Happened, items: readonly AgreedItem[]): string {
  if (key === wholeNotebook) return 'The whole notebook'
  const now = items.some((item) => item.key === key)
  if (!now && key.startsWith('decision:') && entry.kind !== 'edit') return decisionTitle(key)
  return changedItemTitle(entry, items)
}

/** A decision's key holds the decision itself; its words are there even where no edit that tells them is. */
function decisionTitle(key: string): string {
  const text = /"text":("(?:[^"\\]|\\.)*")/.exec(key)?.[1]
  return itemTitle({ kind: 'decision', key, name: text === undefined ? '' : String(JSON.parse(text)) })
}

/** What an entry of the history is about: its item, or what of the whole notebook it belongs to. */
export function happeningTitle(
  { kind, itemKey }: Pick<Happened, 'kind' | 'itemKey'>,
  titles: ReadonlyMap<string, string>,
): string {
  const about = itemKey === wholeNotebook ? wordsFor(aboutTheWhole, kind) : undefined
  return about ?? titles.get(itemKey) ?? itemKey
}

const aboutTheWhole: Readonly<Record<string, string>> = {
  books: 'The books',
  account: 'The final account',
  proposal: 'Proposals',
  reply: 'Proposals',
  'first answer': 'The first answer',
  'held back': 'Needs',
}

/** Of several entries of one kind, one after the other, that are told in one line: what they all are. */
export function moreLikeItWords(kind: string, count: number): string {
  const words: Readonly<Record<string, (more: number) => string>> = {
    books: (more) => `And ${more} more in the books`,
    mark: (more) => `And ${more} more marks`,
    unmark: (more) => `And ${more} more marks taken off`,
    file: (more) => `And ${more} more files`,
  }
  return wordsFor(words, kind)?.(count) ?? `And ${count} more`
}

/** "3f9a2c1b…": enough of a hash to compare at a glance; the whole of it stands beside. */
export function shortHash(hash: string): string {
  return `${hash.slice(0, 12)}…`
}

/** Where the history stands now, for the head of its page. */
export function historyHeadWords(head: { readonly entry: number }): string {
  return head.entry === 0
    ? 'Nothing has happened yet.'
    : `The newest entry is number ${head.entry}. Its number and its check number are printed in every locked copy that is made now.`
}

/** Whether the history still leads through the entry that a locked copy prints. */
export function sealedHistoryWords(revision: number, entry: number, leads: boolean): string {
  return leads
    ? `The locked copy of revision ${revision} prints entry ${entry}. The history still leads through it.`
    : `The locked copy of revision ${revision} prints entry ${entry} with another check number. The history up to there is not the one that was locked: something in it was changed, added or left out behind this program’s back.`
}

export const brokenHistoryAdvice =
  'Compare with the copies that each household keeps. A locked copy says what was signed, whatever stands here.'
