import { currencyDigits } from '../core/amounts/currency.ts'
import { type Minor, minorUnits, moneyText } from '../core/amounts/money.ts'
import { isNumber } from '../core/amounts/typedNumber.ts'

/**
 * Minor units for a reader: (90000n, 'USD') is "$900.00", (-1200n, 'JPY') is "−¥1,200". The digits are ISO 4217's, not
 * Intl's, which differ for some currencies; the figure goes through Intl as text, so that it stays exact.
 */
export function moneyWords(minor: Minor, currency: string): string {
  return shownWith(digitsIn(currency), minor, currency)
}

/** Amounts on one axis, in whole units of the currency where all of them are: "$0", "$500"; else "$0.00", "$2.50". */
export function axisMoneyWords(amounts: readonly Minor[], currency: string): string[] {
  const digits = digitsIn(currency)
  const whole = amounts.every((amount) => amount % 10n ** BigInt(digits) === 0n)
  return amounts.map((amount) => shownWith(whole ? 0 : digits, amount, currency))
}

function digitsIn(currency: string): number {
  return currencyDigits(currency) ?? 2
}

/** @param shown as many digits after the point; no fewer than the amount has */
function shownWith(shown: number, minor: Minor, currency: string): string {
  const format = new Intl.NumberFormat('en-US', {
    style: 'currency',
    currency,
    minimumFractionDigits: shown,
    maximumFractionDigits: shown,
  })
  const size = minor < 0n ? -minor : minor
  const words = format.format(moneyText(size, digitsIn(currency)) as `${number}`)
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
