import type { Notebook } from '../../../lib/core/agreement/notebook.ts'
import { isNumber } from '../../../lib/core/amounts/typedNumber.ts'
import { conversionAmount, waitingHours, waitingMoney } from '../../../lib/core/hours/conversions.ts'
import { hoursByTask } from '../../../lib/core/hours/hoursByTask.ts'
import { exactHours } from '../../../lib/core/hours/ownHours.ts'
import type { Household } from '../../../lib/core/people/household.ts'
import { shareItems, statementOf } from '../../../lib/core/shares/statement.ts'
import { conversionRefusals } from '../../../lib/words/hoursText.ts'
import { itemTitle } from '../../../lib/words/itemWords.ts'
import { householdName } from '../../../lib/words/labels.ts'
import { moneyWords } from '../../../lib/words/money.ts'
import type { Fault } from '../../ui/draft/saveAnswer.ts'

type Asked = { readonly to: unknown; readonly item: string; readonly hours: string; readonly rate: string }

/**
 * What is wrong with a conversion that a household asks for: no hours at all, or more than are still to give. Hours to
 * be given in money are held against the item's hours, money to be given in hours against the household's balance; what
 * waits for the other's mark is taken off either. Figures that are none are the file's own faults.
 *
 * @param plan what the books are held against, with the books as they are now
 */
export function conversionFaults(plan: Notebook, household: Household, asked: Asked): readonly Fault[] {
  const { to, item, hours, rate } = asked
  if (!isNumber(hours, 6)) return []
  if (exactHours(hours) === 0n) return [{ path: 'hours', message: conversionRefusals.noHours }]
  if (to === 'money') return hoursFault(plan, household, item, hours)
  return to === 'hours' && isNumber(rate, 6) ? moneyFault(plan, household, { hours, rate }) : []
}

function hoursFault(plan: Notebook, household: Household, item: string, typed: string): Fault[] {
  const { conversions } = plan.books
  const found = hoursByTask(plan, shareItems(plan).items, conversions).find(({ id }) => id === item)
  if (found === undefined) return [{ path: 'item', message: conversionRefusals.notWorkedOut }]
  const still = found.stillToGive[household]
  const waiting = waitingHours(conversions, item)[household]
  if (exactHours(typed) + waiting <= still) return []
  const title = itemTitle({ kind: found.kind, name: found.name, key: `item:${item}` })
  const message = conversionRefusals.tooManyHours(householdName(plan, household), title, still, waiting)
  return [{ path: 'hours', message }]
}

function moneyFault(
  plan: Notebook,
  household: Household,
  asked: { readonly hours: string; readonly rate: string },
): Fault[] {
  const statement = statementOf(plan)
  if (!statement.ok) return [{ path: 'item', message: conversionRefusals.notWorkedOut }]
  const { balance, digits, currency } = statement.value
  const left = balance[household] - waitingMoney(plan.books.conversions, digits)[household]
  const worth = conversionAmount(asked, digits)
  if (worth <= left) return []
  const still = moneyWords(left > 0n ? left : 0n, currency)
  const message = conversionRefusals.tooMuchMoney(
    householdName(plan, household),
    moneyWords(worth, currency),
    still,
  )
  return [{ path: 'hours', message }]
}
