import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { offeredLines } from '../../../lib/core/takeoff/offeredLines.ts'
import { type TakeOff, takeOff } from '../../../lib/core/takeoff/takeOff.ts'
import { sharedPostSentences } from '../../../lib/words/takeoff/sharedPostText.ts'
import { fence, gateAt, notebookOf, steelBuildUp, takeOffOf } from './madeFence.ts'

const offered = (found: TakeOff) =>
  offeredLines(found).map(({ item, from, quantity }) => [`${item.list} ${item.index}`, from, quantity])

/** Two fences of 24 ft that meet at 24 ft: posts at 0, 8, 16 and 24 ft, and at 32, 40 and 48 ft. */
const two = [
  fence('0 ft', '24 ft', { id: 's1', name: 'Lane' }),
  fence('24 ft', '48 ft', { id: 's2', name: 'Creek' }),
]

describe('a post at which two sections meet', () => {
  test('stays one whole post of the take-off, counted with the first', () => {
    const { quantities, posts } = takeOffOf(two)
    expect(posts).toHaveLength(7)
    expect(quantities.filter(({ part }) => part === 'posts').map(({ quantity }) => quantity)).toEqual([
      '4',
      '3',
    ])
  })

  test('is offered as one half to each of the two', () => {
    expect(offered(takeOffOf(two)).filter(([, from]) => from?.includes('posts'))).toEqual([
      ['sections 0', 'takeoff: posts', '3.5'],
      ['sections 1', 'takeoff: posts', '3'],
      ['sections 1', 'takeoff: posts shared with s1', '0.5'],
    ])
  })

  test('takes the fill of half its hole with it, and half its cap', () => {
    const buildUp = {
      ...steelBuildUp,
      posts: { ...steelBuildUp.posts, top: 'beside', gravel: '6 in' },
      footing: { fill: 'concrete' },
    }
    const found = takeOffOf(two.map((one) => ({ ...one, buildUp })))
    const lines = offered(found)
    // Four holes alike: the half of one is an eighth of what the four take.
    for (const part of ['concrete', 'gravel']) {
      const whole = Number(found.quantities.find((one) => one.part === part)?.quantity)
      const half = Number(lines.find(([, from]) => from === `takeoff: ${part} shared with s1`)?.[2])
      expect(Math.abs(half - whole / 8)).toBeLessThan(0.001)
    }
    expect(lines.find(([, from]) => from === 'takeoff: caps shared with s1')?.[2]).toBe('0.5')
    expect(lines.find(([at, from]) => at === 'sections 0' && from === 'takeoff: caps')?.[2]).toBe('3.5')
  })

  test('is a corner too', () => {
    const stations = [{ at: '0 ft' }, { at: '24 ft', angle: { degrees: '90', toward: 'a' } }, { at: '48 ft' }]
    const corner = takeOffOf(two, { line: { stations } }).sharedPosts
    expect(corner.map(({ itemId, otherId }) => [itemId, otherId])).toEqual([['s1', 's2']])
  })

  test('is said in words on both sides', () => {
    const notebook = notebookOf(two)
    const { sharedPosts } = takeOff(notebook)
    const said = (index: number) => sharedPostSentences(notebook, sharedPosts, { list: 'sections', index })
    expect(said(0)).toEqual(['1 post at 24 ft is shared with Creek: one half here.'])
    expect(said(1)).toEqual(['1 post at 24 ft is shared with Lane: one half here.'])
  })
})

describe('a gate’s post that is the end of a section too', () => {
  const gate = gateAt('12 ft', '4 ft', { id: 'g1', name: 'Wicket', buildUp: { leaves: '1' } })

  test('is borne by the gate and the section where the gate has a build-up', () => {
    const notebook = notebookOf([two[0] ?? {}], { gates: [gate] })
    const found = takeOff(notebook)
    expect(found.sharedPosts.map(({ itemId, otherId }) => [itemId, otherId])).toEqual([
      ['g1', 's1'],
      ['g1', 's1'],
    ])
    const [[, , own], [, , ofSection]] = [
      offered(found).find(([at, from]) => at === 'gates 0' && from?.startsWith('takeoff: ')) ?? ['', '', ''],
      offered(found).find(([at, from]) => at === 'sections 0' && from?.includes('shared with g1')) ?? [
        '',
        '',
        '',
      ],
    ]
    expect([own, ofSection]).toEqual(['1', '1'])
    expect(sharedPostSentences(notebook, found.sharedPosts, { list: 'gates', index: 0 })).toEqual([
      expect.stringMatching(/^2 posts at .+ and .+ are shared with Lane: one half of each here\.$/),
    ])
  })

  test('is the section’s alone where the gate has none', () => {
    const { buildUp: _none, ...plain } = gate
    expect(takeOff(notebookOf([two[0] ?? {}], { gates: [plain] })).sharedPosts).toEqual([])
  })
})

test('sections that do not touch share nothing, and what is offered is what is taken off', () => {
  const found = takeOffOf([fence('0 ft', '24 ft'), fence('30 ft', '54 ft')])
  expect(found.sharedPosts).toEqual([])
  expect(offeredLines(found).map(({ quantity }) => quantity)).toEqual(
    found.quantities.map(({ quantity }) => quantity),
  )
})

/** Fences one after the other, each with a gate in it or none, in holes of any width, filled with bags or by the load. */
const fencesInARow = fc
  .array(
    fc.record({
      length: fc.integer({ min: 12, max: 60 }),
      hole: fc.integer({ min: 8, max: 18 }),
      bags: fc.boolean(),
      gate: fc.constantFrom('none', 'with a build-up', 'without'),
    }),
    { minLength: 2, maxLength: 5 },
  )
  .map((fences) => {
    const sections: Record<string, unknown>[] = []
    const gates: Record<string, unknown>[] = []
    let from = 0
    for (const [at, { length, hole, bags, gate }] of fences.entries()) {
      const buildUp = {
        ...steelBuildUp,
        posts: { ...steelBuildUp.posts, hole: `${hole} in`, gravel: '4 in', top: 'beside' },
        footing: { fill: 'concrete', ...(bags && { bagYield: { figure: '0.6', unit: 'cu ft' } }) },
      }
      sections.push(fence(`${from} ft`, `${from + length} ft`, { id: `s${at}`, buildUp }))
      const built = gate === 'with a build-up' && { buildUp: { leaves: '1', footing: { fill: 'concrete' } } }
      if (gate !== 'none') gates.push(gateAt(`${from + 6} ft`, '4 ft', { id: `g${at}`, ...built }))
      from += length
    }
    return takeOffOf(sections, { gates })
  })

test('what is offered along any row of fences adds up to what the take-off takes, thing by thing', () => {
  const thousandths = (quantity: string) => Math.round(Number(quantity) * 1000)
  fc.assert(
    fc.property(fencesInARow, (found) => {
      const sums = (lines: readonly { name: { kind: string }; unit: string; quantity: string }[]) => {
        const by = new Map<string, number>()
        for (const { name, unit, quantity } of lines)
          by.set(`${name.kind} ${unit}`, (by.get(`${name.kind} ${unit}`) ?? 0) + thousandths(quantity))
        return by
      }
      expect(found.sharedPosts.length).toBeGreaterThan(0)
      const lines = offeredLines(found)
      expect(sums(lines)).toEqual(sums(found.quantities))
      expect(lines.every(({ quantity }) => Number(quantity) >= 0)).toBe(true)
      expect(new Set(lines.map(({ item, from }) => `${item.list} ${item.index} ${from}`)).size).toBe(
        lines.length,
      )
    }),
    { numRuns: 100 },
  )
})
