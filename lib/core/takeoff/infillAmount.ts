import { compareLengths, type Millimetres } from '../amounts/length.ts'
import type { Ratio } from '../amounts/ratio.ts'
import { sumOf } from './exact.ts'
import type { InfillArea } from './infillArea.ts'
import type { Step } from './step.ts'

/** How much of a layer is needed: its amount, the unit, the length that a weight by length goes with. */
export type Amount = {
  readonly amount: Ratio
  readonly unit: string
  readonly whole: boolean
  readonly pieces: number
  readonly length: Millimetres
  readonly size: Millimetres | undefined
  readonly workings: readonly Step[]
}

/** Where every amount of infill begins: how long the fence is. */
export function lengthStep(area: InfillArea, total: Millimetres): Step {
  return {
    step: 'fence length',
    runs: area.runs.length,
    total,
    sloped: compareLengths(total, sumOf(area.flatRuns)) !== 0,
  }
}
