import { describe, expect, test } from 'vitest'
import { agreedItems } from '../../lib/core/agreement/agreedItems.ts'
import { happenings } from '../../lib/store/happenings.ts'
import { messageKinds } from '../../lib/store/messages.ts'
import { readerContents } from '../../lib/store/readerLinks.ts'
import {
  type Happened,
  happeningWords,
  historyGroups,
  historyTitles,
  sealedHistoryWords,
} from '../../lib/words/happeningText.ts'
import { messageKindWords } from '../../lib/words/messageText.ts'
import { readerContentWords } from '../../lib/words/readerText.ts'

const happened = (kind: string, detail: Record<string, unknown> = {}, itemKey = 'line'): Happened => ({
  kind,
  itemKey,
  before: null,
  after: null,
  detail,
})
const words = (kind: string, detail: Record<string, unknown> = {}) =>
  happeningWords(happened(kind, detail), 'The line')

describe('what happened, in words', () => {
  test.each([
    ['mark', { fingerprint: 'f' }, 'Marked “The line” as agreed.'],
    ['unmark', {}, 'Took the mark off “The line”.'],
    ['freeze', { revision: 2 }, 'Put revision 2 up for signing.'],
    [
      'sign',
      { revision: 2, capacity: 'co-owner', partyName: 'Ida Marrow' },
      'Signed revision 2 as co-owner: Ida Marrow.',
    ],
    ['seal', { revision: 2 }, 'The locked copy of revision 2 was made.'],
    ['link', { link: 'first' }, 'Got its first private link.'],
    ['link', { link: 'invitation' }, 'Made an invitation for the second household.'],
    ['link', { link: 'claimed' }, 'Claimed the invitation, and got a private link of its own.'],
    ['link', { link: 'replaced' }, 'Replaced its private link. The one before stopped working.'],
    [
      'reader',
      { reader: 'made', label: 'the bank', content: 'costs', expiresAt: '2027-05-01T00:00:00.000Z' },
      'Made a reader’s link for the bank. It shows: the summary with costs. It works through 30 April 2027, world time.',
    ],
    ['reader', { reader: 'ended', label: 'the bank' }, 'Ended the reader’s link for the bank.'],
    ['file', { file: 'added', name: 'old.jpg', caption: '' }, 'Added a file: old.jpg.'],
    ['file', { file: 'added', name: 'old.jpg', caption: 'the lane' }, 'Added a file: old.jpg, “the lane”.'],
    ['file', { file: 'taken away', name: 'old.jpg' }, 'Took a file away: old.jpg.'],
    ['message', { kind: 'objection', text: 'Too high.' }, 'Objection: “Too high.”'],
    ['held back', { subject: 'needs' }, 'Wrote down its own needs.'],
    ['held back', { subject: 'passages', round: 2 }, 'Counted the passages of The line by itself.'],
  ])('%s %j', (kind, detail, said) => {
    expect(words(kind, detail)).toBe(said)
  })

  test('are there for everything that goes on record, and each kind can be looked for by itself', () => {
    for (const kind of happenings) expect(words(kind)).not.toContain('no words for')
    const grouped = Object.values(historyGroups).flatMap(({ kinds }) => [...kinds] as string[])
    expect(grouped.sort()).toEqual(['edit', ...happenings].sort())
    expect(Object.keys(messageKindWords).sort()).toEqual([...messageKinds].sort())
    expect(Object.keys(readerContentWords).sort()).toEqual([...readerContents].sort())
  })

  test('hold for details that are none, and for names that every object has', () => {
    for (const odd of [undefined, null, 7, {}, [], 'constructor', '__proto__']) {
      const detail = {
        revision: odd,
        link: odd,
        reader: odd,
        content: odd,
        kind: odd,
        text: odd,
        expiresAt: odd,
      }
      for (const kind of happenings) expect(typeof words(kind, detail)).toBe('string')
    }
    expect(words('constructor')).toBe('Something happened that this page has no words for: constructor.')
  })
})

describe('what items of the history are called', () => {
  const edit = (itemKey: string, before: unknown, after: unknown): Happened => ({
    kind: 'edit',
    itemKey,
    before,
    after,
  })
  const document = { sections: [{ id: 's1', name: 'Lane end' }], decisions: [] }
  const titles = historyTitles(
    [
      edit('item:s1', null, { item: { name: 'Lane' } }),
      edit('item:s2', null, { item: { name: 'Old part' } }),
      happened('mark', {}, 'item:s2'),
      edit('item:s2', { item: { name: 'Old part, reworded' } }, null),
      happened('unmark', {}, 'item:s2'),
      happened('mark', {}, 'decision:{"on":"2027-02-12","text":"The \\"old\\" hazel stays."}'),
      happened('freeze', {}, 'notebook'),
      edit('checks', [], []),
    ],
    agreedItems(document),
  )

  test('is their name now, else the last that is known', () => {
    expect(Object.fromEntries(titles)).toEqual({
      'item:s1': 'Lane end',
      'item:s2': 'Old part, reworded (removed)',
      'decision:{"on":"2027-02-12","text":"The \\"old\\" hazel stays."}': 'Decision: The "old" hazel stays',
      notebook: 'The whole notebook',
      checks: 'Ask first',
    })
  })
})

test('a history that does not lead through a locked copy is told apart from one that does', () => {
  expect(sealedHistoryWords(2, 14, true)).toContain('still leads through it')
  expect(sealedHistoryWords(2, 14, false)).toContain('something in it was changed, added or left out')
})
