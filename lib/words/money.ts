import { currencyDigits } from '../core/amounts/currency.ts'
import { type Minor, moneyText } from '../core/amounts/money.ts'

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
