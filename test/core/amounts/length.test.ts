import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import {
  compareLengths,
  inMillimetres,
  lengthOf,
  longestTypedLength,
  parseLength,
} from '../../../lib/core/amounts/length.ts'
import { addRatios, ratio } from '../../../lib/core/amounts/ratio.ts'

/** Whether a typed length is exactly so many millimetres. */
function isExactly(typed: string, over: bigint, under: bigint): boolean {
  const length = parseLength(typed)
  return length !== undefined && compareLengths(length, ratio(over, under)) === 0
}

const taken: [string, bigint, bigint][] = [
  // metric
  ['1.83 m', 1830n, 1n],
  ['45 cm', 450n, 1n],
  ['45cm', 450n, 1n],
  ['12 mm', 12n, 1n],
  ['0 m', 0n, 1n],
  ['1/2 m', 500n, 1n],
  ['1½ m', 1500n, 1n],
  ['2 1/2 cm', 25n, 1n],
  ['0.5 mm', 1n, 2n],
  // feet
  ['6 ft', 18288n, 10n],
  ['6ft', 18288n, 10n],
  ["6'", 18288n, 10n],
  ['6′', 18288n, 10n],
  ['6’', 18288n, 10n],
  ['6.5 ft', 19812n, 10n],
  ['6 1/2 ft', 19812n, 10n],
  ['6½ ft', 19812n, 10n],
  ['1/3 ft', 3048n, 30n],
  ['⅓ ft', 3048n, 30n],
  ['⅔ ft', 6096n, 30n],
  // inches
  ['3 in', 762n, 10n],
  ['3"', 762n, 10n],
  ['3″', 762n, 10n],
  ['3”', 762n, 10n],
  ['¼ in', 254n, 40n],
  ['½ in', 254n, 20n],
  ['¾ in', 762n, 40n],
  ['⅛ in', 254n, 80n],
  ['⅜ in', 762n, 80n],
  ['⅝ in', 1270n, 80n],
  ['⅞ in', 1778n, 80n],
  ['1¾ in', 1778n, 40n],
  ['1 ¾ in', 1778n, 40n],
  ['1-¾ in', 1778n, 40n],
  ['1 - ¾ in', 1778n, 40n],
  ['1 3/4 in', 1778n, 40n],
  ['1-3/4 in', 1778n, 40n],
  ['1 - 3/4 in', 1778n, 40n],
  ['1 3 / 4 in', 1778n, 40n],
  ['3/4 in', 762n, 40n],
  ['3 /4 in', 762n, 40n],
  ['1/64 in', 254n, 640n],
  ['5/1 in', 1270n, 10n],
  ['5/4 in', 1270n, 40n],
  ['30 in', 7620n, 10n],
  // feet then inches
  ['6\' 2-1/2"', 18288n * 2n + 635n * 2n, 20n],
  ['6 ft 2 1/2 in', 18288n * 2n + 635n * 2n, 20n],
  ['6ft2in', 18288n + 508n, 10n],
  ['6’2”', 18288n + 508n, 10n],
  ['6′ 2″', 18288n + 508n, 10n],
  ['5 ft 14 in', 15240n + 3556n, 10n],
  ['0 ft 6 in', 1524n, 10n],
  ['6 ft 0 in', 18288n, 10n],
  ['1.5 ft 1.5 in', 4572n + 381n, 10n],
  // blanks of any kind, anywhere between
  ['  6   ft  ', 18288n, 10n],
  ['6\u00a0ft', 18288n, 10n],
  ['6\u202fft\u00a02\u2009in', 18288n + 508n, 10n],
  ['6\tft', 18288n, 10n],
  // below the datum
  ['-3 in', -762n, 10n],
  ['- 3 in', -762n, 10n],
  ['-1 ft 2 in', -3048n - 508n, 10n],
  ['-½ in', -254n, 20n],
  ['-0 in', 0n, 1n],
]

describe('a length is taken, exactly', () => {
  test.each(taken)('%j', (typed, over, under) => {
    expect(isExactly(typed, over, under)).toBe(true)
  })
})

describe('a length is refused', () => {
  test.each([
    ['no unit', '6'],
    ['nothing without a unit', '0'],
    ['nothing at all', ''],
    ['blanks only', '  '],
    ['a unit only', 'ft'],
    ['a minus only', '-'],
    ['a decimal comma', '1,83 m'],
    ['a thousands comma', '1,200 mm'],
    ['a plus sign', '+6 ft'],
    ['an exponent', '1e3 mm'],
    ['no figure before the point', '.5 m'],
    ['no figure after the point', '5. m'],
    ['idle zeros in front', '06 ft'],
    ['a denominator of nothing', '1/0 in'],
    ['a denominator above 64', '1/65 in'],
    ['a denominator with idle zeros', '1/04 in'],
    ['a fraction of a fraction', '1/2/3 in'],
    ['a decimal with a fraction', '1.5 1/2 in'],
    ['a decimal with a fraction sign', '1.5½ in'],
    ['two fraction signs', '½¼ in'],
    ['two whole figures', '1 2 in'],
    ['a decimal above the line', '1.5/2 in'],
    ['inches then feet', '2 in 6 ft'],
    ['feet twice', '6 ft 2 ft'],
    ['inches twice', '6 in 2 in'],
    ['feet then metric', '6 ft 2 cm'],
    ['metric then metric', '1 m 20 cm'],
    ['inches without a unit', '6 ft 2'],
    ['a minus in the middle', '6 ft -2 in'],
    ['two minus signs', '--6 ft'],
    ['a typographical minus', '−6 ft'],
    ['a unit of another system', '6 yd'],
    ['a word for the unit', '6 feet'],
    ['a capital unit', '6 FT'],
    ['a full stop after it', '6 ft.'],
    ['a sixth, which is not in the list of fraction signs', '⅙ in'],
    ['two marks for one', "6''"],
    ['figures of another script', '\u0666 ft'],
    ['thirteen figures', '1000000000000 ft'],
  ])('%s', (_, typed) => {
    expect(parseLength(typed)).toBeUndefined()
  })

  test('text longer than anybody types, without trying every way to read it', () => {
    expect(parseLength(`${' '.repeat(2_000_000)}6 ft`)).toBeUndefined()
    expect(parseLength('1'.repeat(longestTypedLength + 1))).toBeUndefined()
    for (const piece of ['1 ', '1-', '1/', '½', "1'", '- ']) {
      expect(parseLength(piece.repeat(longestTypedLength / piece.length))).toBeUndefined()
    }
  })
})

describe('lengths are exact', () => {
  test('10 ft and 1¾ in are 3092.45 mm, and not a hair off', () => {
    const sum = addRatios(lengthOf('10 ft'), lengthOf('1¾ in'))
    expect(compareLengths(sum, ratio(309_245n, 100n))).toBe(0)
    expect(compareLengths(sum, lengthOf('10\' 1-3/4"'))).toBe(0)
  })

  test('a third of a foot is four inches, and more than 0.3333 ft', () => {
    expect(compareLengths(lengthOf('⅓ ft'), lengthOf('4 in'))).toBe(0)
    expect(compareLengths(lengthOf('⅓ ft'), lengthOf('0.3333 ft'))).toBeGreaterThan(0)
  })

  test('a length that was not checked throws', () => {
    expect(() => lengthOf('6')).toThrow('6')
  })

  test('in millimetres for drawing', () => {
    expect(inMillimetres(lengthOf('1 in'))).toBe(25.4)
    expect(inMillimetres(lengthOf('-1 in'))).toBe(-25.4)
    expect(inMillimetres(lengthOf('999999999999 m'))).toBe(999_999_999_999_000)
  })
})

const blank = fc.constantFrom('', ' ', '\u00a0', '  ', '\u202f')
const sixtyFourths = fc.integer({ min: 1, max: 63 })

test('feet, inches and 64ths read as their sum, however blanks stand and marks look', () => {
  fc.assert(
    fc.property(
      fc.record({
        feet: fc.integer({ min: 0, max: 100_000 }),
        inches: fc.integer({ min: 0, max: 1000 }),
        sixtyFourths,
        blanks: fc.tuple(blank, blank, blank, blank, blank),
        footMark: fc.constantFrom('ft', "'", '′', '’'),
        inchMark: fc.constantFrom('in', '"', '″', '”'),
        joiner: fc.constantFrom(' ', '-', ' - ', '\u00a0'),
        minus: fc.boolean(),
      }),
      ({ feet, inches, sixtyFourths, blanks, footMark, inchMark, joiner, minus }) => {
        const [one, two, three, four, five] = blanks
        const figure = `${inches}${joiner}${sixtyFourths}/64`
        const typed = `${minus ? '-' : ''}${one}${feet}${two}${footMark}${three}${figure}${four}${inchMark}${five}`
        const size = BigInt((feet * 12 + inches) * 64 + sixtyFourths) * 254n
        expect(isExactly(typed, minus ? -size : size, 640n)).toBe(true)
      },
    ),
  )
})

test('decimals in metres, centimetres and millimetres read as what they say', () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 0, max: 10 ** 9 }),
      fc.integer({ min: 0, max: 999_999 }),
      fc.constantFrom(['m', 1000n], ['cm', 10n], ['mm', 1n]) as fc.Arbitrary<[string, bigint]>,
      (whole, millionths, [unit, size]) => {
        const typed = `${whole}.${String(millionths).padStart(6, '0')} ${unit}`
        expect(isExactly(typed, BigInt(whole * 1_000_000 + millionths) * size, 1_000_000n)).toBe(true)
      },
    ),
  )
})

test('no text whatever makes the reading throw', () => {
  const pieces = fc.constantFrom(...'0123456789./- \'"ftincm½⅔′″’”,+e\u00a0'.split(''))
  fc.assert(
    fc.property(fc.array(pieces, { maxLength: 30 }), (characters) => {
      const length = parseLength(characters.join(''))
      expect(length === undefined || length.under > 0n).toBe(true)
    }),
    { numRuns: 2000 },
  )
})
