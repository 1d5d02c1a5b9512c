import type { Notebook } from '../../../lib/core/agreement/notebook.ts'
import type { ForBoth, Household } from '../../../lib/core/people/household.ts'
import { held, type Result } from '../../../lib/core/result.ts'
import { type Distance, distanceBetween } from '../../../lib/core/shares/distance.ts'
import type { Proposal } from '../../../lib/store/proposals.ts'
import type { Opened } from './opened.ts'
import { isFitting, type ProposedNow, proposedNow } from './proposedNow.ts'
import { proposedPlan } from './proposedPlan.ts'

/** Proposals that have no reply yet. */
export function standingProposals(proposals: readonly Proposal[]): readonly Proposal[] {
  return proposals.filter(({ reply }) => reply === undefined)
}

/**
 * What a household holds, oldest first: its standing proposals, and what it proposed that was answered with another while
 * that answer stands, unless it has made a later one for an item of it, whatever became of that.
 */
export function heldProposals(proposals: readonly Proposal[], household: Household): readonly Proposal[] {
  const standing = standingProposals(proposals)
  const answered = new Set(standing.flatMap(({ answers }) => answers ?? []))
  const own = proposals.filter((one) => one.household === household)
  return own.filter((one) => {
    if (one.reply === undefined) return true
    const newer = own.some((other) => other.id > one.id && touch(other, one))
    return one.reply.kind === 'answered' && answered.has(one.id) && !newer
  })
}

function touch(one: Proposal, other: Proposal): boolean {
  return one.items.some(({ id }) => other.items.some((item) => item.id === id))
}

/** A household's position: the plan with what it holds, worked out on the items as they are now. */
export type Position = {
  readonly holds: readonly Proposal[]
  /** What it proposes that can still be taken over, on the items as they are now; of an item the newest. */
  readonly items: readonly Held[]
  /** What it proposes that can't: its item is gone, or what is proposed was itself changed since. */
  readonly apart: readonly Held[]
  /** Undefined where it holds nothing, or something that can't be taken over: then no figure is its position. */
  readonly plan: Result<Notebook> | undefined
}

/** What a household holds for one item, and in which proposal. */
export type Held = { readonly proposal: Proposal; readonly found: ProposedNow }

function positionOf(
  { document, inForce }: Pick<Opened, 'document' | 'inForce'>,
  proposals: readonly Proposal[],
  household: Household,
): Position {
  const holds = heldProposals(proposals, household)
  const newest = new Map(
    holds.flatMap((proposal) => proposal.items.map((item) => [item.id, { proposal, item }] as const)),
  )
  const all = [...newest.values()].map(({ proposal, item }) => ({
    proposal,
    found: proposedNow(document, item),
  }))
  const apart = all.filter(({ found }) => !isFitting(found))
  const plan =
    all.length === 0 || apart.length > 0
      ? undefined
      : proposedPlan(document, all.map(({ found }) => found).filter(isFitting), inForce.caps)
  return {
    holds,
    items: all.filter(({ found }) => isFitting(found)),
    apart,
    plan: plan?.ok ? held(plan.value.inForce) : plan,
  }
}

export type Positions = ForBoth<Position>

export function positionsOf(
  opened: Pick<Opened, 'document' | 'inForce'>,
  proposals: readonly Proposal[],
): Positions {
  return { a: positionOf(opened, proposals, 'a'), b: positionOf(opened, proposals, 'b') }
}

/** What is held against what: a household's position, or the plan as it stands. */
export type End = Household | 'plan'

/**
 * Two positions held against each other: from what a holds to what b does, or from the plan to the only one that can be
 * worked out; undefined where none can.
 */
export function positionsApart(
  { inForce }: Pick<Opened, 'inForce'>,
  positions: Positions,
): { readonly ends: readonly [End, Household]; readonly apart: Result<Distance> } | undefined {
  const known = (['a', 'b'] as const).filter((household) => positions[household].plan !== undefined)
  const to = known.at(-1)
  if (to === undefined) return undefined
  const from: End = known.length === 2 ? 'a' : 'plan'
  const [first, second] = [planAt(inForce, positions, from), planAt(inForce, positions, to)]
  if (!first.ok) return { ends: [from, to], apart: first }
  return { ends: [from, to], apart: second.ok ? distanceBetween(first.value, second.value) : second }
}

function planAt(inForce: Notebook, positions: Positions, end: End): Result<Notebook> {
  return (end === 'plan' ? undefined : positions[end].plan) ?? held(inForce)
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
