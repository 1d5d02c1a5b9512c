import { notFound } from 'next/navigation'
import { openByReaderLink, type ReaderContent, type ReaderLink } from '../store/readerLinks.ts'
import { installAddress } from './address.ts'

/** What each kind of link holds, address by address. What stands in no list here is opened by no reader's link. */
const held = {
  page: ['summary', 'costs', 'everything'],
  'summary.pdf': ['summary', 'costs', 'everything'],
  // One page each, without costs; the buyer's sheet says what was agreed and what is still owed.
  'permit-sheet.pdf': ['summary', 'costs', 'everything'],
  'land-records.pdf': ['summary', 'costs', 'everything'],
  'buyer-sheet.pdf': ['costs', 'everything'],
  // The locked copy says what everything costs.
  'locked-copy.pdf': ['costs', 'everything'],
  'agreement.json': ['everything'],
  'notebook.json': ['everything'],
  // The history tells each cost that ever changed, and all that was said.
  history: ['everything'],
  'history.json': ['everything'],
  // All of these, and the photos and papers.
  'record-pack.zip': ['everything'],
} as const satisfies Readonly<Record<string, readonly ReaderContent[]>>

/** The things that can be opened by a reader's link, by the last part of their address. */
export type ReaderThing = keyof typeof held

export const readerThings = Object.keys(held) as readonly ReaderThing[]

/** Whether a link of this content opens the thing. */
export function readerHolds(content: ReaderContent, thing: ReaderThing): boolean {
  const contents: readonly ReaderContent[] = held[thing]
  return contents.includes(content)
}

/**
 * The guard of everything under /read: opens the thing and logs the opening. A link that is unknown, ended or expired,
 * or that does not hold the thing, gets the "not found" of whatever never was. (It ends the request by throwing.) The
 * link is the whole of it: a reader is given no cookie, and no household's cookie counts here.
 */
export async function requireReader(token: string, thing: ReaderThing): Promise<ReaderLink> {
  const holds = (content: ReaderContent) => readerHolds(content, thing)
  return (await openByReaderLink({ token, what: thing, holds, at: new Date() })) ?? notFound()
}

/** The whole address of a reader's link. */
export function readerAddress(token: string): string {
  return `${installAddress()}/read/${token}`
}
