import { expect, test } from 'vitest'
import { currencyDigits } from '../../lib/core/amounts/currency.ts'

// ISO 4217 list one, minor units; recomputed from the package currency-codes 2.2.0, list one itself from memory.
test.each([
  ['USD', 2],
  ['EUR', 2],
  ['GBP', 2],
  ['HUF', 2],
  ['IDR', 2],
  ['JPY', 0],
  ['KRW', 0],
  ['ISK', 0],
  ['CLP', 0],
  ['KWD', 3],
  ['BHD', 3],
  ['TND', 3],
  ['CLF', 4],
  ['UYW', 4],
])('ISO 4217 gives %s %i digits after the point', (code, digits) => {
  expect(currencyDigits(code)).toBe(digits)
})

test('ISO 4217 gives gold, special drawing rights, tests and “no currency” no minor unit: they are not money here', () => {
  for (const code of ['XAU', 'XDR', 'XTS', 'XXX']) expect(currencyDigits(code), code).toBeUndefined()
})

test('the table is not Intl’s, which gives the forint no digits', () => {
  const { maximumFractionDigits } = new Intl.NumberFormat('en', {
    style: 'currency',
    currency: 'HUF',
  }).resolvedOptions()
  expect(maximumFractionDigits).not.toBe(currencyDigits('HUF'))
})
