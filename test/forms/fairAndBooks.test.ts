import { describe, expect, test } from 'vitest'
import { agreedItems } from '../../lib/core/agreement/agreedItems.ts'
import { agreementText } from '../../lib/core/agreement/canonicalText.ts'
import { readDocument, unknownKeys } from '../../lib/forms/readNotebook.ts'

const equal = { principle: 'equal' }

/** A notebook that uses every optional key of fair shares and books. */
function document() {
  const marks = { a: { on: '2027-03-05' } }
  const line = { item: 's1', pot: 'materials', what: 'pipe', place: '1' }
  const kept = { kind: 'leftover', what: 'pipe', item: 's1', value: '3.00', household: 'a' }
  return {
    format: 'mearing-notebook',
    version: 1,
    currency: 'USD',
    households: { a: {}, b: {} },
    sections: [
      {
        id: 's1',
        materials: [{ what: 'pipe', quantity: '2', unitPrice: '10', suppliedBy: 'bought' }],
        labour: [{ task: 'weld', hours: '4', rate: '30', by: 'a', skill: 'skilled', ceiling: '6' }],
        share: {
          materials: {
            principle: 'difference',
            basic: '10.00',
            basicShare: equal,
            upgrades: [{ what: 'a foot more', amount: '5.00', household: 'b' }],
            upgradeShare: equal,
          },
          labour: { principle: 'saving', aloneA: '90.00', aloneB: '90.00', sourceA: 'an offer', sourceB: '' },
        },
        basicFence: { height: '4 ft', materials: [], labour: [] },
        meets: [{ household: 'b', need: 'privacy' }],
      },
    ],
    gates: [{ id: 'g1', passages: { a: { a: '1', b: '2' }, takes: { a: 'b' } }, share: { together: equal } }],
    common: [{ id: 'c1', spread: 'cost', share: { together: equal } }],
    arrangements: {
      tolerance: '10',
      rates: { skilled: { rate: '34', quote: '42', quoteFrom: 'a shop, by phone', on: '2027-02-01' } },
      instalments: { from: 'b', total: '20.00', parts: [{ on: '2027-05-01', amount: '20.00' }] },
    },
    contributions: [
      {
        household: 'a',
        kind: 'cash',
        amount: '20.00',
        date: '2027-03-02',
        shop: 'the yard',
        lines: [{ ...line, quantity: '2', amount: '20.00' }],
      },
      { household: 'b', kind: 'transfer', amount: '5.00', date: '2027-03-02', means: 'cash', waits: true },
      {
        household: 'a',
        kind: 'material',
        amount: '5.00',
        date: '2027-03-02',
        valuation: { documented: '', weight: '20', unit: 'lb', yardPrice: '0.25', saidBy: 'the yard', marks },
      },
    ],
    letter: { wrong: 'It leans.', answerBy: '2027-02-01' },
    books: {
      bought: [{ ...line, amount: '20.00', marks }],
      things: [
        { ...kept, marks, agreed: { ...kept, value: '4.00', marks }, off: { on: '2027-03-05', by: 'a' } },
      ],
      conversions: [
        { household: 'b', to: 'money', item: 's1', hours: '1', rate: '30', on: '2027-03-05', marks },
      ],
    },
  }
}

describe('optional keys of fair shares and books', () => {
  test('are known, every one', () => {
    const read = readDocument(document())
    expect(read.ok ? [] : read.faults).toEqual([])
    expect(unknownKeys(document())).toEqual([])
  })

  test('are refused with their paths where they do not hold', () => {
    const wrong = document() as never as {
      books: { bought: { amount: string }[]; things: object[] }
      common: object[]
    }
    Object.assign(wrong.books.bought[0] as object, { amount: '1.234', pot: 'both' })
    Object.assign(wrong.books.things[0] as object, { agreed: { value: '4.00' }, off: { by: 'a' } })
    Object.assign(wrong.common[0] as object, { spread: 'by weight' })
    const read = readDocument(wrong)
    expect(read.ok ? [] : read.faults.map(({ path }) => path)).toEqual([
      'common[0].spread',
      'books.bought[0].pot',
      'books.bought[0].amount',
      'books.things[0].agreed.kind',
      'books.things[0].off.on',
    ])
  })

  test('of the books and of the first letter are no part of what is signed', () => {
    const { books: _books, letter: _letter, contributions: _given, ...agreement } = document()
    expect(agreementText(document())).toBe(agreementText(agreement))
    expect(agreementText(document())).not.toBe(agreementText({ ...agreement, arrangements: undefined }))
  })

  test('make arrangements an item that both mark, and only where they are there', () => {
    const { arrangements: _none, ...without } = document()
    expect(agreedItems(document()).map(({ key }) => key)).toContain('arrangements')
    expect(agreedItems(without).map(({ key }) => key)).not.toContain('arrangements')
  })
})
