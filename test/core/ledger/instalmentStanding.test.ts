import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { instalmentStanding } from '../../../lib/core/ledger/instalmentStanding.ts'
import { transfersThatCount } from '../../../lib/core/ledger/transfers.ts'
import { notebookWith } from '../madeNotebook.ts'

const plan = {
  from: 'b' as const,
  total: '300.00',
  parts: [
    { on: '2027-05-01', amount: '100.00' },
    { on: '2027-06-01', amount: '100.00' },
    { on: '2027-07-01', amount: '100.00' },
  ],
}
const pays = (amount: string, date: string, more: object = {}) => ({
  household: 'b',
  kind: 'transfer',
  amount,
  date,
  ...more,
})
const on = (today: string, ...contributions: object[]) =>
  instalmentStanding(plan, transfersThatCount(notebookWith({ contributions }), 2), today, 2)
const states = (today: string, ...contributions: object[]) =>
  on(today, ...contributions).parts.map(({ state }) => state)

describe('a payment plan of three instalments of 100.00', () => {
  test('before the first day nothing is due', () => {
    expect(states('2027-04-30')).toEqual(['later', 'later', 'later'])
  })

  test('is due on its day and overdue from the day after', () => {
    expect(states('2027-05-01')).toEqual(['due today', 'later', 'later'])
    expect(states('2027-05-02')).toEqual(['overdue', 'later', 'later'])
    expect(on('2027-06-02').overdue).toBe(20000n)
  })

  test('150.00 pays the first, and half of the second: 150.00 is left, 50.00 of it overdue in the middle of June', () => {
    const standing = on('2027-06-15', pays('60.00', '2027-05-20'), pays('90.00', '2027-05-10'))
    expect(standing).toMatchObject({
      from: 'b',
      to: 'a',
      paid: 15000n,
      rest: 15000n,
      overdue: 5000n,
      above: 0n,
    })
    expect(standing.parts).toEqual([
      {
        on: '2027-05-01',
        amount: 10000n,
        paid: 10000n,
        met: 0n,
        rest: 0n,
        state: 'paid',
        paidOn: '2027-05-20',
      },
      { on: '2027-06-01', amount: 10000n, paid: 5000n, met: 0n, rest: 5000n, state: 'overdue' },
      { on: '2027-07-01', amount: 10000n, paid: 0n, met: 0n, rest: 10000n, state: 'later' },
    ])
  })

  test('what was paid above the plan is named, and pays nothing twice', () => {
    expect(on('2027-08-01', pays('320.00', '2027-04-01'))).toMatchObject({
      paid: 30000n,
      rest: 0n,
      overdue: 0n,
      above: 2000n,
    })
  })

  test('payments of the other household, those that wait and those taken back pay no instalment', () => {
    const struck = { on: '2027-05-03', by: 'b', why: 'entered twice' }
    const standing = on(
      '2027-05-10',
      { ...pays('100.00', '2027-05-01'), household: 'a' },
      pays('100.00', '2027-05-01', { waits: true }),
      pays('100.00', '2027-05-01', { struck }),
    )
    expect(standing).toMatchObject({ paid: 0n, rest: 30000n, overdue: 10000n })
  })

  describe('held against what its household is still to bring in money', () => {
    const still = (amount: bigint, today: string, ...contributions: object[]) =>
      instalmentStanding(plan, transfersThatCount(notebookWith({ contributions }), 2), today, 2, amount)

    test('200.00 of 300.00: a receipt of 100.00 that b paid itself settles the first, and nothing is overdue', () => {
      const standing = still(20000n, '2027-05-20')
      expect(standing).toMatchObject({ paid: 0n, met: 10000n, rest: 20000n, overdue: 0n, short: 0n })
      expect(standing.parts.map(({ state }) => state)).toEqual(['met', 'later', 'later'])
    })

    test('120.00 after a payment of 100.00: 80.00 is settled, of the second one first', () => {
      const standing = still(12000n, '2027-06-20', pays('100.00', '2027-05-01'))
      expect(standing.parts).toMatchObject([
        { state: 'paid', paid: 10000n },
        { state: 'overdue', met: 8000n, rest: 2000n },
        { state: 'later', met: 0n, rest: 10000n },
      ])
    })

    test('nothing: nothing of the plan is missing, whatever the day', () => {
      for (const amount of [0n, -5000n])
        expect(still(amount, '2028-01-01', pays('100.00', '2027-05-01'))).toMatchObject({
          rest: 0n,
          overdue: 0n,
          short: 0n,
          met: 20000n,
        })
    })

    test('350.00: the plan falls short by 50.00, and all of it is missing', () => {
      expect(still(35000n, '2027-12-31')).toMatchObject({ short: 5000n, rest: 30000n, overdue: 30000n })
    })
  })

  test('paid, settled and missing make the total, of each instalment and of all, whatever is paid and still owed', () => {
    const payment = fc.record({
      cents: fc.integer({ min: 0, max: 20_000 }),
      date: fc.constantFrom('2027-04-01', '2027-05-15', '2027-06-15', '2027-08-01'),
    })
    fc.assert(
      fc.property(
        fc.array(payment, { maxLength: 5 }),
        fc.constantFrom('2027-04-30', '2027-05-01', '2027-06-15', '2027-12-31'),
        fc.option(fc.bigInt({ min: -20_000n, max: 50_000n }), { nil: undefined }),
        (payments, today, still) => {
          const contributions = payments.map(({ cents, date }) => pays((cents / 100).toFixed(2), date))
          const transfers = transfersThatCount(notebookWith({ contributions }), 2)
          const standing = instalmentStanding(plan, transfers, today, 2, still)
          for (const { amount, paid, met, rest } of standing.parts) expect(paid + met + rest).toBe(amount)
          expect(standing.parts.reduce((sum, { paid }) => sum + paid, 0n)).toBe(standing.paid)
          expect(standing.parts.reduce((sum, { met }) => sum + met, 0n)).toBe(standing.met)
          expect(standing.paid + standing.met + standing.rest).toBe(standing.total)
          if (still !== undefined) expect(standing.rest + standing.short).toBe(still > 0n ? still : 0n)
          const given = payments.reduce((sum, { cents }) => sum + BigInt(cents), 0n)
          expect(standing.paid + standing.above).toBe(given)
          expect(standing.overdue <= standing.rest).toBe(true)
        },
      ),
    )
  })
})
