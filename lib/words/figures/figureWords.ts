import type { FigureUnit } from '../../core/figures/figure.ts'
import type { ForBoth } from '../../core/people/household.ts'
import { dayWords } from '../day.ts'
import { hoursWords } from '../hoursText.ts'
import { moneyWords } from '../money.ts'

/** The texts on the axes of every figure. */
export const figureWords = {
  /** A place on the axis, in the smallest unit: "$500.00", "12 h". */
  amount: (amount: bigint, unit: FigureUnit): string =>
    unit.kind === 'money' ? moneyWords(amount, unit.currency) : hoursWords(amount),
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
