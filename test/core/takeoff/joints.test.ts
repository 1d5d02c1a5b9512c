import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { asNumber } from '../../../lib/core/takeoff/exact.ts'
import type { ShopWork } from '../../../lib/core/takeoff/shopWork.ts'
import type { TakeOff } from '../../../lib/core/takeoff/takeOff.ts'
import { jointSentences } from '../../../lib/words/takeoff/jointText.ts'
import { feet, fence, gateAt, inches, notebookOf, pipe, steelPosts, takeOffOf } from './madeFence.ts'

type Data = Record<string, unknown>

const welded = { ...pipe, count: '2', welded: true, slip: '1/2 in' }
const spliced = { ...pipe, count: '2', joints: 'spliced', stock: '6 ft' }

function built(rails: Data, length = '96 ft', more: Data = {}): TakeOff {
  return takeOffOf([fence('0 ft', length, { buildUp: { posts: steelPosts, rails } })], more)
}

function workOf({ sections }: TakeOff, index = 0): ShopWork {
  const work = sections[index]?.work
  if (work === undefined) throw new Error('a section with a build-up has work')
  return work
}

const turning = (at: string, degrees: string) => ({
  line: { stations: [{ at: '0 ft' }, { at, angle: { degrees, toward: 'a' } }, { at: '400 ft' }] },
})

describe('slip joints', () => {
  test('0.77 in of movement at half an inch each are two joints: at thirds of the run', () => {
    // 96 ft · 12e-6/°C · 55.6 °C = 0.768 in; two joints, at 32 and 64 ft, where posts 5 and 9 stand.
    const { slips } = workOf(built(welded)).places
    expect(slips).toHaveLength(1)
    expect(slips[0]?.posts).toEqual([4, 8])
    expect(slips[0]?.withoutPost).toBe(0)
  })

  test('none where it is not said what one takes, or the rails are not welded', () => {
    expect(workOf(built({ ...welded, slip: '' })).places.slips).toEqual([])
    expect(workOf(built({ ...welded, welded: false })).places.slips).toEqual([])
  })

  test('a short run gets fewer than a long one', () => {
    const found = built(welded, '96 ft', { gates: [gateAt('70 ft', '4 ft')] })
    const { slips } = workOf(found).places
    // 68 ft move 0.54 in and 24 ft move 0.19 in.
    expect(slips.map(({ posts }) => posts.length)).toEqual([2, 1])
    // Posts 1 to 10 make the first run, 11 to 14 the second.
    for (const post of slips[0]?.posts ?? []) expect(post).toBeLessThan(9)
    for (const post of slips[1]?.posts ?? []) expect(post).toBeGreaterThan(10)
  })

  test('more than there are posts between the ends are said to be without one', () => {
    const { slips } = workOf(built({ ...welded, slip: '0.05 in' }, '16 ft')).places
    // 16 ft move 0.128 in: three joints, one post.
    expect(slips).toMatchObject([{ posts: [1], withoutPost: 2 }])
  })

  test('are as many as the longest run asks for, each at a post of its own between the ends', () => {
    const run = fc.integer({ min: 9, max: 900 })
    const slip = fc.integer({ min: 1, max: 40 })
    fc.assert(
      fc.property(run, slip, (length, sixteenths) => {
        const found = built({ ...welded, slip: `${sixteenths}/16 in` }, `${length} ft`)
        const { heat, places } = workOf(found)
        const [one] = places.slips
        const last = found.posts.length - 1
        expect((one?.posts.length ?? 0) + (one?.withoutPost ?? 0)).toBe(heat?.slipJoints)
        const posts = one?.posts ?? []
        expect(new Set(posts).size).toBe(posts.length)
        expect([...posts].sort((left, right) => left - right)).toEqual(posts)
        for (const post of posts) {
          expect(post).toBeGreaterThan(0)
          expect(post).toBeLessThan(last)
        }
      }),
      { numRuns: 60 },
    )
  })

  test('on equal bays each lies within half a bay of its even place', () => {
    fc.assert(
      fc.property(fc.integer({ min: 5, max: 60 }), fc.integer({ min: 4, max: 16 }), (bays, sixteenths) => {
        const found = built({ ...welded, slip: `${sixteenths}/16 in` }, `${bays * 8} ft`)
        const { slips } = workOf(found).places
        const posts = slips[0]?.posts ?? []
        fc.pre((slips[0]?.withoutPost ?? 0) === 0 && posts.length * 2 < bays)
        for (const [index, post] of posts.entries())
          expect(Math.abs(post - (bays * (index + 1)) / (posts.length + 1))).toBeLessThanOrEqual(0.5 + 1e-9)
      }),
      { numRuns: 60 },
    )
  })
})

describe('splices', () => {
  test('fall where each whole length ends', () => {
    // Bays of 8 ft from stock of 6 ft: one splice 6 ft into each bay.
    const { splices } = workOf(built(spliced, '16 ft')).places
    expect(splices.map(({ at, rails, between }) => [feet(at), rails, between])).toEqual([
      [6, 2, [0, 1]],
      [14, 2, [1, 2]],
    ])
  })

  test('are as many as are counted', () => {
    const work = workOf(built({ ...spliced, stock: '3 ft' }, '100 ft'))
    expect(work.places.splices.reduce((sum, { rails }) => sum + rails, 0)).toBe(work.splices)
    expect(work.splices).toBeGreaterThan(0)
  })

  test('reach less far on a slope, seen from above', () => {
    // A bay of 8 ft that rises 6 ft is 10 ft along: 6 ft along reach 4.8 ft.
    const stations = [
      { at: '0 ft', gradeFence: '0 ft' },
      { at: '8 ft', gradeFence: '6 ft' },
    ]
    const { splices } = workOf(built(spliced, '8 ft', { line: { stations } })).places
    expect(splices.map(({ at }) => asNumber(at) / 304.8)).toEqual([expect.closeTo(4.8, 6)])
  })

  test('none where joints may lie only over posts', () => {
    expect(workOf(built({ ...spliced, joints: 'posts' })).places.splices).toEqual([])
  })
})

describe('mitres where rails meet at a turn', () => {
  // The cut is half the turn off square, and the longer side D·tan(turn/2) longer: common rule of fitting, recomputed.
  test.each([
    ['90', 45, 2.375],
    ['45', 22.5, 0.98376],
    ['30', 15, 0.63638],
  ])('a turn of %s degrees: %f off square, %f in longer for pipe of 2 3/8 in', (degrees, cut, longer) => {
    const { mitres } = workOf(built({ ...pipe, count: '2' }, '96 ft', turning('40 ft', degrees))).places
    expect(mitres).toHaveLength(1)
    expect(mitres[0]).toMatchObject({ post: 5, turn: degrees, cutDegrees: cut, ends: 4 })
    expect(inches(mitres[0]?.longer)).toBeCloseTo(longer, 5)
  })

  test('where two sections meet at the turn, each has its own ends', () => {
    const sections = [fence('0 ft', '40 ft'), fence('40 ft', '80 ft')]
    const found = takeOffOf(sections, turning('40 ft', '60'))
    expect(
      [0, 1].map((index) => workOf(found, index).places.mitres.map(({ ends, post }) => [ends, post])),
    ).toEqual([[[2, 5]], [[2, 5]]])
  })

  test('none where the fence ends at the turn, or has no rails', () => {
    expect(workOf(built({ ...pipe, count: '2' }, '40 ft', turning('40 ft', '60'))).places.mitres).toEqual([])
    expect(workOf(built({ ...pipe, count: '0' }, '96 ft', turning('40 ft', '60'))).places.mitres).toEqual([])
  })
})

test('in words, with the posts’ numbers', () => {
  const all = { ...welded, joints: 'spliced', stock: '6 ft' }
  const section = fence('0 ft', '24 ft', {
    buildUp: { posts: steelPosts, rails: { ...all, slip: '0.1 in' } },
  })
  const asked = turning('16 ft', '90')
  const work = workOf(takeOffOf([section], asked))
  expect(jointSentences(notebookOf([section], asked), work)).toEqual([
    'The run from 0 ft to 16 ft gets slip joints at post 2. It asks for 1 more than it has posts between its ends.',
    'The run from 16 ft to 24 ft asks for 1 more than it has posts between its ends.',
    'At 6 ft, between posts 1 and 2, 2 rails are spliced.',
    'At 14 ft, between posts 2 and 3, 2 rails are spliced.',
    'At 22 ft, between posts 3 and 4, 2 rails are spliced.',
    'At post 3 the line turns by 90 degrees: cut 4 rail ends 45 degrees off square, the longer side 2 3/8 in longer.',
  ])
})
