import { describe, expect, test } from 'vitest'
import { wayNames } from '../../lib/core/shares/shareUnder.ts'
import { itemSideBySide } from '../../lib/core/shares/sideBySide.ts'
import { shareNames } from '../../lib/words/shareText.ts'
import {
  followWords,
  rangeNote,
  rangeSentences,
  staysWords,
  unusableWords,
  wayWords,
} from '../../lib/words/sideBySideText.ts'
import { notebookWith, sectionOf } from '../core/madeNotebook.ts'
import { readingGrade } from './readingGrade.ts'

const names = shareNames(notebookWith())

function sideBySide(share: unknown, more: Record<string, unknown> = {}) {
  const found = itemSideBySide(notebookWith({ sections: [{ ...sectionOf('1.00', share), ...more }] }), 's1')
  if (found?.range === undefined) throw new Error('there is such an item')
  return { ...found, range: found.range }
}

describe('side by side, in words', () => {
  test('every way has a name of its own', () => {
    expect(new Set(wayNames.map((way) => wayWords(way, names))).size).toBe(wayNames.length)
    expect(wayWords('one-a', names)).toBe('One household: no. 12')
    expect(wayWords('one-b', names)).toBe('One household: no. 14')
  })

  test('the range with its middle and the odd cent', () => {
    expect(rangeSentences(sideBySide({ principle: 'percent', a: '33', b: '67' }).range, names)).toEqual([
      'They ask no. 12 for $0.33 to $0.50, and no. 14 for $0.50 to $0.67.',
      'The two ends are $0.17 apart.',
      'The middle is $0.42 for no. 12 and $0.58 for no. 14.',
      'The odd $0.01 goes to no. 12.',
    ])
  })

  test('no range where every way asks for the same', () => {
    expect(rangeSentences(sideBySide({ principle: 'equal' }).range, names)).toEqual([
      'All ways that share between both ask for the same: $0.50 of no. 12 and $0.50 of no. 14.',
    ])
  })

  test('why a way can’t be used', () => {
    const { unusable } = sideBySide({ principle: 'saving', aloneA: '0.30', aloneB: '0.20' })
    const said = Object.fromEntries(unusable.map((one) => [one.way, unusableWords(one)]))
    expect(said).toEqual({
      percent: 'No percentages stand in this item yet. Enter them on the item’s page.',
      length: 'No lengths for the two households stand in this item yet. Enter them on the item’s page.',
      use: 'Only a gate has passages to count.',
      benefit: 'No points stand in this item yet. Enter them on the item’s page.',
      saving:
        'Building together (1.00) costs 0.50 more than building alone (0.50 in all), so there is no saving to share; correct the figures for building alone, or choose another principle.',
      difference: 'No costs of a basic fence stand in this item yet. Enter them on the item’s page.',
    })
    expect(unusableWords({ way: 'use', because: 'no passages' })).toBe(
      'No passages were counted at this gate yet. Count them on the gate’s page.',
    )
  })

  test('what stays, and how many follow', () => {
    expect([
      staysWords({ stays: 'labour' }),
      staysWords({ stays: 'materials' }),
      staysWords({ stays: undefined }),
    ]).toEqual([
      'The work stays shared as chosen now.',
      'The materials stay shared as chosen now.',
      undefined,
    ])
    expect([followWords(3, 3), followWords(1, 3)]).toEqual(['all', '1 of 3'])
  })

  test('is plain to read', () => {
    const { range, unusable } = sideBySide({ principle: 'percent', a: '33', b: '67' })
    const said = [...rangeSentences(range, names), rangeNote, ...unusable.map(unusableWords)]
    expect(readingGrade(said.join('\n'))).toBeLessThanOrEqual(8)
  })
})
