import type { Notebook } from '../../../lib/core/agreement/notebook.ts'
import type { ForBoth, Household } from '../../../lib/core/people/household.ts'
import { held, type Result } from '../../../lib/core/result.ts'
import { type Distance, distanceBetween } from '../../../lib/core/shares/distance.ts'
import type { Proposal, ProposedItem } from '../../../lib/store/proposals.ts'
import type { Opened } from './opened.ts'
import { proposedPlan, sinceProposed } from './proposedPlan.ts'

/** Proposals that have no reply yet. */
export function standingProposals(proposals: readonly Proposal[]): readonly Proposal[] {
  return proposals.filter(({ reply }) => reply === undefined)
}

/**
 * What a household holds, oldest first: its standing proposals, and what it proposed that was answered with another while
 * that answer stands, unless it has proposed something newer for the same items.
 */
export function heldProposals(proposals: readonly Proposal[], household: Household): readonly Proposal[] {
  const standing = standingProposals(proposals)
  const answered = new Set(standing.flatMap(({ answers }) => answers ?? []))
  const own = proposals.filter((one) => one.household === household)
  return own.filter((one) => {
    if (one.reply === undefined) return true
    const newer = own.some((other) => other.id > one.id && other.reply === undefined && touch(other, one))
    return one.reply.kind === 'answered' && answered.has(one.id) && !newer
  })
}

function touch(one: Proposal, other: Proposal): boolean {
  return one.items.some(({ id }) => other.items.some((item) => item.id === id))
}

/** A household's position: the plan with what it holds, in as far as the items are still what they were. */
export type Position = {
  readonly holds: readonly Proposal[]
  readonly items: readonly ProposedItem[]
  readonly plan: Result<Notebook>
}

function positionOf(
  { document, inForce }: Pick<Opened, 'document' | 'inForce'>,
  proposals: readonly Proposal[],
  household: Household,
): Position {
  const holds = heldProposals(proposals, household)
  const newest = new Map(holds.flatMap(({ items }) => items).map((item) => [item.id, item]))
  const items = [...newest.values()].filter((item) => sinceProposed(document, item) === 'as it was')
  const plan = proposedPlan(document, items, inForce.caps)
  return { holds, items, plan: plan.ok ? held(plan.value.inForce) : plan }
}

export type Positions = ForBoth<Position>

export function positionsOf(
  opened: Pick<Opened, 'document' | 'inForce'>,
  proposals: readonly Proposal[],
): Positions {
  return { a: positionOf(opened, proposals, 'a'), b: positionOf(opened, proposals, 'b') }
}

/** Two positions held against each other: from the plan to the only one there is, else from what a holds to what b does. */
export function positionsApart(positions: Positions): {
  readonly ends: readonly [Household, Household]
  readonly apart: Result<Distance>
} {
  const ends = positions.b.holds.length === 0 ? (['b', 'a'] as const) : (['a', 'b'] as const)
  const [from, to] = [positions[ends[0]].plan, positions[ends[1]].plan]
  if (!from.ok) return { ends, apart: from }
  return { ends, apart: to.ok ? distanceBetween(from.value, to.value) : to }
}

/**
 * The number of the proposal that ended one: the one that answers it, or its own household's that took its place at the
 * same moment; undefined where none did.
 */
export function endedBy(proposals: readonly Proposal[], id: number): number | undefined {
  const ended = proposals.find((one) => one.id === id)
  if (ended?.reply === undefined) return undefined
  const { kind, at } = ended.reply
  if (kind === 'answered') return proposals.find(({ answers }) => answers === id)?.number
  if (kind !== 'withdrawn') return undefined
  const same = (moment: Date | undefined) => moment?.getTime() === at.getTime()
  return proposals.find(
    (one) => one.id !== id && (same(one.at) || (one.reply?.kind === 'accepted' && same(one.reply.at))),
  )?.number
}
