import { describe, expect, test } from 'vitest'
import { contributionKinds } from '../../lib/core/agreement/notebook.ts'
import { entryDetail, entryHappening, isEntryHappening } from '../../lib/words/entryHappeningText.ts'
import { happeningWords } from '../../lib/words/happeningText.ts'
import { notebookWith } from '../core/madeNotebook.ts'

const entryOf = (more: Record<string, unknown>) => {
  const [entry] = notebookWith({
    contributions: [{ household: 'b', kind: 'cash', amount: '259.00', date: '2027-03-02', ...more }],
  }).contributions
  if (entry === undefined) throw new Error('there is one entry')
  return entry
}
const said = { index: 4, by: 'b', giver: 'no. 14', currency: 'USD', digits: 2 } as const
const told = (more: Record<string, unknown>, how: object = {}) =>
  entryHappening(entryDetail('entered', entryOf(more), { ...said, ...how }))

describe('what was entered in the book, in words', () => {
  test.each([
    [{ note: 'pipe' }, 'Entered a receipt: pipe, $259.00.'],
    [{ shop: 'the yard' }, 'Entered a receipt: the yard, $259.00.'],
    [{}, 'Entered a receipt: $259.00.'],
    [{ kind: 'material', note: 'old pipe' }, 'Entered material given: old pipe, $259.00.'],
    [{ kind: 'refund', note: 'three posts' }, 'Entered money received back: three posts, $259.00.'],
    [
      { kind: 'hours', amount: undefined, hours: '12', rate: '25.00', task: 'dig' },
      'Entered hours worked: dig, 12 h, $300.00.',
    ],
    [{ kind: 'hours', amount: undefined, hours: '12' }, 'Entered hours worked: 12 h.'],
    [
      { kind: 'transfer', means: 'by bank', waits: true },
      'Entered a payment to the other household: $259.00, by bank. It counts once it is confirmed.',
    ],
  ])('%j', (entry, words) => {
    expect(told(entry)).toBe(words)
  })

  test('names the household that gave, where the other one wrote it down', () => {
    expect(told({ note: 'pipe' }, { by: 'a' })).toBe('Entered a receipt of no. 14: pipe, $259.00.')
  })

  test('say why an entry was taken back', () => {
    const detail = entryDetail('taken back', entryOf({ note: 'pipe' }), { ...said, why: 'entered twice' })
    expect(entryHappening(detail)).toBe('Took back a receipt: pipe, $259.00. “entered twice”')
    expect(detail.index).toBe('4')
  })

  test('are there for every kind of entry, and are what the history says', () => {
    for (const kind of contributionKinds) {
      const detail = { books: 'entered', entry: kind }
      expect(isEntryHappening(detail)).toBe(true)
      expect(entryHappening(detail)).not.toContain('an entry')
      const happened = { kind: 'books', itemKey: 'notebook', before: null, after: null, detail }
      expect(happeningWords(happened, '')).toBe(entryHappening(detail))
    }
  })

  test('hold for details that are none', () => {
    for (const odd of [undefined, null, 7, {}, 'constructor', '__proto__'])
      expect(entryHappening({ books: 'entered', entry: odd, what: odd, amount: odd })).toMatch(
        /^Entered an entry/,
      )
    expect(isEntryHappening({ books: 'bought' })).toBe(false)
  })
})
