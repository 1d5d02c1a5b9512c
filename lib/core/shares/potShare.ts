import type { Principle, SimplePrinciple } from '../agreement/notebook.ts'
import { minorUnits } from '../amounts/money.ts'
import { addRatios, half, type Ratio, ratio } from '../amounts/ratio.ts'
import { type Split, splitExactly } from '../amounts/split.ts'
import type { Fault } from '../faults.ts'
import type { ForBoth } from '../people/household.ts'
import { held, type Result, refused } from '../result.ts'
import type { ShareContext } from './context.ts'
import { exactShare } from './exactShare.ts'
import type { Laid } from './spread.ts'

/**
 * One pot that was split by one principle: the whole pot, or under `difference` the basic fence, each upgrade that one
 * household wants, and what lies above all of them.
 */
export type PotPart = PartName & {
  readonly principle: SimplePrinciple | Laid
  readonly pot: bigint
  /** a's exact share before rounding. */
  readonly exactA: Ratio
} & Split

type PartName =
  | { readonly part: 'whole' | 'basic' | 'upgrade' }
  /** `what` as typed, and the `amount` it was put at in minor units: `pot` is less where the whole does not reach it. */
  | { readonly part: 'named upgrade'; readonly what: string; readonly amount: bigint }

/** A shared pot: amounts that add to the total, and the workings that lead to them. All in minor units. */
export type PotShare = {
  readonly total: bigint
  readonly a: bigint
  readonly b: bigint
  readonly principle: Principle | Laid
  readonly parts: readonly PotPart[]
  /** a's exact, unrounded fraction of the pot; one half where the pot is zero. Hours are asked by it. */
  readonly fractionA: Ratio
}

/**
 * Shares one pot. `difference` is several pots, one after the other: the basic fence, each upgrade, and the rest above
 * them; each is rounded by rule 2 of the file format and knows those before it.
 *
 * @param askedSoFar what each household was asked for before this pot, for the odd unit on a tie
 */
export function sharePot(
  principle: Principle,
  total: bigint,
  context: ShareContext,
  askedSoFar: ForBoth<bigint>,
): Result<PotShare> {
  const parts: PotPart[] = []
  const faults: Fault[] = []
  let asked = askedSoFar
  for (const piece of pieces(principle, total, context)) {
    const exact = exactShare(piece.principle, piece.pot, { ...context, path: piece.path })
    if (!exact.ok) {
      faults.push(...exact.faults)
      continue
    }
    const split = splitExactly(piece.pot, exact.value, asked)
    asked = { a: asked.a + split.a, b: asked.b + split.b }
    const { path: _inTheFile, ...part } = piece
    parts.push({ ...part, exactA: exact.value, ...split })
  }
  if (faults.length > 0) return refused(...faults)
  const exactA = parts.reduce((sum, part) => addRatios(sum, part.exactA), ratio(0n, 1n))
  return held({
    total,
    a: asked.a - askedSoFar.a,
    b: asked.b - askedSoFar.b,
    principle,
    parts,
    fractionA: total === 0n ? half : ratio(exactA.over, exactA.under * total),
  })
}

type Piece = PartName & { principle: SimplePrinciple; pot: bigint; path: string }

function pieces(principle: Principle, total: bigint, context: ShareContext): readonly Piece[] {
  const { digits, path } = context
  if (principle.principle !== 'difference') return [{ part: 'whole', principle, pot: total, path }]
  let rest = total
  const taken = (most: bigint) => {
    const pot = rest < most ? rest : most
    rest -= pot
    return pot
  }
  const basic: Piece = {
    part: 'basic',
    principle: principle.basicShare,
    pot: taken(minorUnits(principle.basic, digits)),
    path: `${path}.basicShare`,
  }
  const named = principle.upgrades.map(({ what, amount: typed, household }, index): Piece => {
    const amount = minorUnits(typed, digits)
    return {
      part: 'named upgrade',
      what,
      amount,
      principle: { principle: 'one', household },
      pot: taken(amount),
      path: `${path}.upgrades[${index}]`,
    }
  })
  const above: Piece = {
    part: 'upgrade',
    principle: principle.upgradeShare,
    pot: rest,
    path: `${path}.upgradeShare`,
  }
  return [basic, ...named, above]
}
