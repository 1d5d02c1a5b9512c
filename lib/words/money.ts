import { currencyDigits } from '../core/amounts/currency.ts'
import { type Minor, minorUnits, moneyText } from '../core/amounts/money.ts'
import { isNumber } from '../core/amounts/typedNumber.ts'

/**
 * Minor units for a reader: (90000n, 'USD') is "$900.00", (-1200n, 'JPY') is "−¥1,200". The digits are ISO 4217's, not
 * Intl's, which differ for some currencies; the figure goes through Intl as text, so that it stays exact.
 */
export function moneyWords(minor: Minor, currency: string): string {
  const digits = currencyDigits(currency) ?? 2
  const format = new Intl.NumberFormat('en-US', {
    style: 'currency',
    currency,
    minimumFractionDigits: digits,
    maximumFractionDigits: digits,
  })
  const size = minor < 0n ? -minor : minor
  const words = format.format(moneyText(size, digits) as `${number}`)
  return minor < 0n ? `−${words}` : words
}

/**
 * A typed price or rate for a reader: "28" is "$28.00", "0.385", finer than the smallest coin, "0.385 USD". As typed where
 * it is no figure or no currency is known.
 */
export function typedMoneyWords(typed: string, currency: string): string {
  const digits = currencyDigits(currency)
  if (digits === undefined || !isNumber(typed, 6)) return typed
  return isNumber(typed, digits) ? moneyWords(minorUnits(typed, digits), currency) : `${typed} ${currency}`
}
