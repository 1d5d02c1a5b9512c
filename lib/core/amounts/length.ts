import { compareRatios, type Ratio, ratio } from './ratio.ts'

/**
 * Lengths as people type them, read exactly. The grammar is the file format's: an optional minus, then metric, or feet,
 * or inches, or feet then inches; each figure an integer, a decimal, a fraction or a mixed number. 1 ft = 0.3048 m and
 * 1 in = 25.4 mm by definition (NIST SP 811), so every length is an exact ratio of millimetres.
 */
export type Millimetres = Ratio

const vulgarFractions: Readonly<Record<string, readonly [bigint, bigint]>> = {
  '½': [1n, 2n],
  '⅓': [1n, 3n],
  '⅔': [2n, 3n],
  '¼': [1n, 4n],
  '¾': [3n, 4n],
  '⅛': [1n, 8n],
  '⅜': [3n, 8n],
  '⅝': [5n, 8n],
  '⅞': [7n, 8n],
}

const whole = '(?:0|[1-9][0-9]{0,11})'
const vulgar = '[½⅓⅔¼¾⅛⅜⅝⅞]'
const fraction = `(?:${whole} ?/ ?${whole})`
// Blanks are folded to single spaces before matching, so that no input can make these patterns backtrack far.
const figure = `(?:${whole}(?:(?: | ?- ?)${fraction}| ?-? ?${vulgar})|${fraction}|${vulgar}|${whole}(?:\\.[0-9]{1,40})?)`
const metricForm = new RegExp(`^(${figure}) ?(mm|cm|m)$`)
const figureForm = new RegExp(`^${figure}$`)
const feetInchesForm = new RegExp(`^(?:(${figure}) ?(?:ft|['′’]))? ?(?:(${figure}) ?(?:in|["″”]))?$`)

const perUnit: Readonly<Record<string, Ratio>> = {
  mm: ratio(1n, 1n),
  cm: ratio(10n, 1n),
  m: ratio(1000n, 1n),
  ft: ratio(3048n, 10n),
  in: ratio(254n, 10n),
}

/** No length that people type is longer. */
export const longestTypedLength = 100

/** The exact length in millimetres, or undefined where the text is not a length of the file format. */
export function parseLength(typed: string): Millimetres | undefined {
  if (typed.length > longestTypedLength) return undefined
  const folded = typed.replace(/\s+/g, ' ').trim()
  const negative = folded.startsWith('-')
  const size = parseUnsigned(negative ? folded.slice(1).trimStart() : folded)
  return size === undefined ? undefined : negative ? ratio(-size.over, size.under) : size
}

/** A length that was checked before; throws where it does not hold. */
export function lengthOf(typed: string): Millimetres {
  const length = parseLength(typed)
  if (length === undefined) throw new Error(`not a checked length: ${typed}`)
  return length
}

function parseUnsigned(text: string): Millimetres | undefined {
  const metric = metricForm.exec(text)
  if (metric) return inUnit(metric[1] ?? '', metric[2] ?? '')
  const imperial = feetInchesForm.exec(text)
  if (!imperial || (imperial[1] === undefined && imperial[2] === undefined)) return undefined
  const feet = imperial[1] === undefined ? ratio(0n, 1n) : inUnit(imperial[1], 'ft')
  const inches = imperial[2] === undefined ? ratio(0n, 1n) : inUnit(imperial[2], 'in')
  if (feet === undefined || inches === undefined) return undefined
  return ratio(feet.over * inches.under + inches.over * feet.under, feet.under * inches.under)
}

function inUnit(figureText: string, unit: string): Millimetres | undefined {
  const value = parseFigure(figureText)
  const size = perUnit[unit]
  if (value === undefined || size === undefined) return undefined
  return ratio(value.over * size.over, value.under * size.under)
}

/** A figure alone, without a unit, in any form in which a length may have it; undefined where it is none. */
export function bareFigure(typed: string): Ratio | undefined {
  if (typed.length > longestTypedLength) return undefined
  const folded = typed.replace(/\s+/g, ' ').trim()
  return figureForm.test(folded) ? parseFigure(folded) : undefined
}

function parseFigure(text: string): Ratio | undefined {
  const last = vulgarFractions[text.slice(-1)]
  if (last) {
    const before = text.slice(0, -1).replace(/[ -]/g, '')
    const [over, under] = last
    return before === '' ? ratio(over, under) : ratio(BigInt(before) * under + over, under)
  }
  const slash = text.indexOf('/')
  if (slash < 0) return parseDecimal(text)
  const under = BigInt(text.slice(slash + 1).trim())
  // A joiner before the slash makes it a mixed number; "1 /4" has a blank only next to the slash.
  const [first, second] = text
    .slice(0, slash)
    .trim()
    .split(/ ?- ?| /)
  if (under < 1n || under > 64n) return undefined
  const wholePart = second === undefined ? 0n : BigInt(first ?? '0')
  return ratio(wholePart * under + BigInt(second ?? first ?? '0'), under)
}

function parseDecimal(text: string): Ratio {
  const [integer, decimals = ''] = text.split('.')
  return ratio(BigInt((integer ?? '0') + decimals), 10n ** BigInt(decimals.length))
}

export const compareLengths: (left: Millimetres, right: Millimetres) => number = compareRatios

/** For drawing and other work that is not exact anyway. */
export function inMillimetres(length: Millimetres): number {
  // Divide the whole part first: the bigints may exceed what a double holds.
  const wholeMillimetres = length.over / length.under
  return Number(wholeMillimetres) + Number(length.over % length.under) / Number(length.under)
}
