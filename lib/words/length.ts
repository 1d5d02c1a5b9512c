import type { Units } from '../core/agreement/notebook.ts'
import { type Millimetres, parseLength } from '../core/amounts/length.ts'
import { roundHalfUp } from '../core/amounts/round.ts'

/** An exact length for a reader in the notebook's units: to the nearest 1/16 inch, or to the nearest millimetre. */
export function lengthWords(length: Millimetres, units: Units): string {
  const size = length.over < 0n ? { over: -length.over, under: length.under } : length
  const words = units === 'metric' ? metricWords(size) : feetInchesWords(size)
  return length.over < 0n && !/^0 (m|in)$/.test(words) ? `−${words}` : words
}

/** A place along the line: its beginning lies at 0 ft, as one would write it on a plan, and not at 0 in. */
export function stationWords(at: Millimetres, units: Units): string {
  const words = lengthWords(at, units)
  return words === '0 in' ? '0 ft' : words
}

function metricWords(size: Millimetres): string {
  const millimetres = roundHalfUp(size.over, size.under).toString().padStart(4, '0')
  return `${millimetres.slice(0, -3)}.${millimetres.slice(-3)} m`.replace(/\.?0+ m$/, ' m')
}

function feetInchesWords(size: Millimetres): string {
  // One sixteenth of an inch is 127/80 mm.
  const sixteenths = roundHalfUp(size.over * 80n, size.under * 127n)
  const feet = sixteenths / 192n
  const inches = (sixteenths % 192n) / 16n
  const rest = sixteenths % 16n
  const fraction = rest === 0n ? '' : reducedFraction(rest)
  const inchFigure = [inches > 0n || fraction === '' ? inches.toString() : '', fraction]
    .filter(Boolean)
    .join(' ')
  if (feet === 0n) return `${inchFigure} in`
  return inches === 0n && fraction === '' ? `${feet} ft` : `${feet} ft ${inchFigure} in`
}

function reducedFraction(sixteenths: bigint): string {
  let [over, under] = [sixteenths, 16n]
  while (over % 2n === 0n) [over, under] = [over / 2n, under / 2n]
  return `${over}/${under}`
}

/** A typed length beside others in the notebook's units: as typed, unless it was typed in units of the other kind. */
export function typedLengthWords(typed: string, units: Units): string {
  const length = parseLength(typed)
  const metric = /m\s*$/.test(typed)
  return length === undefined || metric === (units === 'metric') ? typed : lengthWords(length, units)
}

/**
 * What the app read from a typed length, in both kinds of units: `5' 10-1/4"` is "5 ft 10 1/4 in = 1.784 m". What would only
 * repeat what was typed is left out ("4 ft" is "1.219 m"), and nothing is as long in feet as in metres: "0 ft" is "0 m".
 */
export function lengthReading(typed: string): string | undefined {
  const length = parseLength(typed)
  if (length === undefined) return undefined
  const thin = thinWords(length)
  if (thin !== undefined) return thin
  const same = typed
    .replace(/[\s\u00A0]+/g, ' ')
    .trim()
    .replace(/^-/, '−')
  if (length.over === 0n) return /m$/.test(same) ? '0 ft' : '0 m'
  const both = [lengthWords(length, 'ft-in'), lengthWords(length, 'metric')]
  return both.filter((words) => words !== same).join(' = ')
}

/** A wall or a sheet is told in decimals: a sixteenth of an inch would be another thing. Under one inch, where none fits. */
function thinWords({ over, under }: Millimetres): string | undefined {
  const thin = over > 0n && over * 10n < under * 254n
  if (!thin || (over * 80n) % (under * 127n) === 0n) return undefined
  const decimals = (figure: bigint, digits: number) =>
    `${figure / 10n ** BigInt(digits)}.${(figure % 10n ** BigInt(digits)).toString().padStart(digits, '0')}`.replace(
      /\.?0+$/,
      '',
    )
  const inches = roundHalfUp(over * 10_000n, under * 254n)
  const millimetres = roundHalfUp(over * 100n, under)
  return `${decimals(inches, 3)} in = ${decimals(millimetres, 2)} mm`
}
