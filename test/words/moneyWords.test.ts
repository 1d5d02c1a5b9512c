import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { currencies } from '../../lib/core/amounts/currency.ts'
import { moneyText } from '../../lib/core/amounts/money.ts'
import { moneyWords } from '../../lib/words/money.ts'

describe('money for a reader', () => {
  test.each([
    [90000n, 'USD', '$900.00'],
    [0n, 'USD', '$0.00'],
    [1n, 'USD', '$0.01'],
    [123_456_789n, 'USD', '$1,234,567.89'],
    [-2050n, 'USD', '−$20.50'],
    [1200n, 'JPY', '¥1,200'],
    [-1200n, 'JPY', '−¥1,200'],
    [5n, 'EUR', '€0.05'],
  ])('%s in %s is %s', (minor, currency, words) => {
    // Some currencies have a no-break blank after their sign.
    expect(moneyWords(minor, currency)).toBe(words)
  })

  test('has the digits of ISO 4217, not fewer: the forint has two', () => {
    expect(moneyWords(100n, 'HUF')).toMatch(/1\.00$/)
    expect(moneyWords(1n, 'KWD')).toMatch(/0\.001$/)
    expect(moneyWords(1n, 'CLF')).toMatch(/0\.0001$/)
  })

  test('is exact beyond what a binary number holds', () => {
    expect(moneyWords(99_999_999_999_999_999_999n, 'USD')).toBe('$999,999,999,999,999,999.99')
  })

  test('keeps every figure of every amount in every currency', () => {
    const codes = currencies().map(({ code }) => code)
    fc.assert(
      fc.property(
        fc.bigInt({ min: -(10n ** 20n), max: 10n ** 20n }),
        fc.constantFrom(...codes),
        (minor, code) => {
          const figures = (text: string) => text.replaceAll(/[^0-9]/g, '').replace(/^0+/, '')
          expect(figures(moneyWords(minor, code))).toBe(figures(moneyText(minor, 4)))
          expect(moneyWords(minor, code).startsWith('−')).toBe(minor < 0n)
        },
      ),
    )
  })
})
