import type { PassageCounts } from '../core/agreement/notebook.ts'
import type { ForBoth, Household } from '../core/people/household.ts'
import { otherHousehold } from '../core/people/household.ts'
import type { CountsSideBySide } from '../core/shares/countsSideBySide.ts'
import { faultText } from './faultText.ts'
import { moneyWords } from './money.ts'
import type { ShareNames } from './shareText.ts'
import { capitalised } from './summary/names.ts'

/** How a gate's count stands, and how it came about. */
export type CountStanding =
  | { readonly kind: 'none' }
  | { readonly kind: 'counting' }
  | { readonly kind: 'apart' }
  | {
      readonly kind: 'settled'
      readonly uses: ForBoth<string>
      readonly how: 'alike' | Household | 'as typed'
    }

export const countFaults = {
  needed: 'Needed: a number of passages a week; 0 if there are none.',
  gateGone: 'This gate was removed in the meantime. “The line” shows what there is now.',
  changed:
    'The counts were changed since you opened the page. Load the page again, and look at them as they are now.',
} as const
export const countKept = 'Kept.'
export const countedOnItsPage =
  'Passages a week are counted on the page of the gate, by each household apart.'

/** Said wherever halves stand in for a count. */
export const halvesMeanwhile = 'Counted apart and not settled: halves until both take one count.'

export function countStandingWords(standing: CountStanding, names: ShareNames): string {
  switch (standing.kind) {
    case 'none':
      return 'Nobody has counted yet. Each household counts what both make, and sees the other’s count once both have.'
    case 'counting':
      return 'The passages are being counted. Until both take one count, sharing by use asks each for half.'
    case 'apart':
      return 'The two counts differ. Until both take one of them, sharing by use asks each for half.'
    default:
      return `${countWords(standing.uses, names)}. ${howWords(standing.how, names)}`
  }
}

function howWords(how: 'alike' | Household | 'as typed', names: ShareNames): string {
  if (how === 'alike') return 'Both counted the same.'
  if (how === 'as typed') return 'It stands as it was entered, or came with the file; nobody counted apart.'
  return `Both took the count of ${names[how]}.`
}

/** "5 passages a week by no. 12 and 9 by no. 14": a name may end in a figure, so no figure follows one. */
export function countWords(count: ForBoth<string>, names: ShareNames): string {
  return `${count.a === '1' ? '1 passage' : `${count.a || '0'} passages`} a week by ${names.a} and ${count.b || '0'} by ${names.b}`
}

/** Whose count a row of a table is. */
export function countOf(household: Household, names: ShareNames): string {
  return `Count of ${names[household]}`
}

/** Who has counted in the round that is open, for one household. `again`: an earlier count stands meanwhile. */
export function openRoundWords(
  round: { readonly own: boolean; readonly other: boolean; readonly again: boolean },
  household: Household,
  names: ShareNames,
): string | undefined {
  const other = names[otherHousehold(household)]
  const meanwhile = round.again ? ' Until then the counts above stand.' : ''
  if (round.own)
    return `Your count is kept. ${capitalised(other)} has not counted${round.again ? ' again' : ''} yet; both are shown once it has.${meanwhile}`
  if (round.other)
    return `${capitalised(other)} has counted${round.again ? ' again' : ''}. Its count is shown once you have counted too.${meanwhile}`
  return undefined
}

/** How far apart two counts are in money, and what stands meanwhile. */
export function countsApartWords(found: CountsSideBySide, names: ShareNames): readonly string[] {
  const money = (minor: bigint) => moneyWords(minor, names.currency)
  const faults = [found.under.a, found.under.b].flatMap((one) => (one.ok ? [] : one.faults))
  return [
    ...(found.byUse ? [] : ['This gate is not shared by use now; the figures are what it would ask by use.']),
    ...(found.apart === undefined
      ? faults.map((fault) => faultText(fault))
      : [`In money the two counts are ${money(found.apart)} apart at this gate.`]),
    ...(found.now.ok
      ? [
          `Meanwhile it asks ${names.a} for ${money(found.now.value.a)} and ${names.b} for ${money(found.now.value.b)}.`,
        ]
      : []),
  ]
}

export function takesWords(takes: Household, by: Household, names: ShareNames): string {
  return takes === by
    ? `${capitalised(names[by])} takes its own count.`
    : `${capitalised(names[by])} takes the count of ${names[takes]}.`
}

type Takes = PassageCounts['takes']

/** The press with which a household takes one of two counts; where the other household took that one, it settles it. */
export function takeLabel(count: Household, household: Household, takes: Takes, names: ShareNames): string {
  const settles = takes[otherHousehold(household)] === count
  if (count === household) return settles ? 'Both take our count' : 'We take our own count'
  return `${settles ? 'Both' : 'We'} take the count of ${names[count]}`
}

/** What is missing after one household took a count, or both took different ones; told to one of them. */
export function takesWaitWords(takes: Takes, household: Household, names: ShareNames): string | undefined {
  const other = otherHousehold(household)
  const [own, others] = [takes[household] || undefined, takes[other] || undefined]
  if (own === undefined && others === undefined) return undefined
  if (own !== undefined && others !== undefined) return 'It is settled once both take the same one.'
  if (own === undefined) return 'It is settled once you take the same one.'
  return own === household
    ? `It waits for ${names[other]}, which has still to take your count; or take the count of ${names[other]} here.`
    : `It waits for ${names[other]}, which has still to take its own count too. Then it is settled.`
}
