import { describe, expect, test } from 'vitest'
import { isNumber, scaledInteger } from '../../../lib/core/amounts/typedNumber.ts'

describe('a typed number is taken', () => {
  test.each(['0', '7', '14', '0.385', '0.000001', '10.50', '999999999999', '999999999999.999999'])(
    '%s',
    (text) => {
      expect(isNumber(text, 6)).toBe(true)
    },
  )
})

describe('a typed number is refused', () => {
  test.each([
    ['nothing at all', ''],
    ['a blank', ' '],
    ['blanks around it', ' 1'],
    ['a line end after it', '1\n'],
    ['a minus', '-1'],
    ['a plus', '+1'],
    ['an exponent', '1e3'],
    ['a thousands comma', '1,200'],
    ['a decimal comma', '1,5'],
    ['no figure before the point', '.5'],
    ['no figure after the point', '5.'],
    ['two points', '1.2.3'],
    ['idle zeros in front', '007'],
    ['thirteen figures before the point', '1000000000000'],
    ['seven figures after the point', '0.0000001'],
    ['a hexadecimal number', '0x10'],
    ['a word for a number', 'Infinity'],
    ['figures of another script', '\u0661\u0662'],
    ['wide figures', '\uff11\uff12'],
  ])('%s', (_, text) => {
    expect(isNumber(text, 6)).toBe(false)
  })

  test('digits after the point where none are allowed', () => {
    expect(isNumber('1200.0', 0)).toBe(false)
    expect(isNumber('1200', 0)).toBe(true)
  })
})

describe('a typed number as a count of its last decimal place', () => {
  test.each([
    ['1.5', 6, 1_500_000n],
    ['0', 6, 0n],
    ['0.000001', 6, 1n],
    ['999999999999.999999', 6, 999_999_999_999_999_999n],
    ['1200', 0, 1200n],
    ['12.5', 2, 1250n],
  ])('%s to %i places', (text, digits, count) => {
    expect(scaledInteger(text, digits)).toBe(count)
  })

  test('text that no check has let through throws', () => {
    for (const text of ['', '.5', '1.234', '1,2', 'abc']) {
      expect(() => scaledInteger(text, 2), text).toThrow()
    }
  })
})
