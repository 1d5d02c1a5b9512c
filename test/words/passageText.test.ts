import { describe, expect, test } from 'vitest'
import { countsSideBySide } from '../../lib/core/shares/countsSideBySide.ts'
import { nothingAsked } from '../../lib/core/shares/itemShares.ts'
import { sharedUses } from '../../lib/core/shares/passages.ts'
import {
  countStandingWords,
  countsApartWords,
  openRoundWords,
  takeLabel,
  takesWaitWords,
} from '../../lib/words/passageText.ts'
import { itemSteps } from '../../lib/words/shareSteps.ts'
import { itemShareSentences, shareNames } from '../../lib/words/shareText.ts'
import { apartWords } from '../../lib/words/sideBySideText.ts'
import { buildBlocks } from '../../lib/words/summary/buildBlocks.ts'
import { notebookWith, sectionOf, statementWith } from '../core/madeNotebook.ts'

const names = { currency: 'USD', a: 'no. 12', b: 'no. 14' }
const apart = { a: { a: '5', b: '9' }, b: { a: '6', b: '6' } }
const gates = (more: object, share: object = { principle: 'use' }) => ({
  gates: [{ ...sectionOf('140', share, 'g1'), ...more }],
})

describe('passages in words', () => {
  test.each([
    [{ kind: 'none' }, 'Nobody has counted yet.'],
    [{ kind: 'counting' }, 'asks each for half'],
    [{ kind: 'apart' }, 'The two counts differ.'],
    [
      { kind: 'settled', uses: { a: '1', b: '9' }, how: 'alike' },
      '1 passage a week by no. 12 and 9 by no. 14. Both counted the same.',
    ],
    [{ kind: 'settled', uses: apart.a, how: 'b' }, 'Both took the count of no. 14.'],
    [{ kind: 'settled', uses: apart.a, how: 'as typed' }, 'nobody counted apart'],
  ] as const)('say how a count stands and how it came about', (standing, said) => {
    expect(countStandingWords(standing, names)).toContain(said)
  })

  test.each<[string, Parameters<typeof takesWaitWords>[0], 'a' | 'b', string | undefined, string[]]>([
    ['nobody took one', {}, 'a', undefined, ['We take our own count', 'We take the count of no. 14']],
    [
      'the one that asks took the other’s',
      { a: 'b' },
      'a',
      'It waits for no. 14, which has still to take its own count too. Then it is settled.',
      ['We take our own count', 'We take the count of no. 14'],
    ],
    [
      'the other one took its count',
      { a: 'b' },
      'b',
      'It is settled once you take the same one.',
      ['We take the count of no. 12', 'Both take our count'],
    ],
    [
      'the one that asks took its own',
      { b: 'b' },
      'b',
      'It waits for no. 12, which has still to take your count; or take the count of no. 12 here.',
      ['We take the count of no. 12', 'We take our own count'],
    ],
    [
      'the other one took its own',
      { b: 'b' },
      'a',
      'It is settled once you take the same one.',
      ['We take our own count', 'Both take the count of no. 14'],
    ],
    [
      'each took the other’s',
      { a: 'b', b: 'a' },
      'a',
      'It is settled once both take the same one.',
      ['Both take our count', 'We take the count of no. 14'],
    ],
  ])(
    'say what two counts wait for where %s, and what a press then does',
    (_, takes, household, waits, labels) => {
      expect(takesWaitWords(takes, household, names)).toBe(waits)
      const [ofA, ofB] = labels
      expect([takeLabel('a', household, takes, names), takeLabel('b', household, takes, names)]).toEqual([
        ofA,
        ofB,
      ])
    },
  )

  test.each([
    [{ own: true, other: false, again: false }, 'Your count is kept. No. 14 has not counted yet'],
    [{ own: false, other: true, again: false }, 'No. 14 has counted. Its count is shown once you'],
    [{ own: false, other: true, again: true }, 'No. 14 has counted again. Its count is shown once'],
  ])('say who has counted, and never what', (round, said) => {
    expect(openRoundWords(round, 'a', names)).toContain(said)
  })

  test('say nothing of a round that nobody began', () => {
    expect(openRoundWords({ own: false, other: false, again: true }, 'a', names)).toBeUndefined()
  })

  test('of two counts say the distance in money and what is asked meanwhile', () => {
    const found = countsSideBySide(notebookWith(gates({ passages: apart })), 'g1')
    expect(found && countsApartWords(found, names)).toEqual([
      'In money the two counts are $20.00 apart at this gate.',
      'Meanwhile it asks no. 12 for $70.00 and no. 14 for $70.00.',
    ])
  })

  test('of two counts at a gate that goes another way say so, and why one can’t be used', () => {
    const nobody = { passages: { ...apart, b: { a: '0', b: '0' } } }
    const found = countsSideBySide(notebookWith(gates(nobody, { principle: 'equal' })), 'g1')
    const said = found ? countsApartWords(found, names) : []
    expect(said[0]).toBe('This gate is not shared by use now; the figures are what it would ask by use.')
    expect(said[1]).toContain('both figures are zero')
  })
})

describe('a share by use while its passages are counted apart', () => {
  const open = gates({ passages: apart })
  const notebook = notebookWith(open)
  const [gate] = notebook.gates
  const [item] = statementWith(open).items
  const withUses = shareNames(notebook, sharedUses(gate))

  test('says that it is halved for now, in the sentence and in the steps', () => {
    expect(item && itemShareSentences(item, withUses)[0]?.sentence).toBe(
      '$140.00 is halved for now, by use: passages are counted apart and not settled, and until both take one count each has half: no. 12 is asked for $70.00, no. 14 for $70.00.',
    )
    const steps = gate && item ? itemSteps(gate, item, withUses, nothingAsked) : []
    expect(steps.flatMap((group) => group.steps)).toContain(
      'Counted apart and not settled: halves until both take one count. $140.00 ÷ 2 = $70.00 for each.',
    )
  })

  test('says so beside the other ways', () => {
    expect(apartWords('use', withUses)).toBe(
      'Counted apart and not settled: halves until both take one count.',
    )
    expect(apartWords('equal', withUses)).toBeUndefined()
    expect(apartWords('use', shareNames(notebook, apart.a))).toBeUndefined()
  })

  test('is said on paper, where a settled count stands as figures', () => {
    expect(JSON.stringify(buildBlocks(notebook))).toContain(
      'counted by each household apart, and not settled',
    )
    const settled = JSON.stringify(buildBlocks(notebookWith(gates({ uses: apart.a }))))
    expect(settled).not.toContain('counted by each household apart')
    expect(settled.replaceAll('\u00a0', ' ')).toContain(
      'It is used 5 times a week by no. 12, and 9 times by no. 14.',
    )
  })
})

test('sharing the saving names where each figure for building alone comes from', () => {
  const saving = {
    principle: 'saving',
    aloneA: '80',
    aloneB: '60',
    sourceA: 'an offer of 3 May',
    sourceB: '',
  }
  const parts = { sections: [sectionOf('100', saving)] }
  const [item] = statementWith(parts).items
  const [section] = notebookWith(parts).sections
  // (100 + 80 − 60) ÷ 2 = 60.
  expect(item && itemShareSentences(item, names)[0]?.sentence).toBe(
    'Share the saving: alone no. 12 would have paid $80.00 (source: an offer of 3 May) and no. 14 $60.00; together it is $100.00, and each keeps half of what that saves: no. 12 is asked for $60.00, no. 14 for $40.00.',
  )
  const steps = section && item ? itemSteps(section, item, names, nothingAsked) : []
  expect(steps.flatMap((group) => group.steps)).toContain(
    'Share the saving: alone, no. 12 would pay $80.00 (source: an offer of 3 May) and no. 14 $60.00. Together it is $100.00.',
  )
})
