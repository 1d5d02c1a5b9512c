import { bareFigure } from './length.ts'
import type { Ratio } from './ratio.ts'
import { isNumber, plainNumber } from './typedNumber.ts'

/** Every character that stands for a fraction by itself. */
export const vulgarFractionCharacters = '½⅓⅔¼¾⅛⅜⅝⅞'

const hasFraction = new RegExp(`[/⁄${vulgarFractionCharacters}]`)

/** A fraction or a mixed number, "7 ½" or "12 1/2", as people write them in lengths; undefined for all else. */
function fractionOf(typed: string): Ratio | undefined {
  return hasFraction.test(typed) ? bareFigure(typed.replace('⁄', '/')) : undefined
}

/**
 * A typed fraction or mixed number as a number of the file format: "12 1/2" is "12.5". Undefined where none was typed, and
 * where it comes to no exact figure with `fractionDigits` digits after the point.
 */
export function exactFraction(typed: string, fractionDigits: number): string | undefined {
  const size = fractionOf(typed)
  if (size === undefined) return undefined
  const scaled = size.over * 10n ** BigInt(fractionDigits)
  if (scaled % size.under !== 0n) return undefined
  return asNumber(scaled / size.under, fractionDigits)
}

/** The same rounded half up, where a fraction was typed that comes to no exact figure. */
export function roundedFraction(typed: string, fractionDigits: number): string | undefined {
  const size = fractionOf(typed)
  if (size === undefined || exactFraction(typed, fractionDigits) !== undefined) return undefined
  const scaled = size.over * 10n ** BigInt(fractionDigits)
  return asNumber((2n * scaled + size.under) / (2n * size.under), fractionDigits)
}

function asNumber(count: bigint, fractionDigits: number): string | undefined {
  const figure = plainNumber(count, fractionDigits)
  return isNumber(figure, fractionDigits) ? figure : undefined
}
