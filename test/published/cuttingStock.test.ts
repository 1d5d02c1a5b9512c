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
import { type Instance, instances } from './cuttingInstances.ts'

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
