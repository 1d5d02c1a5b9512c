import { idOfItemKey } from '../../../lib/core/agreement/agreedItems.ts'
import type { Household } from '../../../lib/core/people/household.ts'
import { changesOf } from '../../../lib/store/changes.ts'

/** For how long what was taken back waits in the form, in milliseconds: an hour. */
const offered = 3_600_000
/** Entries of the record that are looked through. */
const looked = 50

/** What the form asks for. */
export type AskedConversion = Readonly<Record<'to' | 'item' | 'hours' | 'rate' | 'why', string>>

/**
 * The conversion that a household took back a short while ago, as it had asked for it; undefined where it has asked for, or
 * taken back, another since.
 */
export async function withdrawnLately(
  notebookId: string,
  household: Household,
  now: Date,
): Promise<AskedConversion | undefined> {
  const last = (await changesOf(notebookId, { happenings: true, limit: looked })).find(
    ({ household: by, detail }) =>
      by === household && detail?.books === 'conversion' && detail.step !== 'agreed',
  )
  if (last?.detail?.step !== 'withdrawn' || now.getTime() - last.at.getTime() > offered) return undefined
  const { to, hours, rate, why } = last.detail
  const text = (value: unknown) => (typeof value === 'string' ? value : '')
  const item = idOfItemKey(last.itemKey) ?? ''
  return { to: text(to), item, hours: text(hours), rate: text(rate), why: text(why) }
}
