import type { Minor } from '../../core/amounts/money.ts'
import type { StepsFigure } from '../../core/figures/figure.ts'
import type { PartStanding } from '../../core/ledger/instalmentStanding.ts'
import { type Spending, type SpentBy, spentByDay } from '../../core/ledger/spentByDay.ts'
import type { ForBoth } from '../../core/people/household.ts'
import { dayWords } from '../day.ts'
import { moneyWords } from '../money.ts'
import { type DescribedFigure, lengthsOf } from './figureWords.ts'

type Instalment = Pick<PartStanding, 'on' | 'state'>

export type SpendingShown = DescribedFigure<StepsFigure> & { readonly days: readonly SpentBy[] }

/**
 * What was spent by each household, day by day, against what was planned in all. Undefined while nothing was spent.
 *
 * @param instalments days on which a payment between the two is planned, and where it stands
 * @param until the day on which the books are read; the steps end no earlier
 */
export function spendingSteps(
  spending: readonly Spending[],
  planned: Minor,
  names: ForBoth<string> & { readonly currency: string },
  instalments: readonly Instalment[] = [],
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
      duesSentence(instalments),
    ]
      .filter(Boolean)
      .join(' '),
    figure: {
      kind: 'steps',
      unit: { kind: 'money', currency: names.currency },
      steps: days.map(({ on, spent }) => ({ on, parts: lengthsOf(spent) })),
      against: Number(planned),
      dues: instalments.map(({ on, state }) => ({ on, met: state === 'paid' || state === 'met' })),
      ...(until === undefined ? {} : { until }),
      texts: {
        a: `${names.a}: ${money(a)}`,
        b: `${names.b}: ${money(b)}`,
        both: `both: ${money(a + b)}`,
        against: `planned: ${money(planned)}`,
        due: 'an instalment is due',
        met: instalments.some(({ state }) => state === 'met')
          ? 'an instalment, paid or met otherwise'
          : 'an instalment, paid',
      },
    },
  }
}

/** "Met otherwise" is what was not paid and that the balance asks for no more, as the payment plan has it. */
function duesSentence(instalments: readonly Instalment[]): string {
  if (instalments.length === 0) return ''
  const those = (state: PartStanding['state']) => instalments.filter((one) => one.state === state).length
  const met = those('met')
  const otherwise =
    met === 0 ? '' : `, ${met} met by what was given otherwise or because less is asked for than was planned`
  return `${instalments.length === 1 ? 'One instalment is' : `${instalments.length} instalments are`} planned between the two, ${those('paid')} of them paid${otherwise}.`
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
