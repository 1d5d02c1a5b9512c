import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { costLineAmount, labourAmount, signedCostAmount } from '../../../lib/core/amounts/lineAmount.ts'
import { roundHalfUp } from '../../../lib/core/amounts/round.ts'

const line = (quantity: string, unitPrice: string, taxPercent = '0') => ({ quantity, unitPrice, taxPercent })

describe('a cost line', () => {
  test('is quantity times unit price', () => {
    expect(costLineAmount(line('14', '18.50'), 2)).toBe(25900n)
  })

  test('adds the tax before it is rounded, not after', () => {
    // 3 × 0.35 = 1.05; with 10 % it is 1.155, which is 1.16. Tax rounded by itself would be 0.11 and give the same …
    expect(costLineAmount(line('3', '0.35', '10'), 2)).toBe(116n)
    // … 1.5 × 0.33 = 0.495; with 1 % it is 0.49995, which is 0.50. Rounded first it would be 0.50 and then 0.51.
    expect(costLineAmount(line('1.5', '0.33', '1'), 2)).toBe(50n)
  })

  test('rounds half a cent up', () => {
    expect(costLineAmount(line('0.5', '0.01'), 2)).toBe(1n)
    expect(costLineAmount(line('1', '1.005'), 2)).toBe(101n)
  })

  test('rounds just under half a cent down', () => {
    expect(costLineAmount(line('0.499999', '0.01'), 2)).toBe(0n)
    expect(costLineAmount(line('1', '1.004999'), 2)).toBe(100n)
  })

  test('is exact where a binary fraction is not: 1.15 with 0 and 2 digits', () => {
    expect(costLineAmount(line('100', '1.15'), 2)).toBe(11500n)
    expect(costLineAmount(line('1.1', '1.1'), 2)).toBe(121n)
  })

  test('keeps every digit of the longest legal line', () => {
    // (10^18 − 1)² × 1999999 / 10^16, the quotient worked apart from this program.
    const longest = line('999999999999.999999', '999999999999.999999', '99.9999')
    expect(costLineAmount(longest, 2)).toBe(199_999_899_999_999_999_600_000_200n)
  })

  test('that is not priced yet counts as nothing', () => {
    expect(costLineAmount(line('14', ''), 2)).toBe(0n)
  })

  test('follows the digits of the currency', () => {
    expect(costLineAmount(line('3', '0.5'), 0)).toBe(2n)
    expect(costLineAmount(line('3', '0.5'), 3)).toBe(1500n)
  })

  test('tax written as 0.0000 is the same as no tax', () => {
    expect(costLineAmount(line('3', '0.35', '0.0000'), 2)).toBe(costLineAmount(line('3', '0.35'), 2))
  })
})

describe('a credit', () => {
  test('is taken off', () => {
    expect(signedCostAmount({ ...line('2', '10'), credit: true }, 2)).toBe(-2000n)
    expect(signedCostAmount({ ...line('2', '10'), credit: false }, 2)).toBe(2000n)
  })

  test('of half a cent is rounded away from zero', () => {
    expect(signedCostAmount({ ...line('0.5', '0.01'), credit: true }, 2)).toBe(-1n)
  })
})

describe('a labour line', () => {
  test('is hours times rate, rounded once', () => {
    expect(labourAmount({ hours: '12', rate: '25.00' }, 2)).toBe(30000n)
    expect(labourAmount({ hours: '0.333333', rate: '0.03' }, 2)).toBe(1n)
  })

  test('without a rate counts as nothing', () => {
    expect(labourAmount({ hours: '12', rate: '' }, 2)).toBe(0n)
  })
})

test('rounding is never further off than half a unit, and half goes up', () => {
  fc.assert(
    fc.property(
      fc.bigInt({ min: 0n, max: 10n ** 40n }),
      fc.bigInt({ min: 1n, max: 10n ** 20n }),
      (over, under) => {
        const twiceTooMuch = 2n * (roundHalfUp(over, under) * under - over)
        expect(twiceTooMuch > -under && twiceTooMuch <= under).toBe(true)
      },
    ),
  )
})
