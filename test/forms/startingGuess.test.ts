import { expect, test } from 'vitest'
import { currencyDigits } from '../../lib/core/amounts/currency.ts'
import { startingGuess } from '../../lib/forms/startingGuess.ts'

// Currencies by ISO 4217 list one: the entity and its money.
test.each([
  ['en-US,en;q=0.9', 'USD', 'ft-in'],
  ['en-GB', 'GBP', 'metric'],
  ['de', 'EUR', 'metric'],
  ['de-CH,de;q=0.8', 'CHF', 'metric'],
  ['fr-CA,fr;q=0.5', 'CAD', 'metric'],
  ['ja,en-US;q=0.2', 'USD', 'ft-in'],
  ['en;q=0.1, nb-NO;q=0.9', 'NOK', 'metric'],
])('a browser that asks for %s begins with %s, %s', (languages, currency, units) => {
  expect(startingGuess(languages)).toEqual({ currency, units })
})

test.each(['', '*', ',,;q=', 'x'.repeat(10_000), 'en-ZZ', '\u0000', 'q=1;q=1;q=1', 'de;q=NaN'])(
  'whatever a browser sends, the guess is money in use: %j',
  (languages) => {
    const { currency, units } = startingGuess(languages)
    expect(currencyDigits(currency)).toBeDefined()
    expect(['ft-in', 'metric']).toContain(units)
  },
)
