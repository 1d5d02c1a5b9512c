import { canonicalText } from '../core/agreement/canonicalText.ts'
import { type Change, changesOf } from './changes.ts'
import { sha256Hex } from './sha256.ts'

/** An entry of the history with its place in the chain. */
export type HistoryEntry = Change & {
  /** 1, 2, 3 … within its notebook. */
  readonly number: number
  /** SHA-256, hex, of the entry and of the hash before it: see `entryText`. */
  readonly hash: string
}

/** The hash before the first entry: 64 zeros. */
export const beforeTheFirst = '0'.repeat(64)

/**
 * The text whose SHA-256 is an entry's hash: RFC 8785 canonical JSON of what the entry says, of its number and of the
 * hash before it. Anyone can work the chain out again from an exported history.
 */
export function entryText(change: Change, number: number, previous: string): string {
  const { at, household, kind, itemKey, previousKey, before, after, detail } = change
  return canonicalText({
    number,
    at: at.toISOString(),
    household,
    kind,
    itemKey,
    ...(previousKey === undefined ? {} : { previousKey }),
    ...(kind === 'edit' ? { before, after } : { detail: detail ?? {} }),
    previous,
  })
}

/** Chains entries that come oldest first. */
export function chained(oldestFirst: readonly Change[]): HistoryEntry[] {
  let previous = beforeTheFirst
  return oldestFirst.map((change, index) => {
    const hash = sha256Hex(entryText(change, index + 1, previous))
    previous = hash
    return { ...change, number: index + 1, hash }
  })
}

/**
 * The whole history of a notebook, oldest first. The hashes are worked out each time and stored nowhere: a row altered in
 * the database by other means changes the hash of every later entry, and no longer fits the one printed in a sealed PDF.
 */
export async function historyOf(notebookId: string): Promise<HistoryEntry[]> {
  return chained((await changesOf(notebookId, { happenings: true })).reverse())
}

/** Where a history stood: what a sealed PDF prints. */
export type HistoryHead = { readonly entry: number; readonly hash: string }

export function headOf(history: readonly HistoryEntry[]): HistoryHead {
  const newest = history.at(-1)
  return newest ? { entry: newest.number, hash: newest.hash } : { entry: 0, hash: beforeTheFirst }
}

/** Whether a history still leads through a head that was printed earlier. */
export function leadsThrough(history: readonly HistoryEntry[], head: HistoryHead): boolean {
  if (head.entry === 0) return head.hash === beforeTheFirst
  return history[head.entry - 1]?.hash === head.hash
}
