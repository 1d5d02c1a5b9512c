import { describe, expect, test } from 'vitest'
import { ratio } from '../../lib/core/amounts/ratio.ts'
import { exactMoneyWords, fractionWords } from '../../lib/words/exactWords.ts'

describe('a fraction in words', () => {
  test('is in its lowest terms, and alone where it is whole', () => {
    expect(fractionWords(ratio(30n, 90n))).toBe('1/3')
    expect(fractionWords(ratio(22_291n, 40_332n))).toBe('22291/40332')
    expect(fractionWords(ratio(8n, 4n))).toBe('2')
  })

  test('is a decimal that is cut off where nobody would write it down', () => {
    // 109034177589237 ÷ 226566759867679 by long division: 0.481245…
    expect(fractionWords(ratio(109_034_177_589_237n, 226_566_759_867_679n))).toMatch(/^0\.48124[0-9]{7}…$/)
    expect(fractionWords(ratio(1n, 3n * 10n ** 9n))).toBe('0.000000000333…')
  })

  test('is told at once however long it is', () => {
    expect(fractionWords(ratio(10n ** 50_000n + 1n, 3n * 10n ** 50_000n))).toBe('0.333333333333…')
  })

  test('of the smallest unit stands beside the money that is whole', () => {
    expect(exactMoneyWords(ratio(30_175n, 4n), 'USD')).toBe('$75.43 and 3/4 of $0.01')
  })
})
