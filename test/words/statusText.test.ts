import { expect, test } from 'vitest'
import type { ItemStatus } from '../../lib/core/agreement/itemStatus.ts'
import { statusWords } from '../../lib/words/statusText.ts'

const names = { a: 'no. 12', b: 'no. 14' }
const since = { kind: 'changed since signed', revision: 3, added: false } as const

test.each<[ItemStatus, string]>([
  [{ kind: 'agreed' }, 'Agreed by both'],
  [{ kind: 'marked by one', by: 'b' }, 'Agreed by no. 14 alone'],
  [{ kind: 'open' }, 'Open'],
  [{ kind: 'changed' }, 'Changed, not agreed'],
  [{ ...since, marks: 'both' }, 'Changed since revision 3, agreed by both'],
  [{ ...since, marks: 'a' }, 'Changed since revision 3, agreed by no. 12 alone'],
  [{ ...since, marks: 'none' }, 'Changed since revision 3, not agreed'],
  [{ ...since, added: true, marks: 'none' }, 'New since revision 3, not agreed'],
])('a standing is told in a few words: %o', (status, words) => {
  expect(statusWords(status, names)).toBe(words)
})
