import type { Quantity } from './quantity.ts'

/** Weight of the fence, in kilograms. */
export type Weights = {
  readonly kilograms: number
  readonly reclaimedKilograms: number
  /** Reclaimed over all that has a weight, 0 to 1; 0 where nothing has one. */
  readonly reclaimedShare: number
  /** Quantities whose weight is not known and which are in neither sum. */
  readonly unknown: number
}

/** Weight by line added up, and the share of it that is reclaimed. */
export function weightsOf(quantities: readonly Quantity[]): Weights {
  let [kilograms, reclaimedKilograms, unknown] = [0, 0, 0]
  for (const quantity of quantities) {
    if (quantity.kilograms === undefined) {
      unknown += 1
      continue
    }
    kilograms += quantity.kilograms
    if (quantity.reclaimed) reclaimedKilograms += quantity.kilograms
  }
  return {
    kilograms,
    reclaimedKilograms,
    reclaimedShare: kilograms === 0 ? 0 : reclaimedKilograms / kilograms,
    unknown,
  }
}
