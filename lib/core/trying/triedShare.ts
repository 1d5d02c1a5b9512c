import type { Principle, Share } from '../agreement/notebook.ts'
import type { Household } from '../people/household.ts'

/** Amounts of money that a share holds and that can be tried: the basic fence, named upgrades, building alone. */
export const shareFields = ['basic', 'upgrade', 'aloneA', 'aloneB'] as const
export type ShareField = (typeof shareFields)[number]

export const sharePots = ['materials', 'labour', 'together'] as const
export type SharePot = (typeof sharePots)[number]

/** One amount of an item's share. `line`: which of the upgrades, from 0; 0 on the others. */
export type SharePlace = { readonly field: ShareField; readonly pot: SharePot; readonly line: number }

export type ShareAmount = SharePlace & {
  readonly text: string
  /** Of an upgrade: what is wanted, and of whom it is asked. */
  readonly what: string
  readonly household?: Household
}

/** The amounts that stand in a share, pot by pot; none under a principle that has no amounts. */
export function shareAmounts(share: Share): readonly ShareAmount[] {
  return sharePots.flatMap((pot) => {
    const principle = principleAt(share, pot)
    const at = (field: ShareField, text: string) => ({ field, pot, line: 0, text, what: '' })
    if (principle?.principle === 'saving')
      return [at('aloneA', principle.aloneA), at('aloneB', principle.aloneB)]
    if (principle?.principle !== 'difference') return []
    return [
      at('basic', principle.basic),
      ...principle.upgrades.map(({ what, amount, household }, line) => ({
        field: 'upgrade' as const,
        pot,
        line,
        text: amount,
        what,
        household,
      })),
    ]
  })
}

/** The share with these amounts in place of its own; one that it has no place for is left out. */
export function withShareAmounts(
  share: Share,
  amounts: readonly (SharePlace & { readonly text: string })[],
): Share {
  const put = (pot: SharePot, principle: Principle) =>
    amounts.filter((one) => one.pot === pot).reduce(withAmount, principle)
  return 'together' in share
    ? { together: put('together', share.together) }
    : { materials: put('materials', share.materials), labour: put('labour', share.labour) }
}

function withAmount(
  principle: Principle,
  { field, line, text }: SharePlace & { readonly text: string },
): Principle {
  if (principle.principle === 'saving' && (field === 'aloneA' || field === 'aloneB'))
    return { ...principle, [field]: text }
  if (principle.principle !== 'difference') return principle
  if (field === 'basic') return { ...principle, basic: text }
  if (field !== 'upgrade' || principle.upgrades[line] === undefined) return principle
  return {
    ...principle,
    upgrades: principle.upgrades.map((one, at) => (at === line ? { ...one, amount: text } : one)),
  }
}

function principleAt(share: Share, pot: SharePot): Principle | undefined {
  if ('together' in share) return pot === 'together' ? share.together : undefined
  return pot === 'together' ? undefined : share[pot]
}
