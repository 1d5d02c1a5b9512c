import { describe, expect, test } from 'vitest'
import { agreedItems } from '../../lib/core/agreement/agreedItems.ts'
import type { Obstacle } from '../../lib/core/agreement/readiness.ts'
import { changedItemTitle, itemTitle, obstacleSentences, obstacleWords } from '../../lib/words/itemWords.ts'
import { documentWith, halves, notebookWith } from '../core/madeNotebook.ts'

const document = documentWith({
  sections: [{ id: 's1', name: 'Lane to the gates', share: halves }],
  gates: [{ id: 'g1', name: '  ', share: halves }],
  common: [{ id: 'c1', share: halves }],
  decisions: [{ text: 'The old hazel stays.' }, { text: '' }],
})
const items = agreedItems(document)

test('every agreed item has a name for a reader', () => {
  expect(items.map(itemTitle)).toEqual([
    'The parties',
    'The line',
    'Lane to the gates',
    'Gate g1',
    'Common cost c1',
    'The caps',
    'The terms',
    'Decision: The old hazel stays',
    'A decision',
  ])
})

test('a long decision is cut short', () => {
  const title = itemTitle({ kind: 'decision', name: 'x '.repeat(100), key: '' })
  expect(title.length).toBeLessThanOrEqual('Decision: '.length + 60)
  expect(title.endsWith('…')).toBe(true)
})

describe('an item of the history', () => {
  test('has its name of now', () => {
    expect(changedItemTitle({ itemKey: 'item:s1', before: null, after: null }, items)).toBe(
      'Lane to the gates',
    )
  })

  test('has its name of then where it is gone', () => {
    const before = { currency: 'USD', item: { id: 's9', name: 'By the creek' } }
    expect(changedItemTitle({ itemKey: 'item:s9', before, after: null }, items)).toBe(
      'By the creek (removed)',
    )
  })

  test('has its id where it never had a name', () => {
    const before = { currency: 'USD', item: { id: 's9' } }
    expect(changedItemTitle({ itemKey: 'item:s9', before, after: null }, items)).toBe('s9 (removed)')
  })

  test('is a decision in its own words', () => {
    const before = { text: 'Paint it grey.' }
    expect(changedItemTitle({ itemKey: 'decision:{}', before, after: null }, items)).toBe(
      'Decision: Paint it grey',
    )
  })
})

describe('what stands in the way of signing, in words', () => {
  const line = items[1]
  if (line === undefined) throw new Error('the line is the second item')
  const obstacles: [Obstacle, string][] = [
    [
      { kind: 'not agreed', item: line, missing: ['a', 'b'] },
      'The line: not marked as agreed by no. 12 and no. 14.',
    ],
    [{ kind: 'no party', household: 'b' }, 'No. 14 has no party yet who could sign: name a person who does.'],
    [{ kind: 'party unnamed', household: 'a', partyIndex: 1 }, 'Party 2 of no. 12 has no name.'],
    [
      { kind: 'party without capacity', household: 'a', partyIndex: 0 },
      'Party 1 of no. 12 has not said yet as what it signs, such as “owner”.',
    ],
    [{ kind: 'nothing to build' }, 'There is no section and no gate yet.'],
  ]
  test.each(obstacles)('%o', (obstacle, words) => {
    expect(obstacleWords(obstacle, notebookWith())).toBe(words)
  })

  test('items that wait for the same marks are told in one sentence, after all else', () => {
    const [parties] = items
    if (parties === undefined) throw new Error('the parties are the first item')
    const waiting: Obstacle[] = [
      { kind: 'not agreed', item: parties, missing: ['b'] },
      { kind: 'not agreed', item: line, missing: ['b'] },
      { kind: 'nothing to build' },
      { kind: 'not agreed', item: line, missing: ['a', 'b'] },
    ]
    expect(obstacleSentences(waiting, notebookWith())).toEqual([
      'There is no section and no gate yet.',
      'The parties; The line: not marked as agreed by no. 14.',
      'The line: not marked as agreed by no. 12 and no. 14.',
    ])
  })

  test('a key that nobody knows is named by its path', () => {
    expect(obstacleWords({ kind: 'unknown key', path: 'caps.c' }, notebookWith())).toContain('caps.c')
  })

  test('a fault of the shares is told with its place and what would be right', () => {
    const fault = { path: 'sections[0].share.labour', kind: 'weights-zero', principle: 'use' } as const
    const words = obstacleWords({ kind: 'fault', fault }, notebookWith())
    expect(words).toContain('Section 1, work: ')
    expect(words).toContain('above zero')
  })
})
