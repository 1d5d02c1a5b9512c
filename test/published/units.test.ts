import { describe, expect, test } from 'vitest'
import { compareLengths, lengthOf, parseLength } from '../../lib/core/amounts/length.ts'
import { ratio } from '../../lib/core/amounts/ratio.ts'
import { Fraction } from './fraction.ts'

const inMillimetres = (typed: string) => {
  const { over, under } = lengthOf(typed)
  return new Fraction(over, under)
}

describe('units of length, from memory of NIST Special Publication 811, recomputed by products', () => {
  test.each([
    ['1 ft', '304.8'],
    ['1 in', '25.4'],
    ['3 ft', '914.4'],
    ['5280 ft', '1609344'],
    ['1 m', '1000'],
    ['1 cm', '10'],
    ['1 mm', '1'],
  ])('%s is exactly %s mm', (typed, millimetres) => {
    expect(String(inMillimetres(typed))).toBe(String(Fraction.of(millimetres)))
  })

  test('twelve inches are a foot', () => {
    expect(compareLengths(lengthOf('12 in'), lengthOf('1 ft'))).toBe(0)
  })
})

describe('the foot is the international one, not the US survey foot', () => {
  // Federal Register document 2020-21902 (5 October 2020), found in a public text: the survey foot, 1200/3937 m, is
  // given up after 31 December 2022; the two differ by about one hundredth of a foot in a mile.
  const surveyFoot = new Fraction(1_200_000, 3937)

  test('a mile of survey feet is about a hundredth of a foot longer', () => {
    const mile = new Fraction(5280)
    const difference = mile.times(surveyFoot).minus(inMillimetres('5280 ft')).dividedBy(inMillimetres('1 ft'))
    // Recomputed: 0.01056 ft.
    expect(difference.times(new Fraction(100_000)).floor).toBe(1056n)
  })

  test('a foot as typed is not a survey foot, and there is no unit for one', () => {
    expect(compareLengths(lengthOf('1 ft'), ratio(surveyFoot.over, surveyFoot.under))).toBeLessThan(0)
    for (const typed of ['1 ftUS', '1 US ft', '1 sft', '1 survey ft'])
      expect(parseLength(typed)).toBeUndefined()
  })
})
