import currencyCodes from 'currency-codes'

/**
 * ISO 4217 gives these codes no minor unit ("N.A."): metals, bond units, testing, no currency. The package lists them
 * with 0 digits, which would read as money in whole units; nobody is paid in them.
 */
const notMoney = new Set([
  'XAG',
  'XAU',
  'XBA',
  'XBB',
  'XBC',
  'XBD',
  'XDR',
  'XPD',
  'XPT',
  'XSU',
  'XTS',
  'XUA',
  'XXX',
])

/**
 * Digits after the point of a currency by ISO 4217 (`currency-codes`; `Intl` differs, HUF for one), or undefined where
 * the code is not money in use.
 */
export function currencyDigits(code: string): number | undefined {
  if (!/^[A-Z]{3}$/.test(code) || notMoney.has(code)) return undefined
  return currencyCodes.code(code)?.digits
}

/** Every code of money in use with its English name, in order of the code. */
export function currencies(): readonly { readonly code: string; readonly name: string }[] {
  return currencyCodes.data
    .filter((entry) => currencyDigits(entry.code) !== undefined)
    .map((entry) => ({ code: entry.code, name: entry.currency }))
    .sort((left, right) => (left.code < right.code ? -1 : 1))
}
