import {
  type Capacity,
  type ContributionKind,
  type Evidence,
  type ItemKind,
  type Notebook,
  type PrincipleName,
  principleNames,
} from '../core/agreement/notebook.ts'
import type { Household } from '../core/people/household.ts'
import type { PostKind } from '../core/takeoff/runEdges.ts'

/** What each household is called. */
export type HouseholdNames = Readonly<Record<Household, string>>

/** What a household is called wherever it is spoken of. */
export function householdName(
  notebook: { readonly households: Readonly<Record<Household, { readonly name: string }>> },
  household: Household,
): string {
  return (
    notebook.households[household].name.trim() ||
    (household === 'a' ? 'the first household' : 'the second household')
  )
}

/** What both are called. */
export function householdNames(notebook: Parameters<typeof householdName>[0]): HouseholdNames {
  return { a: householdName(notebook, 'a'), b: householdName(notebook, 'b') }
}

/** What the notebook is called. */
export function notebookTitle(notebook: Notebook): string {
  return notebook.title.trim() || 'Untitled notebook'
}

/** The principles in plain words. */
export const principleWords: Readonly<Record<PrincipleName, string>> = {
  equal: 'Halves',
  percent: 'Agreed parts',
  one: 'One household',
  length: 'By length',
  use: 'By use',
  benefit: 'By benefit',
  difference: 'Pay the difference',
  saving: 'Share the saving',
}

/** One sentence each, for whoever chooses. */
export const principleMeaning: Readonly<Record<PrincipleName, string>> = {
  equal: 'Each household is asked for half.',
  percent: 'Each household is asked for a percentage that you agree on; the two add to 100.',
  one: 'One household is asked for all of it.',
  length: 'In proportion to the length that each household fronts.',
  use: 'In proportion to the passages a week that each household makes through this gate.',
  benefit: 'In proportion to points that you give for what each household gets out of it.',
  difference:
    'A basic fence is shared one way; what is spent above it another way, often by whoever wants more.',
  saving:
    'Each household is asked for what it would have paid building alone, less half of what building together saves. It fits only two households that would each build alone: say where each price for that comes from.',
}

export const kindWords: Readonly<Record<ItemKind, string>> = {
  section: 'Section',
  gate: 'Gate',
  common: 'Common cost',
}

export const evidenceWords: Readonly<Record<Evidence, string>> = {
  survey: 'a survey by a licensed surveyor',
  marks: 'marks found on the ground',
  plan: 'a plan or deed',
  belief: 'what both households believe',
}

export const capacityWords: Readonly<Record<Capacity, string>> = {
  owner: 'owner',
  'co-owner': 'co-owner',
  trustee: 'trustee',
  executor: 'executor',
  agent: 'agent for the owner',
  tenant: 'tenant',
}

export const contributionWords: Readonly<Record<ContributionKind, string>> = {
  cash: 'Money paid to a supplier',
  material: 'Material given',
  hours: 'Hours worked',
  transfer: 'Money paid to the other household',
  refund: 'Money received back',
}

/** The same to choose from, in as many letters as a list shows on a phone. */
export const contributionChoiceWords: typeof contributionWords = {
  ...contributionWords,
  transfer: 'Paid to the other household',
}

/** Kinds of posts. */
export const postKindWords: Readonly<Record<PostKind, string>> = {
  line: 'line post',
  end: 'end post',
  corner: 'corner post',
  gate: 'gate post',
  brace: 'brace post',
}

export const tenantCaution =
  'A tenant usually can’t bind the owner of the land. Ask the owner to be a party as well.'

/** The principles that can be chosen: use only on a gate, the difference only at the top. */
export function principleNamesFor(onGate: boolean, nested: boolean): readonly PrincipleName[] {
  return principleNames.filter((name) => (name !== 'use' || onGate) && (name !== 'difference' || !nested))
}
