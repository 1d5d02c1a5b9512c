import { describe, expect, test } from 'vitest'
import { lengthsBound } from '../../lib/cutting/bounds.ts'
import { cutPlan } from '../../lib/cutting/cutPlan.ts'
import type { CutRequest } from '../../lib/cutting/cutRequest.ts'
import { cuttingProblem } from '../../lib/cutting/cuttingProblem.ts'
import { firstFitPacking } from '../../lib/cutting/heuristics.ts'
import { standingOf } from '../../lib/cutting/packing.ts'
import { leastByArcFlow } from '../cutting/leastByArcFlow.ts'
import { everyPattern, leastByEveryPattern } from '../cutting/leastByEveryPattern.ts'
import { planOffences } from '../cutting/planOffences.ts'

type Instance = {
  readonly name: string
  readonly length: number
  readonly pieces: readonly (readonly [length: number, count: number])[]
  readonly least: number
  readonly firstFitDecreasing: number
}

const instances: readonly Instance[] = [
  {
    // Found on a public page on the cutting-stock problem, with its optimum of 73 and waste of 0.401 %.
    name: 'paper rolls of 5600',
    length: 5600,
    pieces: [
      [1380, 22],
      [1520, 25],
      [1560, 12],
      [1710, 14],
      [1820, 18],
      [1880, 18],
      [1930, 20],
      [2000, 10],
      [2050, 12],
      [2100, 14],
      [2140, 16],
      [2150, 18],
      [2200, 20],
    ],
    least: 73,
    firstFitDecreasing: 82,
  },
  {
    // Chvátal, Linear Programming (1983), p. 195: widths and demands found in public texts; 453 recomputed.
    name: 'Chvátal’s rolls of 100',
    length: 100,
    pieces: [
      [45, 97],
      [36, 610],
      [31, 395],
      [14, 211],
    ],
    least: 453,
    firstFitDecreasing: 485,
  },
  {
    // From memory of a textbook, in halves; 44 recomputed.
    name: 'rolls of 91',
    length: 910,
    pieces: [
      [255, 78],
      [225, 40],
      [200, 30],
      [150, 30],
    ],
    least: 44,
    firstFitDecreasing: 49,
  },
  {
    // Our own: 24 ft of rail for a fence, in inches; 7 recomputed.
    name: 'rails of 288 in',
    length: 288,
    pieces: [
      [96, 5],
      [78, 8],
      [60, 9],
      [42, 7],
    ],
    least: 7,
    firstFitDecreasing: 7,
  },
]

const requestOf = ({ length, pieces }: Instance): CutRequest => ({
  pieces: pieces.map(([piece, count]) => ({ label: `${piece}`, length: piece, count })),
  stock: [{ label: 'roll', length, bought: true }],
  kerf: 0,
})

describe.each(instances)('$name', (instance) => {
  const request = requestOf(instance)

  test('takes $least lengths, proven least', async () => {
    const plan = await cutPlan(request)
    expect(planOffences(request, plan)).toEqual([])
    expect(plan.boughtLength).toBe(instance.least * instance.length)
    expect(plan.proven).toBe('least')
  })

  test('first-fit decreasing is no judge of it (recomputed)', () => {
    const problem = cuttingProblem(request)
    const packing = firstFitPacking(problem)
    expect(standingOf(problem, packing).lengths).toBe(instance.firstFitDecreasing)
  })

  test('the bound L2 does not pass the optimum', () => {
    expect(lengthsBound(cuttingProblem(request).items, instance.length)).toBeLessThanOrEqual(instance.least)
  })
})

test('the paper rolls waste 0.401 %, as published', async () => {
  const [rolls] = instances
  if (!rolls) throw new Error('the first instance')
  expect((await cutPlan(requestOf(rolls))).wastePercent).toBeCloseTo(0.401, 3)
})

test('one document prints 35 for Chvátal’s 36: the optimum stays 453 (recomputed)', async () => {
  const pieces = [45, 35, 31, 14].map((length, at) => ({
    label: `${length}`,
    length,
    count: [97, 610, 395, 211][at] ?? 0,
  }))
  const plan = await cutPlan({ pieces, stock: [{ label: 'roll', length: 100, bought: true }], kerf: 0 })
  expect(plan.boughtLength).toBe(45_300)
})

test('the paper rolls have 308 patterns, as published', () => {
  const [rolls] = instances
  if (!rolls) throw new Error('the first instance')
  expect(everyPattern(rolls.length, rolls.pieces)).toHaveLength(308)
})

test.each(instances)(
  '$name: HiGHS alone over every pattern finds the same least',
  ({ length, pieces, least }) => {
    expect(leastByEveryPattern(length, pieces)).toBe(least)
  },
)

test.each(instances.filter(({ length }) => length <= 288))(
  '$name: HiGHS alone over the ways through a length finds the same least',
  (instance) => {
    expect(leastByArcFlow(requestOf(instance))).toBe(instance.least * instance.length)
  },
)
