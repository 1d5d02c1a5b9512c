import type { Minor } from '../amounts/money.ts'
import { addRatios, compareRatios, multiplyRatios, type Ratio, ratio } from '../amounts/ratio.ts'
import type { ForBoth } from '../people/household.ts'
import type { ItemShares } from './itemShares.ts'
import type { PotShare } from './potShare.ts'
import type { LaidPart } from './spread.ts'

/** What a section or gate comes to with its part of the common costs that are laid on it. Minor units. */
export type WithCommonParts = {
  readonly item: ItemShares
  /** Its part of all common costs that are laid on sections and gates. */
  readonly laid: Amounts
  /** Its own cost and that part. */
  readonly sum: Amounts
}
type Amounts = ForBoth<Minor> & { readonly total: Minor }

/** `carried`: each section and gate with its part; `standing`: common costs that are shared by themselves. */
export type CommonParts = {
  readonly carried: readonly WithCommonParts[]
  readonly standing: readonly ItemShares[]
}

/**
 * Every section and gate with its part of the common costs; undefined where none is laid on them. What each household is
 * asked for of a laid pot is parted in whole minor units, by the largest remainder of its exact parts (a tie to the first
 * in the file), so that the parts of each household, and the parts in all, add to the pot's own figures.
 */
export function commonParts(items: readonly ItemShares[]): CommonParts | undefined {
  const laid = items.flatMap(potsOf).flatMap((pot) => laidOf(pot) ?? [])
  if (laid.length === 0) return undefined
  const parts = new Map<string, ForBoth<Minor>>()
  for (const { pot, over } of laid) {
    const exact = (of: (one: LaidPart) => Ratio) =>
      over.map((one) => multiplyRatios(ratio(pot.total, 1n), of(one)))
    const a = apportioned(pot.a, exact(partOfA))
    const b = apportioned(pot.b, exact(partOfB))
    for (const [at, { target }] of over.entries()) {
      const so = parts.get(target.id) ?? nothing
      parts.set(target.id, { a: so.a + (a[at] ?? 0n), b: so.b + (b[at] ?? 0n) })
    }
  }
  return {
    carried: items
      .filter(({ kind }) => kind !== 'common')
      .map((item) => withPart(item, parts.get(item.id) ?? nothing)),
    standing: items.filter(
      (item) => item.kind === 'common' && potsOf(item).every((pot) => laidOf(pot) === undefined),
    ),
  }
}

const nothing: ForBoth<Minor> = { a: 0n, b: 0n }

function withPart(item: ItemShares, { a, b }: ForBoth<Minor>): WithCommonParts {
  return {
    item,
    laid: { a, b, total: a + b },
    sum: { a: item.a + a, b: item.b + b, total: item.total + a + b },
  }
}

function potsOf({ pots }: ItemShares): readonly PotShare[] {
  return pots.form === 'together' ? [pots.together] : [pots.materials, pots.labour]
}

function laidOf(pot: PotShare): { pot: PotShare; over: readonly LaidPart[] } | undefined {
  return pot.principle.principle === 'laid' ? { pot, over: pot.principle.parts } : undefined
}

function partOfA({ part, fractionA }: LaidPart): Ratio {
  return multiplyRatios(part, fractionA)
}

function partOfB({ part, fractionA }: LaidPart): Ratio {
  return multiplyRatios(part, addRatios(ratio(1n, 1n), ratio(-fractionA.over, fractionA.under)))
}

/** Whole units that add to `amount`, each its exact part cut down or, for the largest remainders, one more. */
function apportioned(amount: bigint, exact: readonly Ratio[]): readonly bigint[] {
  const cut = exact.map(({ over, under }) => over / under)
  const left = Number(amount - cut.reduce((sum, one) => sum + one, 0n))
  const more = exact
    .map(({ over, under }, at) => ({ at, rest: { over: over % under, under } }))
    .toSorted((one, other) => compareRatios(other.rest, one.rest))
    .slice(0, left)
  const raised = new Set(more.map(({ at }) => at))
  return cut.map((one, at) => (raised.has(at) ? one + 1n : one))
}
