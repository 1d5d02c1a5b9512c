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

/** Whose it is to see to. */
export function keeperName(notebook: Pick<Notebook, 'households'>, keeper: Keeper): string {
  if (keeper === '') return 'not said'
  return keeper === 'both' ? 'both households' : householdName(notebook, keeper)
}
