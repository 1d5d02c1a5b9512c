import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { askedAtMost } from '../../../lib/core/shares/askedAtMost.ts'
import { hoursForMoney } from '../../../lib/core/shares/hoursForMoney.ts'
import { statementOf } from '../../../lib/core/shares/statement.ts'
import { readNotebook } from '../../../lib/forms/readNotebook.ts'
import { shortNotebook } from '../../screens/shortNotebook.ts'

function mostWith(caps: object, cap: { agreedByBoth: boolean; own: boolean }) {
  const read = readNotebook(JSON.stringify({ ...shortNotebook, caps }))
  if (!read.ok) throw new Error('the notebook holds')
  const statement = statementOf(read.value.notebook)
  if (!statement.ok) throw new Error('it can be shared')
  return askedAtMost(read.value.notebook, statement.value, 'b', cap)
}
const [nobody, own, both] = [
  { agreedByBoth: false, own: false },
  { agreedByBoth: false, own: true },
  { agreedByBoth: true, own: true },
]

describe('the most that is asked', () => {
  // 300.00 + 200.00 + 250.01 + 100.00 = 850.01, halved pot by pot; the odd cent of the gate's 250.01 goes to a.
  test('is what the plan asks where there is no cap', () => {
    expect(mostWith({}, both)).toEqual({ amount: 42_500n, by: 'plan' })
  })

  test('is the cap once both marked it, or where the household set or marked it itself', () => {
    expect(mostWith({ b: '600.00' }, both)).toEqual({ amount: 60_000n, by: 'cap agreed' })
    expect(mostWith({ b: '600.00' }, own)).toEqual({ amount: 60_000n, by: 'own cap' })
  })

  test('is what the plan asks where the other household put the cap there by itself', () => {
    expect(mostWith({ b: '600.00' }, nobody)).toEqual({ amount: 42_500n, by: 'plan' })
    expect(mostWith({ b: '100.00' }, nobody)).toEqual({ amount: 10_000n, by: 'plan' })
  })
})

describe('hours in the place of money', () => {
  test.each([
    [31_250n, '25.00', 2, 1250n],
    [31_251n, '25.00', 2, 1251n],
    [1200n, '1500', 0, 80n],
    [0n, '25', 2, 0n],
  ])('%i at %s an hour are %i hundredths', (amount, rate, digits, hours) => {
    expect(hoursForMoney(amount, rate, digits)).toBe(hours)
  })

  test('are none at a rate of nothing', () => {
    expect(hoursForMoney(100n, '0', 2)).toBeUndefined()
    expect(hoursForMoney(100n, '0.000', 2)).toBeUndefined()
  })

  test('are worth the money, and by less than a hundredth of an hour more', () => {
    fc.assert(
      fc.property(fc.bigInt(0n, 10n ** 12n), fc.integer({ min: 1, max: 10 ** 6 }), (amount, cents) => {
        const rate = `${Math.floor(cents / 100)}.${String(cents % 100).padStart(2, '0')}`
        const hours = hoursForMoney(amount, rate, 2) ?? -1n
        // Hundredths of an hour times cents an hour are hundredths of a cent.
        expect(hours * BigInt(cents) >= amount * 100n).toBe(true)
        expect((hours - 1n) * BigInt(cents) < amount * 100n).toBe(true)
      }),
    )
  })
})
