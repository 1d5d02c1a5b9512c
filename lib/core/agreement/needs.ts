import type { Household } from '../people/household.ts'
import { type MetNeed, type NeedKind, needKinds } from './notebook.ts'

export const needWeights = ['must', 'like'] as const
/** How much a need matters: the fence must meet it, or the household would like it. */
export type NeedWeight = (typeof needWeights)[number]

/** One need of a household: one of `needKinds`, or a need in words of its own. */
export type Need = {
  readonly need: string
  readonly weight: NeedWeight
  /** What the household adds to it; empty on a need that is in its own words already. */
  readonly words: string
}

/** A need and the places, in the list of sections, of those that meet it; none: it is open. */
export type MetBy = Need & { readonly sections: readonly number[] }

type MeetingSection = { readonly meets: readonly MetNeed[] }

/** Which section meets which need of a household, in the household's own order. */
export function needsMet(
  sections: readonly MeetingSection[],
  household: Household,
  needs: readonly Need[],
): readonly MetBy[] {
  return needs.map((need) => ({
    ...need,
    sections: sections.flatMap(({ meets }, index) =>
      meets.some((met) => met.household === household && met.need === need.need) ? [index] : [],
    ),
  }))
}

export function needKindOf(need: string): NeedKind | undefined {
  return needKinds.find((kind) => kind === need)
}
