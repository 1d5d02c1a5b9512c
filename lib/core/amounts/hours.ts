import { roundHalfUp } from './round.ts'
import { scaledInteger } from './typedNumber.ts'

/** Hours are summed exactly in millionths and rounded once, half up, to hundredths. */
export type Hundredths = bigint

/** The sum of typed hours (up to six digits after the point) in hundredths of an hour, rounded half up. */
export function sumHours(typed: readonly string[]): Hundredths {
  let millionths = 0n
  for (const hours of typed) millionths += scaledInteger(hours, 6)
  return roundHalfUp(millionths, 10_000n)
}

/** (1250n) is "12.50". */
export function hoursText(hundredths: Hundredths): string {
  const figures = hundredths.toString().padStart(3, '0')
  return `${figures.slice(0, -2)}.${figures.slice(-2)}`
}
