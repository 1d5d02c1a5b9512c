import type { FigureUnit } from '../../core/figures/figure.ts'
import type { ForBoth } from '../../core/people/household.ts'
import { dayWords } from '../day.ts'
import { hoursWords } from '../hoursText.ts'
import { axisMoneyWords } from '../money.ts'

/** The texts on the axes of every figure. */
export const figureWords = {
  /** The places on one axis, given in the smallest unit: "$0", "$500"; "12 h". */
  amounts: (places: readonly bigint[], unit: FigureUnit): readonly string[] =>
    unit.kind === 'money' ? axisMoneyWords(places, unit.currency) : places.map(hoursWords),
  /** A day on the axis as far as it matters there: "3 March 2027", "March 2027", "2027". */
  day: (day: string, upTo: 'day' | 'month' | 'year'): string => {
    const words = dayWords(day)
    return upTo === 'day'
      ? words
      : words
          .split(' ')
          .slice(upTo === 'month' ? 1 : 2)
          .join(' ')
  },
}

/** As numbers that set lengths; never to be read. */
export function lengthsOf({ a, b }: ForBoth<bigint>): ForBoth<number> {
  return { a: Number(a), b: Number(b) }
}

/** A figure with its caption, and the same in words for whoever can't see it. */
export type DescribedFigure<Drawn> = {
  readonly figure: Drawn
  readonly caption: string
  readonly description: string
}
