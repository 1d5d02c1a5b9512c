import { describe, expect, test } from 'vitest'
import { currencies, currencyDigits } from '../../../lib/core/amounts/currency.ts'

describe('money that is not in use has no digits', () => {
  test.each([
    ['gold', 'XAU'],
    ['silver', 'XAG'],
    ['special drawing rights', 'XDR'],
    ['no currency', 'XXX'],
    ['the code for tests', 'XTS'],
    ['a code that nobody issues', 'QQQ'],
    ['a code that was given up', 'DEM'],
    ['small letters', 'usd'],
    ['a blank after it', 'USD '],
    ['four letters', 'USDX'],
    ['nothing', ''],
    ['a name that every object has', 'constructor'],
  ])('%s', (_, code) => {
    expect(currencyDigits(code)).toBeUndefined()
  })
})

describe('the list to choose from', () => {
  const list = currencies()

  test('is in order of the code, and no code stands twice', () => {
    const codes = list.map(({ code }) => code)
    expect(codes).toEqual([...new Set(codes)].sort())
    expect(codes.length).toBeGreaterThan(150)
  })

  test('gives each a name and digits from 0 to 4', () => {
    for (const { code, name } of list) {
      expect(name, code).toMatch(/\S/)
      expect([0, 2, 3, 4], code).toContain(currencyDigits(code))
    }
  })

  test('holds no metal and no code for tests', () => {
    expect(list.some(({ code }) => ['XAU', 'XXX', 'XTS', 'XDR'].includes(code))).toBe(false)
  })
})
