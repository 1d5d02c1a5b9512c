import type { Fault } from '../faults.ts'
import { type Household, households } from '../people/household.ts'
import { plannedStatement } from '../shares/statement.ts'
import { type AgreedItem, agreedItems } from './agreedItems.ts'
import type { Notebook } from './notebook.ts'

/** What stands in the way of putting the notebook up for signing. */
export type Obstacle =
  | { readonly kind: 'not agreed'; readonly item: AgreedItem; readonly missing: readonly Household[] }
  | { readonly kind: 'no party'; readonly household: Household }
  | { readonly kind: 'party unnamed'; readonly household: Household; readonly partyIndex: number }
  | { readonly kind: 'party without capacity'; readonly household: Household; readonly partyIndex: number }
  | { readonly kind: 'nothing to build' }
  | { readonly kind: 'unknown key'; readonly path: string }
  | { readonly kind: 'fault'; readonly fault: Fault }

/** Which household has marked which item, as it stands now. */
export type MarkedBy = (item: AgreedItem, household: Household) => boolean

/** Signing is possible only where this list is empty. */
export function obstaclesToSigning(
  document: { readonly [key: string]: unknown },
  notebook: Notebook,
  unknownKeys: readonly string[],
  markedBy: MarkedBy,
): readonly Obstacle[] {
  const statement = plannedStatement(notebook)
  return [
    ...unknownKeys.map((path) => ({ kind: 'unknown key' as const, path })),
    ...(statement.ok ? [] : statement.faults.map((fault) => ({ kind: 'fault' as const, fault }))),
    ...(notebook.sections.length + notebook.gates.length > 0 ? [] : [{ kind: 'nothing to build' as const }]),
    ...households.flatMap((household) => partyObstacles(notebook, household)),
    ...agreedItems(document).flatMap((item) => {
      const missing = households.filter((household) => !markedBy(item, household))
      return missing.length === 0 ? [] : [{ kind: 'not agreed' as const, item, missing }]
    }),
  ]
}

function partyObstacles(notebook: Notebook, household: Household): Obstacle[] {
  const { parties } = notebook.households[household]
  if (parties.length === 0) return [{ kind: 'no party', household }]
  return parties.flatMap((party, partyIndex) => [
    ...(party.name.trim() === '' ? [{ kind: 'party unnamed' as const, household, partyIndex }] : []),
    ...(party.capacity === '' ? [{ kind: 'party without capacity' as const, household, partyIndex }] : []),
  ])
}
