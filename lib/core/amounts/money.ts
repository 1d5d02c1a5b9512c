import { scaledInteger } from './typedNumber.ts'

/** Money is a whole number of minor units of the notebook's currency; `digits` is that currency's ISO 4217 figure. */
export type Minor = bigint

/** Typed money as minor units: ("120.5", 2) is 12050n. Throws on text that the file check refuses. */
export function minorUnits(typed: string, digits: number): Minor {
  return scaledInteger(typed, digits)
}

/** Minor units as the file writes them: (-2050n, 2) is "-20.50", (1200n, 0) is "1200". */
export function moneyText(minor: Minor, digits: number): string {
  const sign = minor < 0n ? '-' : ''
  const figures = (minor < 0n ? -minor : minor).toString().padStart(digits + 1, '0')
  if (digits === 0) return sign + figures
  return `${sign}${figures.slice(0, -digits)}.${figures.slice(-digits)}`
}

export function lesser(left: Minor, right: Minor): Minor {
  return left < right ? left : right
}
