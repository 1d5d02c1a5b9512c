import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { withBookBroughtBy } from '../../lib/forms/importedBook.ts'
import { withoutMarks } from '../../lib/forms/withoutMarks.ts'

type Entry = Readonly<Record<string, unknown>>
const receipt = { household: 'b', kind: 'cash', date: '2027-04-01', amount: '385.00', enteredBy: 'b' }
const ofA = { household: 'a', kind: 'cash', date: '2027-04-02', amount: '12.00', enteredBy: 'a' }
const struckBy = (by: 'a' | 'b') => ({ struck: { on: '2027-04-05', by, why: 'x' } })
const on = '2027-04-03'

/** The book once household a has put a file with these entries in the place of one with those. */
function brought(file: readonly Entry[], standing: readonly Entry[]): unknown {
  return withBookBroughtBy('a', withoutMarks({ contributions: file }), { contributions: standing })
    .contributions
}

describe('the book of a file that household a brings', () => {
  test.each<[string, readonly Entry[], readonly Entry[], readonly Entry[]]>([
    ['takes none of b’s receipts back in b’s name', [{ ...receipt, ...struckBy('b') }], [receipt], [receipt]],
    ['nor in a’s', [{ ...receipt, ...struckBy('a') }], [receipt], [receipt]],
    ['takes back what a entered', [{ ...ofA, ...struckBy('a') }], [ofA], [{ ...ofA, ...struckBy('a') }]],
    ['takes back nothing of a’s in b’s name', [{ ...ofA, ...struckBy('b') }], [ofA], [ofA]],
    [
      'leaves what b took back as it stands',
      [{ ...receipt, ...struckBy('b') }],
      [{ ...receipt, ...struckBy('b') }],
      [{ ...receipt, ...struckBy('b') }],
    ],
    ['has what is new entered by a', [receipt], [], [{ ...receipt, enteredBy: 'a' }]],
    [
      'has the second of the same entered by a',
      [receipt, receipt],
      [receipt],
      [receipt, { ...receipt, enteredBy: 'a' }],
    ],
    [
      'has a receipt of b without a writer entered by a',
      [{ household: 'b', kind: 'cash', date: on, amount: '1.00' }],
      [],
      [{ household: 'b', kind: 'cash', date: on, amount: '1.00', enteredBy: 'a' }],
    ],
    [
      'has what is new and taken back taken back by a',
      [{ ...receipt, ...struckBy('b') }],
      [],
      [{ ...receipt, enteredBy: 'a', ...struckBy('a') }],
    ],
    [
      'lets a payment of a wait, whoever is said to have entered it',
      [{ ...ofA, kind: 'transfer', enteredBy: 'b', confirmed: { on, by: 'b' } }],
      [],
      [{ ...ofA, kind: 'transfer', waits: true }],
    ],
    [
      'lets a payment of a wait that says nothing of it',
      [{ ...ofA, kind: 'transfer' }],
      [],
      [{ ...ofA, kind: 'transfer', waits: true }],
    ],
    [
      'leaves a payment confirmed that stands so',
      [{ ...receipt, kind: 'transfer', enteredBy: 'a', confirmed: { on, by: 'a' } }],
      [{ ...receipt, kind: 'transfer', enteredBy: 'a', confirmed: { on, by: 'a' } }],
      [{ ...receipt, kind: 'transfer', enteredBy: 'a', confirmed: { on, by: 'a' } }],
    ],
    [
      'finds what stands although one before it reads alike but for being taken back',
      [{ ...receipt, ...struckBy('b') }, receipt],
      [receipt],
      [{ ...receipt, enteredBy: 'a', ...struckBy('a') }, receipt],
    ],
  ])('%s', (_what, file, standing, expected) => {
    expect(brought(file, standing)).toEqual(expected)
  })

  test('has nothing in b’s name, entered or taken back, that does not stand already', () => {
    const either = fc.constantFrom('a' as const, 'b' as const)
    const entry = fc
      .record({
        household: either,
        kind: fc.constantFrom('cash', 'transfer'),
        amount: fc.constantFrom('1', '2'),
        enteredBy: fc.option(either, { nil: undefined }),
        struck: fc.option(
          either.map((by) => ({ on, by, why: 'x' })),
          { nil: undefined },
        ),
        confirmed: fc.option(
          either.map((by) => ({ on, by })),
          { nil: undefined },
        ),
      })
      .map((one) => Object.fromEntries(Object.entries(one).filter(([, value]) => value !== undefined)))
    const book = fc.array(entry, { maxLength: 5 })
    fc.assert(
      fc.property(book, book, (file, standing) => {
        const left = standing.map((one) => JSON.stringify(one))
        for (const one of brought(file, standing) as Entry[]) {
          const stands = left.indexOf(JSON.stringify(one))
          if (stands >= 0) {
            left.splice(stands, 1)
            continue
          }
          expect(one.enteredBy ?? one.household).toBe('a')
          expect((one.struck as Entry | undefined)?.by ?? 'a').toBe('a')
          expect(one).not.toHaveProperty('confirmed')
        }
      }),
    )
  })

  test('is left as it is where the file has none', () => {
    expect(withBookBroughtBy('a', { title: 'x' }, { contributions: [receipt] })).toEqual({ title: 'x' })
  })
})
