import { describe, expect, test } from 'vitest'
import type { Statement } from '../../lib/core/shares/statement.ts'
import { balanceSentences } from '../../lib/words/balanceText.ts'
import { capSentence, itemShareSentences, shareNames } from '../../lib/words/shareText.ts'
import { bought, notebookWith, sectionOf, statementWith } from '../core/madeNotebook.ts'

const names = shareNames(notebookWith())

/** The sentence about the materials of one section. */
function sentence(price: string, materials: unknown): string {
  const item = statementWith({ sections: [sectionOf(price, materials)] }).items[0]
  const found = item && itemShareSentences(item, names)[0]
  if (found?.pot !== 'Materials') throw new Error('the materials come first')
  return found.sentence
}

const difference = (upgradeShare: unknown, basic = '900') => ({
  principle: 'difference',
  basic,
  basicShare: { principle: 'equal' },
  upgradeShare,
})

describe('the sentence about a pot', () => {
  test.each([
    [
      'halves',
      '900',
      { principle: 'equal' },
      'Halves: $900.00 is halved: no. 12 is asked for $450.00, no. 14 for $450.00.',
    ],
    [
      'agreed parts',
      '900',
      { principle: 'percent', a: '30', b: '70' },
      'Agreed parts: 30 percent of $900.00 is asked of no. 12 and 70 percent of no. 14: no. 12 is asked for $270.00, no. 14 for $630.00.',
    ],
    [
      'one household',
      '900',
      { principle: 'one', household: 'b' },
      'One household: all of $900.00 is asked of no. 14: no. 12 is asked for $0.00, no. 14 for $900.00.',
    ],
    [
      'by length',
      '900',
      { principle: 'length', a: '60 ft', b: '30 ft' },
      '$900.00 is shared by length, 60 ft for no. 12 to 30 ft for no. 14: no. 12 is asked for $600.00, no. 14 for $300.00.',
    ],
    [
      'by benefit',
      '900',
      { principle: 'benefit', a: '2', b: '1' },
      '$900.00 is shared by benefit, 2 points for no. 12 to 1 for no. 14: no. 12 is asked for $600.00, no. 14 for $300.00.',
    ],
    [
      'share the saving',
      '1500',
      { principle: 'saving', aloneA: '900', aloneB: '1800' },
      'Share the saving: alone no. 12 would have paid $900.00 and no. 14 $1,800.00; together it is $1,500.00, and each keeps half of what that saves: no. 12 is asked for $300.00, no. 14 for $1,200.00.',
    ],
  ])('%s', (_, price, share, words) => {
    expect(sentence(price, share)).toBe(words)
  })

  test('pay the difference: the basic fence, then what is above it', () => {
    expect(sentence('1312.35', difference({ principle: 'one', household: 'a' }))).toBe(
      'Pay the difference: the basic fence of $900.00 is halved; the $412.35 above it is asked of no. 12. So no. 12 is asked for $862.35, no. 14 for $450.00.',
    )
  })

  test('pay the difference where nothing is spent above the basic fence', () => {
    expect(sentence('500', difference({ principle: 'one', household: 'a' }))).toBe(
      'Pay the difference: the basic fence of $500.00 is halved; nothing is spent above it. So no. 12 is asked for $250.00, no. 14 for $250.00.',
    )
  })

  test('by use names the passages of the gate', () => {
    const uses = { a: '5', b: '9' }
    const item = statementWith({ gates: [{ ...sectionOf('140', { principle: 'use' }, 'g1'), uses }] })
      .items[0]
    const [materials] = item ? itemShareSentences(item, { ...names, uses }) : []
    expect(materials?.sentence).toBe(
      '$140.00 is shared by use, 5 passages a week for no. 12 to 9 for no. 14: no. 12 is asked for $50.00, no. 14 for $90.00.',
    )
  })

  test('with nothing in it says so', () => {
    expect(sentence('0', { principle: 'equal' })).toBe('Nothing to share yet.')
  })

  test('says who is asked for the odd cent and why', () => {
    expect(sentence('0.01', { principle: 'equal' })).toContain(
      'The odd $0.01 goes to no. 12, because both had been asked for the same up to here.',
    )
    expect(sentence('100', { principle: 'percent', a: '33.3333', b: '66.6667' })).toContain(
      'The odd $0.01 goes to no. 14, whose exact share has the larger remainder.',
    )
  })

  test('of both pots together is one sentence', () => {
    const section = { id: 's1', materials: [bought('10')], share: { together: { principle: 'equal' } } }
    const item = statementWith({ sections: [section] }).items[0]
    expect(item && itemShareSentences(item, names)).toEqual([
      {
        pot: 'Materials and work together',
        sentence: 'Halves: $10.00 is halved: no. 12 is asked for $5.00, no. 14 for $5.00.',
      },
    ])
  })

  test('of each pot adds up: the two amounts in it are the shares', () => {
    const { items } = statementWith({
      sections: [sectionOf('7.77', { principle: 'benefit', a: '1', b: '2' })],
    })
    expect(items[0] && itemShareSentences(items[0], names)[0]?.sentence).toContain(
      'no. 12 is asked for $2.59, no. 14 for $5.18',
    )
  })
})

test('pay the difference with each other principle inside still reads as a sentence', () => {
  const inside: [unknown, string][] = [
    [
      { principle: 'percent', a: '30', b: '70' },
      'the $100.00 above it is asked of no. 12 at 30 percent and of no. 14 at 70 percent.',
    ],
    [
      { principle: 'length', a: '1 ft', b: '3 ft' },
      'the $100.00 above it is shared by length, 1 ft for no. 12 to 3 ft for no. 14.',
    ],
    [
      { principle: 'benefit', a: '2', b: '6' },
      'the $100.00 above it is shared by benefit, 2 points for no. 12 to 6 for no. 14.',
    ],
    [
      { principle: 'saving', aloneA: '60', aloneB: '60' },
      'the $100.00 above it is shared by the saving (alone no. 12 would have paid $60.00 and no. 14 $60.00; together it is $100.00, and each keeps half of what that saves).',
    ],
  ]
  for (const [share, clause] of inside) expect(sentence('1000', difference(share))).toContain(clause)
})

describe('upgrades on one section', () => {
  const upgrades = (...list: readonly (readonly [string, string, 'a' | 'b'])[]) => ({
    ...difference({ principle: 'equal' }),
    upgrades: list.map(([what, amount, household]) => ({ what, amount, household })),
  })

  test.each<[string, string, unknown, string]>([
    [
      'are each named with their household and amount, and then what is left',
      '1312.34',
      upgrades(['one foot more height', '200', 'b'], ['strips', '150.00', 'a']),
      'Pay the difference: the basic fence of $900.00 is halved; “one foot more height” for $200.00 is asked of no. 14; “strips” for $150.00 is asked of no. 12; the $62.34 left is halved. So no. 12 is asked for $631.17, no. 14 for $681.17.',
    ],
    [
      'say where there is less to ask for than they were put at',
      '1100',
      upgrades(['height', '150', 'b'], ['strips', '150', 'a'], ['', '5', 'a']),
      'Pay the difference: the basic fence of $900.00 is halved; “height” for $150.00 is asked of no. 14; of “strips” at $150.00 only $50.00 is spent, which is asked of no. 12; for an upgrade without a name nothing is left to ask for; nothing is left above that. So no. 12 is asked for $500.00, no. 14 for $600.00.',
    ],
    [
      'are left out where nothing is spent above the basic fence',
      '900',
      upgrades(['height', '150', 'b']),
      'Pay the difference: the basic fence of $900.00 is halved; nothing is spent above it. So no. 12 is asked for $450.00, no. 14 for $450.00.',
    ],
  ])('%s', (_, price, share, said) => {
    expect(sentence(price, share)).toBe(said)
  })
})

describe('a cap in words', () => {
  const sections = [sectionOf('900', { principle: 'equal' })]

  test('says what it moved and to whom', () => {
    const { asked } = statementWith({ sections, caps: { b: '400' } })
    expect(capSentence(asked, names)).toBe('The cap of no. 14 moves $50.00 to no. 12.')
  })

  test('says nothing where it moved nothing', () => {
    expect(capSentence(statementWith({ sections, caps: { b: '450' } }).asked, names)).toBeUndefined()
  })
})

describe('the balance in words', () => {
  const sections = [sectionOf('900', { principle: 'equal' })]
  const paid = (household: string, amount: string) => ({
    household,
    kind: 'cash',
    amount,
    date: '2027-03-02',
  })
  const words = (...contributions: unknown[]) =>
    balanceSentences(statementWith({ sections, contributions }) satisfies Statement, names)

  test('while bills are open', () => {
    expect(words()).toEqual([
      '$900.00 of the whole has not been given by anyone yet.',
      'On what has been given so far, no payment between you is due.',
    ])
  })

  test('where one has given for both', () => {
    expect(words(paid('a', '900'))).toEqual([
      'Together you have given what the plan asks for.',
      'On what has been given so far, one payment evens the two: no. 14 pays $450.00 to no. 12.',
    ])
  })

  test('where both have given too much', () => {
    expect(words(paid('a', '500'), paid('b', '500'))[0]).toBe(
      'Together you have given $100.00 more than the plan asks for.',
    )
  })
})
