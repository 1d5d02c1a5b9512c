import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { offCentre } from '../../../lib/core/takeoff/measuredPosts.ts'
import type { TakeOff } from '../../../lib/core/takeoff/takeOff.ts'
import {
  feet,
  fence,
  findingsOf,
  gateAt,
  inches,
  sameLength,
  steelBuildUp,
  steelPosts,
  takeOffOf,
} from './madeFence.ts'

function kinds({ posts }: TakeOff): string[] {
  return posts.map(({ post }) => `${post.kind} ${Math.round(feet(post.at) * 1000) / 1000}`)
}

describe('one section', () => {
  test('has an end post at each end and line posts between', () => {
    expect(kinds(takeOffOf([fence('0 ft', '24 ft')]))).toEqual(['end 0', 'line 8', 'line 16', 'end 24'])
  })

  test('without a build-up gets no posts', () => {
    expect(takeOffOf([fence('0 ft', '24 ft', { buildUp: undefined })]).posts).toEqual([])
  })
})

describe('a gate', () => {
  // A post of 2⅜ in stands with its centre 1 3/16 in outside the clear opening.
  test('has its two posts half a post outside the clear opening', () => {
    const { posts } = takeOffOf([fence('0 ft', '40 ft')], { gates: [gateAt('20 ft', '4 ft')] })
    const jambs = posts.filter(({ post }) => post.kind === 'gate').map(({ post }) => post.at)
    expect(sameLength(jambs[0], '17 ft 10 13/16 in')).toBe(true)
    expect(sameLength(jambs[1], '22 ft 1 3/16 in')).toBe(true)
  })

  test('of wider posts stands that much further out', () => {
    const buildUp = { ...steelBuildUp, gatePosts: { outside: '4 in' } }
    const { posts } = takeOffOf([fence('0 ft', '40 ft', { buildUp })], { gates: [gateAt('20 ft', '4 ft')] })
    const jambs = posts.filter(({ post }) => post.kind === 'gate').map(({ post }) => feet(post.at))
    expect(jambs[0]).toBeCloseTo(18 - 2 / 12, 12)
    expect(jambs[1]).toBeCloseTo(22 + 2 / 12, 12)
  })

  test('parts the section into two runs', () => {
    const { layout } = takeOffOf([fence('0 ft', '40 ft')], { gates: [gateAt('20 ft', '4 ft')] })
    expect(layout.runs).toHaveLength(2)
  })

  test('between two sections takes the end of each', () => {
    const found = takeOffOf([fence('0 ft', '18 ft'), fence('22 ft', '40 ft')], {
      gates: [gateAt('20 ft', '4 ft')],
    })
    expect(kinds(found)[0]).toBe('end 0')
    expect(kinds(found).filter((kind) => kind.startsWith('gate'))).toHaveLength(2)
    expect(kinds(found).at(-1)).toBe('end 40')
    expect(findingsOf(found)).toEqual([])
  })

  test('with a build-up of its own carries its posts itself', () => {
    const found = takeOffOf([fence('0 ft', '40 ft')], {
      gates: [gateAt('20 ft', '4 ft', { buildUp: { posts: { outside: '3 in' } } })],
    })
    const jambs = found.posts.filter(({ post }) => post.kind === 'gate')
    expect(jambs.map(({ post }) => post.item.list)).toEqual(['gates', 'gates'])
  })
})

describe('what is shared', () => {
  test('a post between two sections is counted once, with the first along the line', () => {
    const found = takeOffOf([fence('16 ft', '32 ft'), fence('0 ft', '16 ft')])
    expect(kinds(found)).toEqual(['end 0', 'line 8', 'line 16', 'line 24', 'end 32'])
    expect(found.posts[2]?.post.item.index).toBe(1)
  })

  test('it is the stouter of the two in the deeper hole', () => {
    const stout = { ...steelBuildUp, posts: { ...steelPosts, outside: '3 in' } }
    const deep = { ...steelBuildUp, posts: { ...steelPosts, depth: '48 in' } }
    const { posts } = takeOffOf([
      fence('0 ft', '16 ft', { buildUp: stout }),
      fence('16 ft', '32 ft', { buildUp: deep }),
    ])
    expect(inches(posts[2]?.size.outside)).toBe(3)
    expect(inches(posts[2]?.size.depth)).toBe(48)
  })

  test('where it is the neighbour’s, it is a part of its own, named by the neighbour', () => {
    const stout = { ...steelBuildUp, posts: { ...steelPosts, outside: '3 in' } }
    const { quantities } = takeOffOf([fence('0 ft', '16 ft'), fence('16 ft', '32 ft', { buildUp: stout })])
    const posts = quantities.filter(({ name }) => name.kind === 'posts')
    expect(posts.map(({ item, part, quantity }) => [item.index, part, quantity])).toEqual([
      [0, 'posts', '2'],
      [0, 'posts of 16 ft to 32 ft', '1'],
      [1, 'posts', '2'],
    ])
  })

  test('it is as high as the higher of the two', () => {
    const low = fence('16 ft', '32 ft', { height: { agreed: '4 ft', measuredFrom: 'a' } })
    const { posts } = takeOffOf([fence('0 ft', '16 ft'), low])
    // 6 ft + 36 in − 1¾ in; the next one is 2 ft shorter.
    expect(sameLength(posts[2]?.piece.length, '8 ft 10 1/4 in')).toBe(true)
    expect(sameLength(posts[3]?.piece.length, '6 ft 10 1/4 in')).toBe(true)
  })
})

describe('a turn of the line', () => {
  const line = {
    stations: [{ at: '0 ft' }, { at: '10 ft', angle: { degrees: '30', toward: 'a' } }, { at: '24 ft' }],
  }

  test('has a corner post, and both runs are laid out by themselves', () => {
    // 10 ft are two bays of 5 ft, 14 ft two of 7 ft.
    expect(kinds(takeOffOf([fence('0 ft', '24 ft')], { line }))).toEqual([
      'end 0',
      'line 5',
      'corner 10',
      'line 17',
      'end 24',
    ])
  })

  test('a corner post has a size, a hole and a bracing of its own', () => {
    const cornerPosts = {
      outside: '3 1/2 in',
      hole: '14 in',
      depth: '42 in',
      bracing: 'a brace in each direction',
    }
    const { posts } = takeOffOf([fence('0 ft', '24 ft', { buildUp: { ...steelBuildUp, cornerPosts } })], {
      line,
    })
    const corner = posts[2]?.size
    expect([inches(corner?.outside), inches(corner?.hole), inches(corner?.depth), corner?.bracing]).toEqual([
      3.5,
      14,
      42,
      'a brace in each direction',
    ])
    expect(inches(posts[1]?.size.outside)).toBe(2.375)
  })

  test('between two posts of a gate is found, and so is one that leads back', () => {
    const gates = [gateAt('10 ft', '4 ft')]
    expect(findingsOf(takeOffOf([fence('0 ft', '24 ft')], { line, gates }))).toEqual([
      'line.stations[1].angle: angle-in-gate',
    ])
    const back = {
      stations: [{ at: '0 ft' }, { at: '10 ft', angle: { degrees: '180', toward: 'a' } }, { at: '24 ft' }],
    }
    expect(findingsOf(takeOffOf([fence('0 ft', '24 ft')], { line: back }))).toEqual([
      'line.stations[1].angle.degrees: angle-too-large',
    ])
  })
})

describe('farm wire', () => {
  const braced = { brace: { span: '8 ft', assemblies: '1', wire: '36 ft' } }
  const buildUp = {
    posts: { outside: '4 in', spacing: '12 ft', depth: '30 in' },
    endPosts: { outside: '6 in', ...braced },
    cornerPosts: { outside: '6 in', ...braced },
  }

  test('has a brace assembly at each end and on both sides of a corner', () => {
    const line = {
      stations: [{ at: '0 ft' }, { at: '40 ft', angle: { degrees: '90', toward: 'b' } }, { at: '80 ft' }],
    }
    const found = takeOffOf([fence('0 ft', '80 ft', { buildUp })], { line })
    expect(kinds(found)).toEqual([
      'end 0',
      'brace 8',
      'line 20',
      'brace 32',
      'corner 40',
      'brace 48',
      'line 60',
      'brace 72',
      'end 80',
    ])
    // Four assemblies of 36 ft of wire; the brace posts are of the post that they brace.
    expect(found.quantities.find(({ part }) => part === 'brace wire')?.quantity).toBe('144')
    expect(inches(found.posts[1]?.size.outside)).toBe(6)
  })

  test('where two sections meet in line nothing is braced', () => {
    const found = takeOffOf([fence('0 ft', '40 ft', { buildUp }), fence('40 ft', '80 ft', { buildUp })])
    expect(kinds(found).filter((kind) => kind.startsWith('brace'))).toHaveLength(2)
  })
})

describe('posts measured on site', () => {
  const measured = [{ post: '2', at: '8 ft 3 in', depth: '22 in', why: 'rock' }]

  test('stand where they were measured, in a hole as deep as it could be dug', () => {
    const { posts, tops } = takeOffOf([fence('0 ft', '24 ft', { measured })])
    expect(feet(posts[1]?.post.at)).toBe(8.25)
    expect(inches(posts[1] && offCentre(posts[1].post))).toBeCloseTo(3, 12)
    expect(inches(posts[1]?.piece.depth)).toBe(22)
    expect(inches(posts[2]?.piece.depth)).toBe(36)
    expect(tops.bays.map(({ length }) => Math.round(feet(length) * 100) / 100)).toEqual([8.25, 7.75, 8])
  })

  test('that widen a bay beyond the largest spacing are found', () => {
    expect(findingsOf(takeOffOf([fence('0 ft', '24 ft', { measured })]))).toEqual([
      'sections[0].measured[0].at: bay-too-wide',
    ])
  })

  test('out of order are found with the numbers that clash, and the plan is used', () => {
    const found = takeOffOf([fence('0 ft', '24 ft', { measured: [{ post: '2', at: '16 ft' }] })])
    expect(found.findings[0]).toMatchObject({
      path: 'sections[0].measured[0].at',
      kind: 'measured-out-of-order',
      post: '2',
    })
    expect(feet(found.posts[1]?.post.at)).toBe(8)
  })

  test('that were in order only with one that is left out are left out with it', () => {
    const measured = [
      { post: '2', at: '18 ft' },
      { post: '1', at: '17 ft' },
    ]
    const buildUp = { ...steelBuildUp, endPosts: { brace: { span: '2.5 m' } } }
    const found = takeOffOf([fence('0 ft', '17 ft', { buildUp, measured })])
    expect(kinds(found)).toEqual(kinds(takeOffOf([fence('0 ft', '17 ft', { buildUp })])))
    expect(findingsOf(found).filter((one) => one.endsWith('measured-out-of-order'))).toEqual([
      'sections[0].measured[0].at: measured-out-of-order',
      'sections[0].measured[1].at: measured-out-of-order',
    ])
  })

  test('that the section does not have, or that were measured twice, are found', () => {
    const twice = [{ post: '5' }, { post: '2', at: '8 ft' }, { post: '2', at: '9 ft' }]
    expect(findingsOf(takeOffOf([fence('0 ft', '24 ft', { measured: twice })]))).toEqual([
      'sections[0].measured[0].post: measured-unknown',
      'sections[0].measured[2]: measured-twice',
    ])
  })

  test('that stand in an opening narrow it', () => {
    const gates = [gateAt('20 ft', '4 ft')]
    const found = takeOffOf([fence('0 ft', '40 ft', { measured: [{ post: '4', at: '18 ft' }] })], { gates })
    const narrowed = found.findings.find(({ kind }) => kind === 'opening-narrowed')
    // The centre moved by 1 3/16 in toward the opening of 48 in.
    expect(narrowed && 'left' in narrowed ? inches(narrowed.left) : 0).toBeCloseTo(46.8125, 9)
  })
})

describe('laws', () => {
  test('posts are bays and one for each run, less those that runs share', () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 20, max: 900 }), { minLength: 1, maxLength: 6 }), (lengths) => {
        let at = 0
        const sections = lengths.map((length) => {
          const section = fence(`${at} in`, `${at + length} in`)
          at += length
          return section
        })
        const { posts, tops, layout } = takeOffOf(sections)
        expect(posts).toHaveLength(tops.bays.length + layout.runs.length - (lengths.length - 1))
      }),
      { numRuns: 50 },
    )
  })

  test('posts stay in their order, whatever was measured, and those in order as measured stay there', () => {
    const place = fc.record({ post: fc.integer({ min: 1, max: 6 }), at: fc.integer({ min: 0, max: 520 }) })
    fc.assert(
      fc.property(fc.array(place, { maxLength: 6 }), (places) => {
        const measured = places.map(({ post, at }) => ({ post: `${post}`, at: `${at} in` }))
        const { posts } = takeOffOf([fence('0 ft', '40 ft', { measured })])
        const stands = posts.map(({ post }) => inches(post.at) ?? 0)
        expect(stands).toHaveLength(6)
        expect(stands.toSorted((left, right) => left - right)).toEqual(stands)
        expect(new Set(stands).size).toBe(6)
        const [first, ...others] = places
        const planned = 96 * ((first?.post ?? 1) - 1)
        if (first === undefined || others.length > 0 || Math.abs(first.at - planned) >= 96) return
        expect(stands[first.post - 1]).toBeCloseTo(first.at, 9)
      }),
      { numRuns: 300 },
    )
  })

  test('the order in which sections stand in the file moves no post', () => {
    const sections = [fence('0 ft', '13 ft'), fence('13 ft', '30 ft'), fence('30 ft', '61 ft')]
    const places = (order: number[]) => kinds(takeOffOf(order.map((index) => sections[index] ?? {})))
    expect(places([2, 0, 1])).toEqual(places([0, 1, 2]))
  })
})
