import { describe, expect, test } from 'vitest'
import { basicTakeOff } from '../../../lib/core/takeoff/basicTakeOff.ts'
import { offeredLines } from '../../../lib/core/takeoff/offeredLines.ts'
import { takeOff } from '../../../lib/core/takeoff/takeOff.ts'
import { fence, notebookOf, pipe, steelBuildUp, steelPosts } from './madeFence.ts'

const plainBuildUp = { posts: { ...steelPosts, spacing: '12 ft' }, rails: { ...pipe, count: '1' } }
const plain = { height: '4 ft', infill: 'one rail', buildUp: plainBuildUp }

const figures = (found: { quantities: readonly { part: string; quantity: string }[] }) =>
  Object.fromEntries(found.quantities.map(({ part, quantity }) => [part, quantity]))

describe('the basic fence of a section, taken off', () => {
  test('is its own build-up and height on the same stretch', () => {
    const notebook = notebookOf([fence('0 ft', '24 ft', { basicFence: plain })])
    // 24 ft in bays of at most 12 ft: three posts, and one rail along 24 ft; as built, four posts and two rails.
    expect(figures(basicTakeOff(notebook, 0))).toMatchObject({ posts: '3', rails: '24' })
    expect(figures(takeOff(notebook))).toMatchObject({ posts: '4', rails: '48' })
  })

  test('is what the section would take if it were built so', () => {
    const built = fence('0 ft', '24 ft', {
      height: { agreed: '4 ft', measuredFrom: 'higher' },
      buildUp: plainBuildUp,
    })
    const notebook = notebookOf([fence('0 ft', '24 ft', { basicFence: plain })])
    expect(basicTakeOff(notebook, 0).quantities).toEqual(takeOff(notebookOf([built])).quantities)
  })

  test('leaves a post that it shares to the neighbour that comes first along the line', () => {
    const sections = [fence('0 ft', '24 ft'), fence('24 ft', '48 ft', { basicFence: plain })]
    expect(figures(basicTakeOff(notebookOf(sections), 1))).toMatchObject({ posts: '2', rails: '24' })
  })

  test('is offered for its own cost lines as the section’s would be if it were built so', () => {
    const before = fence('0 ft', '24 ft')
    const built = {
      ...fence('24 ft', '48 ft'),
      height: { agreed: '4 ft', measuredFrom: 'higher' },
      buildUp: plainBuildUp,
    }
    const offered = offeredLines(takeOff(notebookOf([before, built]))).filter(
      ({ item }) => item.list === 'sections' && item.index === 1,
    )
    const sections = [before, fence('24 ft', '48 ft', { basicFence: plain })]
    expect(basicTakeOff(notebookOf(sections), 1).offered).toEqual(offered)
    expect(offered.length).toBeGreaterThan(1)
  })

  test('goes by the height of the section where it has none of its own', () => {
    const { height: _none, ...noHeight } = plain
    const section = fence('0 ft', '24 ft', { basicFence: noHeight })
    const asHigh = fence('0 ft', '24 ft', { basicFence: { ...plain, height: '6 ft' } })
    expect(basicTakeOff(notebookOf([section]), 0)).toEqual(basicTakeOff(notebookOf([asHigh]), 0))
  })

  test('is not moved by posts that were measured for the real fence', () => {
    const measured = [{ post: '2', at: '7 ft', depth: '40 in' }]
    const notebook = notebookOf([fence('0 ft', '24 ft', { basicFence: plain, measured })])
    expect(figures(basicTakeOff(notebook, 0))).toMatchObject({ posts: '3' })
    expect(basicTakeOff(notebook, 0).findings).toEqual([])
  })

  test.each([
    ['without a basic fence', {}],
    ['with a basic fence that is only priced', { basicFence: { height: '4 ft' } }],
  ])('%s takes nothing, and what the real fence takes stays as it was', (_, more) => {
    const notebook = notebookOf([fence('0 ft', '24 ft', more)])
    expect(basicTakeOff(notebook, 0)).toEqual({ quantities: [], offered: [], findings: [] })
    expect(takeOff(notebook).quantities).toEqual(takeOff(notebookOf([fence('0 ft', '24 ft')])).quantities)
  })

  test('finds what it lacks at its own fields, and says nothing of the real fence', () => {
    const { spacing: _spacing, ...noSpacing } = steelPosts
    const basicFence = { ...plain, buildUp: { posts: noSpacing } }
    const buildUp = { ...steelBuildUp, posts: { ...noSpacing, hole: '' } }
    const notebook = notebookOf([fence('0 ft', '24 ft', { buildUp, basicFence })])
    const paths = basicTakeOff(notebook, 0).findings.map(({ path }) => path)
    expect(paths).toContain('sections[0].basicFence.buildUp.posts.spacing')
    expect(paths.filter((path) => !path.startsWith('sections[0].basicFence.'))).toEqual([])
    expect(takeOff(notebook).findings.some(({ path }) => path.includes('basicFence'))).toBe(false)
  })
})
