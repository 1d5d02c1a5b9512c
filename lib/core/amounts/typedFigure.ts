import { isNumber } from './typedNumber.ts'

/**
 * A figure as a file writes it, from what somebody typed who groups by commas or whose keys have no point: "1250,50" is
 * "1250.50", "1,250.50" too. What can be read in two ways, such as "1,200", and all else stays as it is.
 */
export function withPoint(typed: string): string {
  const decimal = /^\s*([0-9]+),([0-9]{1,2})\s*$/.exec(typed) ?? /^\s*(0),([0-9]+)\s*$/.exec(typed)
  if (decimal !== null) return `${decimal[1]}.${decimal[2]}`
  return /^\s*[1-9][0-9]{0,2}(,[0-9]{3})+\.[0-9]+\s*$/.test(typed) ? typed.trim().replaceAll(',', '') : typed
}

/** How else a figure could be written that can't be read: without the sign of a currency, with a point, without groups. */
export function figuresMeant(typed: string): readonly string[] {
  const bare = typed.replace(/^[^0-9.,-]+|[^0-9.,]+$/gu, '')
  const known = withPoint(bare)
  if (isNumber(known, 6)) return known === typed ? [] : [known]
  return /^[1-9][0-9]{0,2},[0-9]{3}$/.test(bare) ? [bare.replace(',', ''), bare.replace(',', '.')] : []
}
