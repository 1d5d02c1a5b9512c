import type { Station } from '../agreement/notebook.ts'
import { compareLengths, lengthOf } from '../amounts/length.ts'

/** The stations in order along the line, whatever order they were written down in; those without a place come last. */
export function stationsInOrder(stations: readonly Station[]): readonly Station[] {
  const placed = stations.filter(({ at }) => at !== '')
  return [
    ...placed.toSorted((left, right) => compareLengths(lengthOf(left.at), lengthOf(right.at))),
    ...stations.filter(({ at }) => at === ''),
  ]
}
