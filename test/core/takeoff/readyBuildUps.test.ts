import { describe, expect, test } from 'vitest'
import { readyBuildUps } from '../../../lib/core/takeoff/readyBuildUps.ts'
import { fence, findingsOf, gateAt, takeOffOf } from './madeFence.ts'

describe.each(readyBuildUps.map((ready) => [ready.key, ready] as const))(
  'the ready build-up %s',
  (_key, ready) => {
    // Farm wire is no fence of 6 ft: its posts are 8 ft long in all.
    const agreed = ready.key === 'farm-wire' ? '4 ft' : '6 ft'
    const section = { height: { agreed, measuredFrom: 'higher' }, buildUp: ready.section }
    const found = takeOffOf([fence('0 ft', '100 ft', section)], {
      gates: [gateAt('50 ft', '4 ft', { opens: 'toward household b', buildUp: ready.gate })],
    })

    test('builds 100 ft of fence with a gate, without a finding', () => {
      expect(findingsOf(found)).toEqual([])
    })

    test('knows the weight of its posts, its rails and its leaf', () => {
      for (const { part, kilograms } of found.quantities.filter(({ name }) =>
        ['posts', 'rails', 'frame'].includes(name.kind),
      ))
        expect(kilograms, part).toBeGreaterThan(0)
    })

    test('has a quantity above zero for every part', () => {
      for (const { quantity, part } of found.quantities) expect(Number(quantity), part).toBeGreaterThan(0)
    })
  },
)

test('they are the four that the app offers, each with a name of its own', () => {
  expect(readyBuildUps.map(({ key }) => key)).toEqual([
    'steel-welded-wire',
    'steel-woven-strips',
    'timber-board',
    'farm-wire',
  ])
  expect(new Set(readyBuildUps.map(({ section }) => section.name)).size).toBe(4)
})
