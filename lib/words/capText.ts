import { otherHousehold } from '../core/people/household.ts'
import type { ReachedCap } from '../core/shares/capReached.ts'
import { moneyWords } from './money.ts'
import type { ShareNames } from './shareText.ts'
import { capitalised } from './summary/names.ts'

/** That a cap is reached, or would be, by how much, and what follows for buying. `what`: "this item". */
export function reachedCapSentences(reached: ReachedCap, names: ShareNames, what: string): readonly string[] {
  const { household, cap, asked, afterwards, over, agreed, pauses } = reached
  const money = (minor: bigint) => moneyWords(minor, names.currency)
  const [name, other] = [names[household], names[otherHousehold(household)]]
  const state =
    afterwards === asked || asked >= cap
      ? `The cap of ${name}, ${money(cap)}, is reached`
      : `With this the cap of ${name}, ${money(cap)}, would be reached`
  const first = over > 0n ? `${state}: ${money(over)} would lie above it.` : `${state}, to the last unit.`
  if (!pauses)
    return over > 0n
      ? [first, `${capitalised(other)} has marked that it bears this. Buying goes on.`]
      : [first]
  return [
    first,
    ...(agreed > 0n ? [`${capitalised(other)} has marked that it bears ${money(agreed)} of this.`] : []),
    `Buying on ${what} pauses until you two agree: spend less, raise the cap, or put the new price into the plan and both mark it.`,
  ]
}
