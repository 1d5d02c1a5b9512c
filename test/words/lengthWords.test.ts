import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { compareLengths, lengthOf, parseLength } from '../../lib/core/amounts/length.ts'
import { ratio } from '../../lib/core/amounts/ratio.ts'
import { lengthReading, lengthWords, typedLengthWords } from '../../lib/words/length.ts'

describe('a length for a reader in feet and inches, to the nearest sixteenth', () => {
  test.each([
    ['6 ft', '6 ft'],
    ['6.5 ft', '6 ft 6 in'],
    ['74 1/2 in', '6 ft 2 1/2 in'],
    ['1¾ in', '1 3/4 in'],
    ['1/16 in', '1/16 in'],
    ['1/64 in', '0 in'],
    ['1/32 in', '1/16 in'],
    ['11 63/64 in', '1 ft'],
    ['0 ft', '0 in'],
    ['12 in', '1 ft'],
    ['12¼ in', '1 ft 1/4 in'],
    ['-3 in', '−3 in'],
    ['-1/64 in', '0 in'],
    ['1 m', '3 ft 3 3/8 in'],
  ])('%s is %s', (typed, words) => {
    expect(lengthWords(lengthOf(typed), 'ft-in')).toBe(words)
  })
})

describe('a length for a reader in metres, to the nearest millimetre', () => {
  test.each([
    ['1.83 m', '1.83 m'],
    ['6 ft', '1.829 m'],
    ['45 cm', '0.45 m'],
    ['100 m', '100 m'],
    ['0.4 mm', '0 m'],
    ['0.5 mm', '0.001 m'],
    ['-3 cm', '−0.03 m'],
    ['-0.4 mm', '0 m'],
  ])('%s is %s', (typed, words) => {
    expect(lengthWords(lengthOf(typed), 'metric')).toBe(words)
  })
})

test('what was read from a typed length is told in both units, or not at all', () => {
  expect(lengthReading('5\' 10-1/4"')).toBe('5 ft 10 1/4 in = 1.784 m')
  expect(lengthReading('5')).toBeUndefined()
  expect(lengthReading('0 ft')).toBe('0 m')
  expect(lengthReading('0 cm')).toBe('0 ft')
  expect(lengthReading('4 ft')).toBe('1.219 m')
  expect(lengthReading('-3 in')).toBe('−0.076 m')
  expect(lengthReading('1.83 m')).toBe('6 ft 1/16 in')
  expect(lengthReading('4 cm')).toBe('1 9/16 in = 0.04 m')
  // Walls of pipe, where a sixteenth would be another pipe (1 in is 25.4 mm).
  expect(lengthReading('0.154 in')).toBe('0.154 in = 3.91 mm')
  expect(lengthReading('0.03 in')).toBe('0.03 in = 0.76 mm')
  expect(lengthReading('3 mm')).toBe('0.118 in = 3 mm')
  expect(lengthReading('3/16 in')).toBe('0.005 m')
})

test('words read back as the length they were made of, to half a sixteenth or half a millimetre', () => {
  fc.assert(
    fc.property(
      fc.bigInt({ min: -(10n ** 9n), max: 10n ** 9n }),
      fc.integer({ min: 1, max: 640 }),
      (over, under) => {
        const length = ratio(over, BigInt(under))
        const near = { 'ft-in': ratio(127n, 160n), metric: ratio(1n, 2n) }
        for (const units of ['ft-in', 'metric'] as const) {
          const again = parseLength(lengthWords(length, units).replace('−', '-'))
          if (again === undefined) throw new Error(`words that are no length: ${lengthWords(length, units)}`)
          const off = again.over * length.under - length.over * again.under
          const size = ratio(off < 0n ? -off : off, again.under * length.under)
          expect(compareLengths(size, near[units])).toBeLessThanOrEqual(0)
        }
      },
    ),
  )
})

test('beside worked-out lengths a typed one stands as typed, unless in units of the other kind', () => {
  expect(typedLengthWords('18.3 m', 'ft-in')).toBe('60 ft 1/2 in')
  expect(typedLengthWords('45 cm', 'ft-in')).toBe('1 ft 5 11/16 in')
  expect(typedLengthWords('6\' 2-1/2"', 'ft-in')).toBe('6\' 2-1/2"')
  expect(typedLengthWords('72 in', 'metric')).toBe('1.829 m')
  expect(typedLengthWords('1.80 m', 'metric')).toBe('1.80 m')
  expect(typedLengthWords('', 'metric')).toBe('')
})
