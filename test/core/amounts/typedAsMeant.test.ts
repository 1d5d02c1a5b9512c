import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { parseLength } from '../../../lib/core/amounts/length.ts'
import { figuresMeant, figureTyped, withPoint } from '../../../lib/core/amounts/typedFigure.ts'
import { lengthMeant } from '../../../lib/core/amounts/typedLength.ts'

describe('a figure typed with commas', () => {
  test.each([
    ['1250,50', '1250.50'],
    ['38,5', '38.5'],
    ['0,385', '0.385'],
    ['1,250.50', '1250.50'],
    ['12,345,678.9', '12345678.9'],
  ])('%s is %s', (typed, figure) => {
    expect(withPoint(typed)).toBe(figure)
  })

  // Either a thousand two hundred or one and a fifth: nobody but the one who typed it knows.
  test.each(['1,200', '12,34,56.00', '1,2,3', '1.250,50', '-1,5', 'a,5', ''])(
    '“%s” is left as it is',
    (typed) => {
      expect(withPoint(typed)).toBe(typed)
    },
  )

  test('what holds already is never changed', () => {
    fc.assert(
      fc.property(fc.nat(), fc.nat(999_999), (whole, part) => {
        for (const typed of [`${whole}`, `${whole}.${part}`]) expect(withPoint(typed)).toBe(typed)
      }),
    )
  })

  test('is offered as what is meant, both where it can be read in two ways', () => {
    expect(figuresMeant('$120')).toEqual(['120'])
    expect(figuresMeant('1,250.50 USD')).toEqual(['1250.50'])
    expect(figuresMeant('1,200')).toEqual(['1200', '1.200'])
    expect(figuresMeant('120')).toEqual([])
    expect(figuresMeant('2e1')).toEqual([])
    expect(figuresMeant('-2')).toEqual([])
    expect(figuresMeant('')).toEqual([])
  })

  test.each([
    ['1.412,50', '1412.50'],
    ['1 412,50', '1412.50'],
    ['€ 1.412,50', '1412.50'],
    ['1’412.50', '1412.50'],
    ['1 250', '1250'],
    ['1,200,000', '1200000'],
    ['$1.10', '1.10'],
    ['30 days', '30'],
    ['7 ½ h', '7.5'],
    ['007', '7'],
    ['5.', '5'],
  ])('%s is offered as %s', (typed, figure) => {
    expect(figuresMeant(typed)).toEqual([figure])
  })
})

describe('a figure that names its unit', () => {
  test.each([
    ['30 days', 'days', '30'],
    ['30days', 'days', '30'],
    ['7 1/2 Hours ', 'hours', '7.5'],
    ['120,50 USD', 'USD', '120.50'],
    ['12,5', '', '12.5'],
  ])('%s where the field says “%s” is %s', (typed, unit, figure) => {
    expect(figureTyped(typed, unit)).toBe(figure)
  })

  test.each([
    ['30 weeks', 'days'],
    ['about 30 days', 'days'],
    ['days', 'days'],
    ['1,200 USD', 'USD'],
  ])('%s where the field says “%s” is left as it is', (typed, unit) => {
    expect(figureTyped(typed, unit)).toBe(typed)
  })
})

describe('a length that lacks little', () => {
  test.each([
    ["5'6", '5 ft 6 in'],
    ['5 ft 6', '5 ft 6 in'],
    ["6' 2-1/2", '6 ft 2-1/2 in'],
    ['1,83 m', '1.83 m'],
  ])('%s is taken for %s', (typed, length) => {
    expect(lengthMeant(typed)).toBe(length)
    expect(parseLength(length)).toBeDefined()
  })

  test.each(['6 ft', '6', 'six', '', "5'6'7", '1,2,3 m'])('of “%s” nothing is guessed', (typed) => {
    expect(lengthMeant(typed)).toBeUndefined()
  })
})
