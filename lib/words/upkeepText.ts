import type { Keeper, Notebook, upkeepIntervals } from '../core/agreement/notebook.ts'
import { householdName } from './labels.ts'

/** How often something comes round. */
export const intervalWords: Readonly<Record<(typeof upkeepIntervals)[number], string>> = {
  month: 'every month',
  quarter: 'every three months',
  year: 'every year',
  '2 years': 'every two years',
  '5 years': 'every five years',
}

/** Who owns a part of the fence and who keeps it, inside a sentence: "owned by no. 12, kept by both households". */
export function ownedAndKept(
  notebook: Pick<Notebook, 'households'>,
  { owner, upkeep }: { readonly owner: Keeper; readonly upkeep: Keeper },
): string {
  if (owner === '' && upkeep === '') return 'it is not said who owns it and who keeps it'
  if (owner === '') return `kept by ${keeperName(notebook, upkeep)}; it is not said who owns it`
  if (upkeep === '') return `owned by ${keeperName(notebook, owner)}; it is not said who keeps it`
  return `owned by ${keeperName(notebook, owner)}, kept by ${keeperName(notebook, upkeep)}`
}

/** Whose it is to see to. */
export function keeperName(notebook: Pick<Notebook, 'households'>, keeper: Keeper): string {
  if (keeper === '') return 'not said'
  return keeper === 'both' ? 'both households' : householdName(notebook, keeper)
}
