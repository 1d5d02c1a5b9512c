import type { Ratio } from '../amounts/ratio.ts'
import type { FinishSpec } from './buildUp.ts'
import { divideRatios, fromMillimetres, multiplied, nothing, numberOf } from './exact.ts'
import type { Found } from './finding.ts'
import { countOr } from './neededLength.ts'
import type { ItemAt } from './postLayout.ts'
import { areaIn, fromNumber, lengthIn, measuredQuantity, type Quantity } from './quantity.ts'
import type { Step } from './step.ts'

/** What there is to finish: surfaces in mm², and length in mm. */
export type Surfaces = {
  /** Outside of posts above the ground, rails, frames. */
  readonly members: number
  /** One side of the infill; a finish goes on both. */
  readonly infill: number
  /** Along the fence, for what is bought by length. */
  readonly length: number
}

/** Paint, oil and the like: coats × surface ÷ what one unit covers. */
export function finishQuantities(
  item: ItemAt,
  finishes: readonly FinishSpec[],
  surfaces: Surfaces,
  found: Found,
): readonly Quantity[] {
  return finishes.flatMap((finish, index): Quantity[] => {
    const path = `${item.list}[${item.index}].buildUp.finishes[${index}]`
    if (finish.coverage === '' || finish.coverageUnit === '') {
      found(`${path}.${finish.coverage === '' ? 'coverage' : 'coverageUnit'}`, { kind: 'missing' })
      return []
    }
    const coverage = numberOf(finish.coverage)
    if (coverage.over === 0n) {
      found(`${path}.coverage`, { kind: 'zero', typed: finish.coverage })
      return []
    }
    const { amount, steps } = finished(finish, surfaces)
    const coats = countOr(finish.coats, 1)
    const needed = divideRatios(multiplied(amount, { over: BigInt(coats), under: 1n }), coverage)
    if (needed.over === 0n) return []
    return [
      {
        item,
        part: `finish ${index + 1}`,
        name: { kind: 'finish', what: finish.what },
        quantity: measuredQuantity(needed),
        unit: finish.unit || 'each',
        kilograms: undefined,
        reclaimed: false,
        workings: [
          ...steps,
          { step: 'coats', coats, coverage: finish.coverage, coverageUnit: finish.coverageUnit, amount },
        ],
      },
    ]
  })
}

function finished(finish: FinishSpec, surfaces: Surfaces): { amount: Ratio; steps: Step[] } {
  if (finish.coverageUnit === 'ft' || finish.coverageUnit === 'm') {
    const total = fromMillimetres(surfaces.length)
    return { amount: lengthIn(finish.coverageUnit, total), steps: [{ step: 'length finished', total }] }
  }
  const unit = finish.coverageUnit === 'sq m' ? 'sq m' : 'sq ft'
  const steps: Step[] = []
  let total = 0
  if (finish.of !== 'infill') {
    steps.push({ step: 'surface', of: 'members', squareMillimetres: surfaces.members })
    total += surfaces.members
  }
  if (finish.of === 'infill' || finish.of === 'both') {
    steps.push({ step: 'surface', of: 'infill', squareMillimetres: 2 * surfaces.infill })
    total += 2 * surfaces.infill
  }
  return { amount: total === 0 ? nothing : areaIn(unit, fromNumber(total)), steps }
}

/** Outside surface of members in mm²: the way around × length, of each. */
export function surfaceOf(members: readonly { readonly around: number; readonly length: number }[]): number {
  return members.reduce((sum, { around, length }) => sum + around * length, 0)
}
