import type { ItemStatus, StatusLook } from '../core/agreement/itemStatus.ts'
import type { Household } from '../core/people/household.ts'

type Names = { readonly a: string; readonly b: string }

/** Where an item stands, in a few words: "Agreed by both", "Changed since revision 1, agreed by both". */
export function statusWords(status: ItemStatus, names: Names): string {
  switch (status.kind) {
    case 'agreed':
      return 'Agreed by both'
    case 'marked by one':
      return markedByOne(status.by, names)
    case 'open':
      return 'Open'
    case 'changed':
      return 'Changed, not agreed'
    case 'changed since signed': {
      const since = `${status.added ? 'New' : 'Changed'} since revision ${status.revision}`
      if (status.marks === 'both') return `${since}, agreed by both`
      if (status.marks === 'none') return `${since}, not agreed`
      return `${since}, agreed by ${names[status.marks]} alone`
    }
  }
}

function markedByOne(household: Household, names: Names): string {
  return `Agreed by ${names[household]} alone`
}

/** The four looks in a word or two, for the key of the drawing and the names of its parts. */
export const lookWords: Readonly<Record<StatusLook, string>> = {
  agreed: 'agreed by both',
  one: 'agreed by one alone',
  open: 'open',
  changed: 'changed',
}
