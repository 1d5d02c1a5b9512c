import type { Minor } from '../../core/amounts/money.ts'
import type { StepsFigure } from '../../core/figures/figure.ts'
import { type Spending, type SpentBy, spentByDay } from '../../core/ledger/spentByDay.ts'
import type { ForBoth } from '../../core/people/household.ts'
import { dayWords } from '../day.ts'
import { moneyWords } from '../money.ts'
import { type DescribedFigure, lengthsOf } from './figureWords.ts'

export type SpendingShown = DescribedFigure<StepsFigure> & { readonly days: readonly SpentBy[] }

/**
 * What was spent by each household, day by day, against what was planned in all. Undefined while nothing was spent.
 *
 * @param dues days on which a payment between the two is planned, and whether it was paid
 * @param until the day on which the books are read; the steps end no earlier
 */
export function spendingSteps(
  spending: readonly Spending[],
  planned: Minor,
  names: ForBoth<string> & { readonly currency: string },
  dues: StepsFigure['dues'] = [],
  until?: string,
): SpendingShown | undefined {
  const days = spentByDay(spending)
  const [first, last] = [days[0], days.at(-1)]
  if (first === undefined || last === undefined) return undefined
  const money = (minor: Minor) => moneyWords(minor, names.currency)
  const { a, b } = last.spent
  return {
    days,
    caption: 'Spent over time, against what was planned',
    description: [
      `Steps from ${dayWords(first.on)} to ${dayWords(last.on)}.`,
      `Spent by then: ${money(a + b)}, of it ${money(a)} by ${names.a} and ${money(b)} by ${names.b}.`,
      `Planned in all: ${money(planned)}.`,
      duesSentence(dues),
    ]
      .filter(Boolean)
      .join(' '),
    figure: {
      kind: 'steps',
      unit: { kind: 'money', currency: names.currency },
      steps: days.map(({ on, spent }) => ({ on, parts: lengthsOf(spent) })),
      against: Number(planned),
      dues,
      ...(until === undefined ? {} : { until }),
      texts: {
        a: `${names.a}: ${money(a)}`,
        b: `${names.b}: ${money(b)}`,
        both: `both: ${money(a + b)}`,
        against: `planned: ${money(planned)}`,
        due: 'an instalment is due',
        met: 'an instalment, paid',
      },
    },
  }
}

function duesSentence(dues: StepsFigure['dues']): string {
  if (dues.length === 0) return ''
  const paid = dues.filter(({ met }) => met).length
  return `${dues.length === 1 ? 'One instalment is' : `${dues.length} instalments are`} planned between the two, ${paid} of them paid.`
}

/** What stands beside the figure of what was spent: its table, day by day. */
export const spendingWords = {
  heading: 'Day by day',
  lead: 'Money, goods and hours that each household gave for the fence, less what came back. Payments between the two are no cost and are not in it.',
  table: 'Spent up to the end of each day',
  folded: 'Every day as a table',
  day: 'Day',
  both: 'Both',
}
