import type { Principle, SimplePrinciple } from '../agreement/notebook.ts'
import { minorUnits } from '../amounts/money.ts'
import { addRatios, half, type Ratio, ratio } from '../amounts/ratio.ts'
import { type Split, splitExactly } from '../amounts/split.ts'
import type { Fault } from '../faults.ts'
import type { ForBoth } from '../people/household.ts'
import { held, type Result, refused } from '../result.ts'
import type { ShareContext } from './context.ts'
import { exactShare } from './exactShare.ts'

/** One pot that was split by one principle: the whole pot, or under `difference` its basic part or its upgrade. */
export type PotPart = {
  readonly part: 'whole' | 'basic' | 'upgrade'
  readonly principle: SimplePrinciple
  readonly pot: bigint
  /** a's exact share before rounding. */
  readonly exactA: Ratio
} & Split

/** A shared pot: amounts that add to the total, and the workings that lead to them. All in minor units. */
export type PotShare = {
  readonly total: bigint
  readonly a: bigint
  readonly b: bigint
  readonly principle: Principle
  readonly parts: readonly PotPart[]
  /** a's exact, unrounded fraction of the pot; one half where the pot is zero. Hours are asked by it. */
  readonly fractionA: Ratio
}

/**
 * Shares one pot. `difference` is two pots, each rounded by rule 2 of the file format, the second knowing the first.
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
    parts.push({
      part: piece.part,
      principle: piece.principle,
      pot: piece.pot,
      exactA: exact.value,
      ...split,
    })
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

type Piece = { part: PotPart['part']; principle: SimplePrinciple; pot: bigint; path: string }

function pieces(principle: Principle, total: bigint, context: ShareContext): readonly Piece[] {
  if (principle.principle !== 'difference')
    return [{ part: 'whole', principle, pot: total, path: context.path }]
  const basic = minorUnits(principle.basic, context.digits)
  const basicPot = total < basic ? total : basic
  return [
    { part: 'basic', principle: principle.basicShare, pot: basicPot, path: `${context.path}.basicShare` },
    {
      part: 'upgrade',
      principle: principle.upgradeShare,
      pot: total - basicPot,
      path: `${context.path}.upgradeShare`,
    },
  ]
}
