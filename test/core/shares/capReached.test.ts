import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { capReached, capsReached } from '../../../lib/core/shares/capReached.ts'
import { plannedStatement } from '../../../lib/core/shares/statement.ts'
import { bought, halves, notebookWith } from '../madeNotebook.ts'
import { randomNotebook, readMade } from '../randomNotebook.ts'

const both = { a: true, b: true }
const nobody = { a: false, b: false }
const cash = (amount: string, item: string) => ({
  household: 'a',
  kind: 'cash',
  amount,
  date: '2027-03-02',
  for: item,
})

/** Two sections of $100 that are halved, and one that is a's alone; b's cap is $120. */
const plan = (more: Record<string, unknown> = {}) =>
  notebookWith({
    sections: [
      { id: 's1', materials: [bought('100.00')], share: halves },
      { id: 's2', materials: [bought('100.00')], share: halves },
      { id: 's3', materials: [bought('50.00')], share: { together: { principle: 'one', household: 'a' } } },
    ],
    caps: { b: '120.00' },
    ...more,
  })

describe('a cap that is not reached by the plan', () => {
  test('pauses nothing while what is spent was planned', () => {
    expect(capsReached(plan(), both)).toEqual([])
    expect(capReached(plan(), 's1', 10_000n, both)).toEqual([])
  })

  test('would be reached by what is spent beyond the plan, of which its household bears half', () => {
    // $140.00 on an item of $100.00: b is asked for $70.00 + $50.00, its cap to the cent.
    expect(capReached(plan(), 's1', 14_000n, both)).toMatchObject([
      { household: 'b', cap: 12_000n, asked: 10_000n, afterwards: 12_000n, over: 0n, pauses: false },
    ])
    // Two dollars more: one of them is b's.
    expect(capReached(plan(), 's1', 14_200n, both)).toMatchObject([
      { afterwards: 12_100n, over: 100n, pauses: true },
    ])
  })

  test('counts what was spent on the item before, money, goods and hours, less what came back', () => {
    const contributions = [
      cash('90.00', 's1'),
      { household: 'b', kind: 'hours', hours: '2', rate: '20.00', date: '2027-03-03', for: 's1' },
      { household: 'b', kind: 'refund', amount: '30.00', date: '2027-03-04', for: 's1' },
      { household: 'b', kind: 'transfer', amount: '500.00', date: '2027-03-05' },
    ]
    // 90 + 40 − 30 = 100 spent; $42.00 more make $142.00.
    expect(capReached(plan({ contributions }), 's1', 4_200n, both)).toMatchObject([
      { over: 100n, pauses: true },
    ])
  })

  test('is nothing to an item that its household bears no part of', () => {
    expect(capReached(plan(), 's3', 100_000n, both)).toEqual([])
    expect(capReached(plan(), 'no such item', 100_000n, both)).toEqual([])
  })
})

describe('a cap that is passed', () => {
  const overspent = plan({ contributions: [cash('150.00', 's2')] })

  test('by what was spent: buying pauses on every item that its household bears a part of', () => {
    expect(capsReached(overspent, both)).toMatchObject([
      { household: 'b', asked: 12_500n, over: 500n, agreed: 0n, pauses: true, items: ['s1', 's2'] },
    ])
  })

  test('by the plan, with the other household’s mark: so much is agreed, and buying goes on', () => {
    const dear = plan({ caps: { b: '80.00' } })
    expect(capsReached(dear, both)).toMatchObject([{ over: 2_000n, agreed: 2_000n, pauses: false }])
    expect(capReached(dear, 's1', 10_002n, both)).toMatchObject([
      { over: 2_001n, agreed: 2_000n, pauses: true },
    ])
  })

  test('by the plan, without that mark: buying pauses', () => {
    expect(capsReached(plan({ caps: { b: '80.00' } }), nobody)).toMatchObject([
      { over: 2_000n, agreed: 0n, pauses: true },
    ])
    expect(capsReached(plan({ caps: { b: '80.00' } }), { a: false, b: true })).toMatchObject([
      { pauses: true },
    ])
  })

  test('is told even where the two caps together fall short of the total', () => {
    const short = plan({ caps: { a: '1.00', b: '1.00' } })
    expect(capsReached(short, both).map(({ household }) => household)).toEqual(['a', 'b'])
  })
})

test('nothing is said where the shares can’t be worked out', () => {
  const noPoints = { materials: { principle: 'benefit', a: '0', b: '0' }, labour: { principle: 'equal' } }
  const notebook = plan({ sections: [{ id: 's1', materials: [bought('1')], share: noPoints }] })
  expect(capsReached(notebook, both)).toEqual([])
  expect(capReached(notebook, 's1', 1n, both)).toEqual([])
})

test('on any notebook without books, what a cap moves is exactly what lies over it', () => {
  fc.assert(
    fc.property(randomNotebook, (document) => {
      const notebook = { ...readMade(document), contributions: [] }
      const statement = plannedStatement(notebook)
      if (!statement.ok) throw new Error(JSON.stringify(statement.faults))
      const { moved } = statement.value.asked
      const over = capsReached(notebook, both).filter((cap) => cap.over > 0n)
      expect(over.map(({ household, over }) => ({ from: household, amount: over }))).toEqual(
        moved ? [moved] : [],
      )
      expect(over.every(({ pauses }) => !pauses)).toBe(true)
    }),
    { numRuns: 100 },
  )
})
