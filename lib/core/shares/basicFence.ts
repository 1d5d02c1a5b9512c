import type { Difference, Principle, Section, Share, SimplePrinciple } from '../agreement/notebook.ts'
import { type Minor, minorUnits, moneyText } from '../amounts/money.ts'
import { sumLines } from './itemShares.ts'

/** What the basic fence of a section comes to, in minor units. */
export type BasicFenceSums = { readonly materials: Minor; readonly labour: Minor; readonly both: Minor }

type Lines = Pick<Section, 'materials' | 'labour'>

/**
 * The sums of a basic fence's lines, each rounded as any line is: credits are taken off, gifts are in no sum. A sum may
 * lie below zero, where credits exceed the cost; such a sum can be no basic cost (`heldAgainst`).
 */
export function basicFenceSums(lines: Lines, digits: number): BasicFenceSums {
  const { materials, labour } = sumLines(lines, digits)
  return { materials, labour, both: materials + labour }
}

/** Which pots are held against the basic fence: one of the two, each by its own sum, or both as one pot. */
export const heldPots = ['apart', 'together', 'materials', 'labour'] as const
export type HeldPots = (typeof heldPots)[number]

/**
 * Who is asked for what lies above the basic fence: one household, each for half, or, in a pot that pays the difference
 * already, as it stands there.
 */
export const aboveChoices = ['as it stands', 'a', 'b', 'halves'] as const
export type AboveChoice = (typeof aboveChoices)[number]

/** Why a share can't be held against the basic fence so. */
export type NotHeld = 'below zero' | 'upgrades of both' | 'who is asked'

/**
 * A share as it is once it pays the difference to the basic fence, whose sums become `basic`. What stands in a pot that
 * pays the difference already (how the basic fence is shared, named upgrades) stays; any other principle becomes that of
 * the basic fence, but `saving`, whose figures were given for the whole: halves then. Named upgrades of both pots
 * together can't be told apart; upgrades of two pots that become one stay, materials first.
 */
export function heldAgainst(
  share: Share,
  pots: HeldPots,
  above: AboveChoice,
  sums: BasicFenceSums,
  digits: number,
): { readonly share: Share } | { readonly not: NotHeld } {
  const wanted: readonly Minor[] = {
    apart: [sums.materials, sums.labour],
    together: [sums.both],
    materials: [sums.materials],
    labour: [sums.labour],
  }[pots]
  if (wanted.some((sum) => sum < 0n)) return { not: 'below zero' }
  const hold = (principle: Principle, sum: Minor) => difference(principle, moneyText(sum, digits), above)
  if (pots === 'together') {
    const together = hold('together' in share ? share.together : asOnePot(share), sums.both)
    return together === undefined ? { not: 'who is asked' } : { share: { together } }
  }
  if ('together' in share && isDifference(share.together) && share.together.upgrades.length > 0)
    return { not: 'upgrades of both' }
  // The basic cost of both pots serves neither alone: a pot that is not held goes by how the basic fence was shared.
  const each =
    'together' in share
      ? { materials: basisOf(share.together), labour: basisOf(share.together) }
      : { materials: share.materials, labour: share.labour }
  const from = 'together' in share ? { materials: share.together, labour: share.together } : share
  const materials = pots === 'labour' ? each.materials : hold(from.materials, sums.materials)
  const labour = pots === 'materials' ? each.labour : hold(from.labour, sums.labour)
  return materials === undefined || labour === undefined
    ? { not: 'who is asked' }
    : { share: { materials, labour } }
}

/** A pot that pays the difference, with its basic cost as typed and as the basic fence comes to. In minor units. */
export type HeldPot = {
  readonly pot: 'materials' | 'labour' | 'together'
  readonly typed: Minor
  readonly sum: Minor
}

/** The pots of a section that pay the difference, against its basic fence; none where it has no basic fence. */
export function heldPotsOf(
  section: Pick<Section, 'share' | 'basicFence'>,
  digits: number,
): readonly HeldPot[] {
  const { share, basicFence } = section
  if (basicFence === undefined) return []
  const sums = basicFenceSums(basicFence, digits)
  const held = (pot: HeldPot['pot'], principle: Principle, sum: Minor): HeldPot[] =>
    isDifference(principle) ? [{ pot, typed: minorUnits(principle.basic, digits), sum }] : []
  return 'together' in share
    ? held('together', share.together, sums.both)
    : [...held('materials', share.materials, sums.materials), ...held('labour', share.labour, sums.labour)]
}

function difference(principle: Principle, basic: string, above: AboveChoice): Difference | undefined {
  const upgradeShare = upgradeShareOf(principle, above)
  if (upgradeShare === undefined) return undefined
  return isDifference(principle)
    ? { ...principle, basic, upgradeShare }
    : { principle: 'difference', basic, basicShare: basisOf(principle), upgradeShare, upgrades: [] }
}

function upgradeShareOf(principle: Principle, above: AboveChoice): SimplePrinciple | undefined {
  if (above === 'halves') return { principle: 'equal' }
  if (above === 'a' || above === 'b') return { principle: 'one', household: above }
  return isDifference(principle) ? principle.upgradeShare : undefined
}

/** How the basic fence is shared where a pot was shared so. */
function basisOf(principle: Principle): SimplePrinciple {
  if (isDifference(principle)) return principle.basicShare
  return principle.principle === 'saving' ? { principle: 'equal' } : principle
}

function asOnePot({ materials, labour }: Exclude<Share, { together: Principle }>): Principle {
  const [first, second] = [materials, labour].filter(isDifference)
  if (first === undefined) return materials
  return { ...first, upgrades: [...first.upgrades, ...(second?.upgrades ?? [])] }
}

/** Whether a pot of the share pays the difference to a basic cost. */
export function paysDifference(share: Share): boolean {
  return ('together' in share ? [share.together] : [share.materials, share.labour]).some(isDifference)
}

function isDifference(principle: Principle): principle is Difference {
  return principle.principle === 'difference'
}
