import { idOfItemKey } from '../../../lib/core/agreement/agreedItems.ts'
import type { AgreedCeilings } from '../../../lib/core/hours/ceilings.ts'
import { agreedByBoth, type Opened } from './opened.ts'

/** The ceilings of hours that hold now: what all have signed, and what both have marked in the draft since. */
export function agreedCeilings(opened: Opened): AgreedCeilings {
  const signed = opened.revisions.find(({ stillToSign }) => stillToSign.length === 0)
  const marked = opened.standings.filter(agreedByBoth).flatMap(({ item }) => idOfItemKey(item.key) ?? [])
  return { signed: signed?.notebook, draft: opened.notebook, markedByBoth: new Set(marked) }
}
