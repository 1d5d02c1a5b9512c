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
      { on: '2027-05-01', amount: 10000n, paid: 10000n, rest: 0n, state: 'paid', paidOn: '2027-05-20' },
      { on: '2027-06-01', amount: 10000n, paid: 5000n, rest: 5000n, state: 'overdue' },
      { on: '2027-07-01', amount: 10000n, paid: 0n, rest: 10000n, state: 'later' },
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

  test('paid and rest make the total, of each instalment and of all, whatever is paid and when', () => {
    const payment = fc.record({
      cents: fc.integer({ min: 0, max: 20_000 }),
      date: fc.constantFrom('2027-04-01', '2027-05-15', '2027-06-15', '2027-08-01'),
    })
    fc.assert(
      fc.property(
        fc.array(payment, { maxLength: 5 }),
        fc.constantFrom('2027-04-30', '2027-05-01', '2027-06-15', '2027-12-31'),
        (payments, today) => {
          const standing = on(
            today,
            ...payments.map(({ cents, date }) => pays((cents / 100).toFixed(2), date)),
          )
          for (const { amount, paid, rest } of standing.parts) expect(paid + rest).toBe(amount)
          expect(standing.parts.reduce((sum, { paid }) => sum + paid, 0n)).toBe(standing.paid)
          expect(standing.paid + standing.rest).toBe(standing.total)
          const given = payments.reduce((sum, { cents }) => sum + BigInt(cents), 0n)
          expect(standing.paid + standing.above).toBe(given)
          expect(standing.overdue <= standing.rest).toBe(true)
        },
      ),
    )
  })
})
