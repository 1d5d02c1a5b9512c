import { type Ratio, ratio } from '../amounts/ratio.ts'
import { roundHalfUp } from '../amounts/round.ts'
import { scaledInteger } from '../amounts/typedNumber.ts'

/** A typed number times an exact factor of zero or more, as the file writes it: rounded half up to six decimals. */
export function movedNumber(typed: string, factor: Ratio): string {
  const millionths = roundHalfUp(scaledInteger(typed, 6) * factor.over, factor.under)
  const figures = millionths.toString().padStart(7, '0')
  return `${figures.slice(0, -6)}.${figures.slice(-6)}`.replace(/\.?0+$/, '')
}

/** ("-10") is 90/100: the factor of a move by so many percent, typed as `moveHolds` accepts it. */
export function moveFactor(percent: string): Ratio {
  const size = scaledInteger(percent.replace('-', ''), 4)
  const moved = percent.startsWith('-') ? 1_000_000n - size : 1_000_000n + size
  return ratio(moved, 1_000_000n)
}
