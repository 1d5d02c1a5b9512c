import { hoursText } from '../core/amounts/hours.ts'
import type { Minor } from '../core/amounts/money.ts'
import type { PlannedHours } from '../core/hours/plannedHours.ts'
import { households } from '../core/people/household.ts'
import { moneyWords } from './money.ts'
import type { ShareNames } from './shareText.ts'

export const meansLabel = 'What each brings, if all goes as planned'

/** What a household is asked for: `inMoney` and `promised`, its goods and own work, add to `asked`. Minor units. */
export type Means = { readonly asked: Minor; readonly inMoney: Minor; readonly promised: Minor }

/** "asked for $3,750.00: of it $2,811.25 in money, and $938.75 in goods and own work"; said to the household or of it. */
export function meansWords({ asked, inMoney, promised }: Means, currency: string): string {
  const money = (minor: bigint) => moneyWords(minor, currency)
  const start = `asked for ${money(asked)}`
  if (promised === 0n) return asked === 0n ? start : `${start}: all of it in money`
  if (inMoney < 0n)
    return `${start}: goods and own work come to ${money(promised)}, so ${money(-inMoney)} comes back in money`
  if (inMoney === 0n) return `${start}: all of it in goods and own work`
  return `${start}: of it ${money(inMoney)} in money, and ${money(promised)} in goods and own work`
}

/** Whose share of the planned work is how many hours, and how many it does; undefined where no work is planned. */
export function plannedHoursWords(
  { all, share, does, hired }: PlannedHours,
  names: ShareNames,
): string | undefined {
  if (all === 0n) return undefined
  const each = households.map(
    (household) =>
      `${hoursText(share[household])} h are the share of ${names[household]}, which does ${hoursText(does[household])} h itself`,
  )
  return `Of ${hoursText(all)} h of planned work, ${each.join('; ')}.${hired === 0n ? '' : ` ${hoursText(hired)} h are hired.`}`
}

/** Wherever hours stand beside money, so that nobody adds them. */
export const hoursInMoneyWords =
  'These hours are counted in what is asked, not added to it: who does less than its share brings more in money, who does more brings less.'
