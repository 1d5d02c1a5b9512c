import type { Gate, Notebook, Principle, Share } from '../agreement/notebook.ts'
import type { Minor } from '../amounts/money.ts'
import type { ForBoth } from '../people/household.ts'
import type { Result } from '../result.ts'
import { type ItemShares, placesOf, shareItem } from './itemShares.ts'
import { shareUnder } from './shareUnder.ts'
import { askedBeforeItem } from './sideBySide.ts'
import { digitsOf } from './statement.ts'

/** What a gate would ask by each of two counts that differ. Money in minor units. */
export type CountsSideBySide = {
  readonly counts: ForBoth<ForBoth<string>>
  /** The gate is shared by use now, in one pot at least; else these are the figures if it were. */
  readonly byUse: boolean
  /** As it is asked until one count is taken: by halves where it goes by use. */
  readonly now: Result<ItemShares>
  /** By the count of each household. */
  readonly under: ForBoth<Result<ItemShares>>
  /** How far apart the two counts are in what household a is asked for; undefined where one of them can't be used. */
  readonly apart: Minor | undefined
}

/** Undefined where there is no such gate, or where two counts don't stand side by side at it. */
export function countsSideBySide(notebook: Notebook, id: string): CountsSideBySide | undefined {
  const place = placesOf(notebook).find((one) => one.kind === 'gate' && one.item.id === id)
  const gate = notebook.gates.find((one) => one.id === id)
  const [a, b] = [gate?.passages?.a, gate?.passages?.b]
  if (place === undefined || gate === undefined || a === undefined || b === undefined) return undefined
  const byUse = goesByUse(gate.share)
  const under = byUse ? undefined : shareUnder(gate, 'use')
  const share = under !== undefined && 'share' in under ? under.share : gate.share
  const asked = askedBeforeItem(notebook, id)
  const shareAs = (item: Gate) => shareItem({ ...place, item }, digitsOf(notebook), asked)
  const { passages: _apart, ...settled } = gate
  const by = { a: shareAs({ ...settled, share, uses: a }), b: shareAs({ ...settled, share, uses: b }) }
  const apart = by.a.ok && by.b.ok ? distance(by.a.value.a, by.b.value.a) : undefined
  return { counts: { a, b }, byUse, now: shareAs({ ...gate, share }), under: by, apart }
}

/** Whether any pot, or any part of one, is shared by use. */
export function goesByUse(share: Share): boolean {
  const pots: readonly Principle[] = 'together' in share ? [share.together] : [share.materials, share.labour]
  return pots.some((pot) =>
    pot.principle === 'difference'
      ? pot.basicShare.principle === 'use' || pot.upgradeShare.principle === 'use'
      : pot.principle === 'use',
  )
}

function distance(one: Minor, other: Minor): Minor {
  return one > other ? one - other : other - one
}
