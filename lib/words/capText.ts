import { never } from '../core/assert.ts'
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

/**
 * Which caps buying is held against.
 *
 * @param now.signed number of the revision that all have signed; undefined while there is none
 * @param now.draftDiffers whether the notebook has other caps than these now
 */
export function whichCapsWords(
  held: {
    readonly from: 'signed' | 'marked since' | 'draft'
    readonly marked: { readonly a: boolean; readonly b: boolean }
  },
  now: { readonly signed: number | undefined; readonly draftDiffers: boolean },
  names: ShareNames,
): string {
  switch (held.from) {
    case 'signed':
      return `This goes by the caps of revision ${now.signed}, which all have signed.${now.draftDiffers ? ' The notebook has other caps now; they hold here once both of you have marked them.' : ''}`
    case 'marked since':
      return `This goes by the caps that both of you have marked since revision ${now.signed} was signed.`
    case 'draft':
      return `Nothing is signed yet, so this goes by the caps as they stand in the notebook. ${markedWords(held.marked, names)}`
    default:
      return never(held.from)
  }
}

function markedWords({ a, b }: { readonly a: boolean; readonly b: boolean }, names: ShareNames): string {
  if (a && b) return 'Both of you have marked them.'
  if (!a && !b) return 'Nobody has marked them so far.'
  return `${capitalised(names[a ? 'a' : 'b'])} has marked them, ${names[a ? 'b' : 'a']} has not.`
}

/** Two caps that leave a part of the total to nobody. Amounts in minor units. */
export function capsShortWords(
  short: { readonly a: bigint; readonly b: bigint; readonly total: bigint; readonly short: bigint },
  names: ShareNames,
): string {
  const money = (minor: bigint) => moneyWords(minor, names.currency)
  return `The cap of ${names.a}, ${money(short.a)}, and that of ${names.b}, ${money(short.b)}, together fall ${money(short.short)} short of the total, ${money(short.total)}. Raise one of them or take it away: else nobody bears the rest.`
}
