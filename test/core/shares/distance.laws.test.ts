import fc from 'fast-check'
import { expect, test } from 'vitest'
import type { Notebook } from '../../../lib/core/agreement/notebook.ts'
import type { ForBoth } from '../../../lib/core/people/household.ts'
import { type Distance, distanceBetween } from '../../../lib/core/shares/distance.ts'
import { plannedStatement, type Statement } from '../../../lib/core/shares/statement.ts'
import { randomNotebook, readMade } from '../randomNotebook.ts'

/** Two plans in one currency: the items s1, g1 … of the one are those of the other, otherwise built and shared. */
const twoPlans = fc
  .tuple(randomNotebook, randomNotebook)
  .filter(([one, other]) => one.currency === other.currency)
  .map(([one, other]) => [readMade(one), readMade(other)] as const)

function asked(plan: Notebook): Statement['asked'] {
  const statement = plannedStatement(plan)
  if (!statement.ok) throw new Error('a made notebook is refused')
  return statement.value.asked
}

function apart(one: Notebook, other: Notebook): Distance {
  const distance = distanceBetween(one, other)
  if (!distance.ok) throw new Error('made notebooks are refused')
  return distance.value
}

const added = (amounts: readonly ForBoth<bigint>[]) =>
  amounts.reduce((sum, one) => ({ a: sum.a + one.a, b: sum.b + one.b }), { a: 0n, b: 0n })

const onTwoPlans = (check: (distance: Distance, one: Notebook, other: Notebook) => void) =>
  fc.assert(
    fc.property(twoPlans, ([one, other]) => {
      check(apart(one, other), one, other)
    }),
    { numRuns: 100 },
  )

test('the steps of every item add to its distance, and the items, with the caps, to that of the whole', () => {
  onTwoPlans(({ items, steps, caps, moves }) => {
    for (const item of items) {
      expect(added(item.steps.map((step) => step.moves))).toEqual(item.moves)
      expect(added([item.from, item.moves])).toEqual(item.to)
    }
    expect(added(steps.map((step) => step.moves))).toEqual(added(items.map((item) => item.moves)))
    expect(added([...steps.map((step) => step.moves), caps])).toEqual(moves)
  })
})

test('both ends are what the two statements ask for, after caps', () => {
  onTwoPlans(({ from, to, moves }, one, other) => {
    const [first, second] = [asked(one), asked(other)]
    expect(from).toEqual({ a: first.a, b: first.b })
    expect(to).toEqual({ a: second.a, b: second.b })
    expect(added([from, moves])).toEqual(to)
  })
})

test('every kind of difference is told of once, in its order', () => {
  onTwoPlans(({ steps, items }) => {
    const order = ['quantities', 'prices', 'hours', 'principle']
    expect(steps.flatMap(({ causes }) => causes)).toEqual(order)
    for (const item of items) expect(item.steps.flatMap(({ causes }) => causes)).toEqual(order)
  })
})

test('a plan is no distance from itself', () => {
  fc.assert(
    fc.property(randomNotebook, (document) => {
      const plan = readMade(document)
      const { items, moves, caps, from, middle } = apart(plan, plan)
      expect({ items, moves, caps }).toEqual({ items: [], moves: { a: 0n, b: 0n }, caps: { a: 0n, b: 0n } })
      expect({ a: middle.a, b: middle.b }).toEqual(from)
    }),
    { numRuns: 60 },
  )
})

test('the way back is as long as the way there', () => {
  onTwoPlans(({ moves, middle }, one, other) => {
    const back = apart(other, one)
    expect(added([back.moves, moves])).toEqual({ a: 0n, b: 0n })
    expect(back.middle).toEqual(middle)
  })
})

test('the middle lies between the two, no further than a unit from half of them', () => {
  onTwoPlans(({ from, to, middle }) => {
    for (const household of ['a', 'b'] as const) {
      const off = 2n * middle[household] - from[household] - to[household]
      expect(off >= -2n && off <= 2n).toBe(true)
    }
    const total = from.a + from.b + to.a + to.b
    expect(middle.a + middle.b).toBe((total + 1n) / 2n)
  })
})
