import type { BarsFigure } from '../../core/figures/figure.ts'
import type { HoursTotals } from '../../core/hours/hoursTotals.ts'
import { type ForBoth, type Household, households } from '../../core/people/household.ts'
import { hoursWords } from '../hoursText.ts'
import { type DescribedFigure, lengthsOf } from './figureWords.ts'

const measures = [
  ['asked', 'asked'],
  ['given', 'given'],
  ['still', 'left'],
] as const

/** Hours asked of each household, given and left of them; undefined where there are none. */
export function hoursBars(
  totals: ForBoth<HoursTotals>,
  names: ForBoth<string>,
): DescribedFigure<BarsFigure> | undefined {
  const any = households.some((household) => measures.some(([key]) => totals[household][key] !== 0n))
  if (!any) return undefined
  return {
    caption: 'Hours by household',
    description: [
      ...households.map((household) => sentence(totals[household], names[household])),
      'The table has every figure.',
    ].join(' '),
    figure: {
      kind: 'bars',
      unit: { kind: 'hours' },
      names,
      groups: households.map((household) => ({
        title: names[household],
        bars: measures.map(([key, word]) => ({
          parts: onlyOf(household, totals[household][key]),
          text: `${hoursWords(totals[household][key])} ${word}`,
          thin: key !== 'asked',
        })),
      })),
    },
  }
}

function onlyOf(household: Household, hours: bigint): ForBoth<number> {
  return lengthsOf(household === 'a' ? { a: hours, b: 0n } : { a: 0n, b: hours })
}

function sentence({ asked, hired, given, still }: HoursTotals, name: string): string {
  const ofIt = hired === 0n ? '' : `, ${hoursWords(hired)} of them as hired work, which is met in money`
  return `${hoursWords(asked)} asked of ${name}${ofIt}; ${hoursWords(given)} given, ${hoursWords(still)} left to work, or to bring in money.`
}
