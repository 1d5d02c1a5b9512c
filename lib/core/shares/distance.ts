import type { ItemKind, Notebook } from '../agreement/notebook.ts'
import type { Minor } from '../amounts/money.ts'
import { ratio } from '../amounts/ratio.ts'
import { roundHalfUp } from '../amounts/round.ts'
import { type Split, splitExactly } from '../amounts/split.ts'
import { assert } from '../assert.ts'
import type { ForBoth } from '../people/household.ts'
import { held, type Result } from '../result.ts'
import { type DistanceCause, plansBetween } from './plansBetween.ts'
import { plannedStatement, type SharedItems, shareItems } from './statement.ts'

/** What one kind of difference moves; two or more where a plan between them can't be shared. */
export type DistanceStep = { readonly causes: readonly DistanceCause[]; readonly moves: ForBoth<Minor> }

/** One item under two plans. `moves` is what it asks for in the second less what it asks for in the first. */
export type ItemDistance = {
  readonly id: string
  readonly kind: ItemKind
  readonly from: ForBoth<Minor>
  readonly to: ForBoth<Minor>
  readonly moves: ForBoth<Minor>
  /** They add to `moves`, exactly. */
  readonly steps: readonly DistanceStep[]
}

/** How far two plans are apart. All amounts in minor units. */
export type Distance = {
  /** After caps. */
  readonly from: ForBoth<Minor>
  readonly to: ForBoth<Minor>
  readonly moves: ForBoth<Minor>
  /** What the items' moves add to, by kind of difference. */
  readonly steps: readonly DistanceStep[]
  /** What the caps move besides: with the steps it adds to `moves`. */
  readonly caps: ForBoth<Minor>
  /** Items that ask for something else, in the order of the second plan's file. */
  readonly items: readonly ItemDistance[]
  /** Halfway between the two, after caps. */
  readonly middle: Split
}

const nothing = { a: 0n, b: 0n }

/**
 * How far two plans of one notebook are apart, for each item and for the whole, and where the distance comes from: one
 * plan is turned into the other kind by kind (`plansBetween`), and shared anew with the same rules after each. An odd unit
 * that only falls to the other household is part of the step in which it does. Refused with the faults of the first plan
 * that can't be shared.
 */
export function distanceBetween(first: Notebook, second: Notebook): Result<Distance> {
  const [from, to] = [plannedStatement(first), plannedStatement(second)]
  if (!from.ok) return from
  if (!to.ok) return to
  const stages = stagesBetween(first, second)
  const places = [...new Set([...to.value.items, ...from.value.items].map(({ id }) => id))]
  const items = places.flatMap((id) => itemDistance(id, stages) ?? [])
  const steps = stages.slice(1).map(({ causes }, at) => ({
    causes,
    moves: sum(items.map((item) => item.steps[at]?.moves ?? nothing)),
  }))
  const [asked, would] = [from.value.asked, to.value.asked]
  const moves = less(would, asked)
  return held({
    from: { a: asked.a, b: asked.b },
    to: { a: would.a, b: would.b },
    moves,
    steps,
    caps: less(moves, sum(steps.map((step) => step.moves))),
    items,
    middle: middleOf(asked, would),
  })
}

type Stage = { readonly causes: readonly DistanceCause[]; readonly items: SharedItems['items'] }

/** The first plan, shared, then each on the way that can be; one that can't is passed over and its cause joins the next. */
function stagesBetween(first: Notebook, second: Notebook): readonly Stage[] {
  const stages: Stage[] = [{ causes: [], items: shareItems(first).items }]
  let waiting: readonly DistanceCause[] = []
  for (const { cause, plan } of plansBetween(first, second)) {
    const shared = shareItems(plan)
    waiting = [...waiting, cause]
    if (shared.faults.length > 0) continue
    stages.push({ causes: waiting, items: shared.items })
    waiting = []
  }
  assert(waiting.length === 0, 'the last plan is the second itself, which can be shared')
  return stages
}

function itemDistance(id: string, stages: readonly Stage[]): ItemDistance | undefined {
  const asks = stages.map(({ items }) => items.find((item) => item.id === id))
  const amounts = asks.map((item) => (item === undefined ? nothing : { a: item.a, b: item.b }))
  const steps = stages.slice(1).map(({ causes }, at) => ({
    causes,
    moves: less(amounts[at + 1] ?? nothing, amounts[at] ?? nothing),
  }))
  if (steps.every(({ moves }) => moves.a === 0n && moves.b === 0n)) return undefined
  const [from, to] = [amounts[0] ?? nothing, amounts.at(-1) ?? nothing]
  const kind = asks.find((item) => item !== undefined)?.kind
  assert(kind !== undefined, 'an item that is asked for stands in one of the plans')
  return { id, kind, from, to, moves: less(to, from), steps }
}

/** Halfway between what two plans ask for; the total halfway is rounded up, the odd unit falls as in any split. */
function middleOf(one: ForBoth<Minor>, other: ForBoth<Minor>): Split {
  const total = roundHalfUp(one.a + one.b + other.a + other.b, 2n)
  return splitExactly(total, ratio(one.a + other.a, 2n), nothing)
}

function less(left: ForBoth<Minor>, right: ForBoth<Minor>): ForBoth<Minor> {
  return { a: left.a - right.a, b: left.b - right.b }
}

function sum(amounts: readonly ForBoth<Minor>[]): ForBoth<Minor> {
  return amounts.reduce((all, one) => ({ a: all.a + one.a, b: all.b + one.b }), nothing)
}
