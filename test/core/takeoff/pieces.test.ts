import { describe, expect, test } from 'vitest'
import {
  feet,
  fence,
  findingsOf,
  gateAt,
  inches,
  pipe,
  quantityOf,
  sameLength,
  steelBuildUp,
  steelPosts,
  takeOffOf,
} from './madeFence.ts'

/** Ground that rises evenly along the line, the same on both sides. */
function slope(run: string, rise: string) {
  const ground = (height: string) => ({ gradeA: height, gradeB: height, gradeFence: height })
  return {
    stations: [
      { at: '0 ft', ...ground('0 in') },
      { at: run, ...ground(rise) },
    ],
  }
}

describe('post pieces on level ground', () => {
  test('are hole depth and height less the deduction: 36 in + 6 ft − 1¾ in = 8 ft 10¼ in', () => {
    const { posts } = takeOffOf([fence('0 ft', '24 ft')])
    for (const { piece } of posts) expect(sameLength(piece.length, '8 ft 10 1/4 in')).toBe(true)
  })

  test.each([
    // A mitred saddle's tips reach the rail's middle line: half of 2⅜ in is taken off; under a flat cut all of it.
    ['saddle', '8 ft 10 13/16 in'],
    ['flat', '8 ft 9 5/8 in'],
    ['beside', '9 ft'],
  ])('a top of the kind "%s" without a typed deduction makes %s', (top, length) => {
    const buildUp = { ...steelBuildUp, posts: { ...steelPosts, top, deduction: '' } }
    const { posts } = takeOffOf([fence('0 ft', '24 ft', { buildUp })])
    expect(sameLength(posts[0]?.piece.length, length)).toBe(true)
  })

  test('a saddle takes off no less than half a rail and no more than a whole one', () => {
    const with1 = (deduction: string) => ({ ...steelBuildUp, posts: { ...steelPosts, deduction } })
    expect(findingsOf(takeOffOf([fence('0 ft', '24 ft', { buildUp: with1('1 in') })]))).toEqual([
      'sections[0].buildUp.posts.deduction: deduction-outside',
    ])
    expect(findingsOf(takeOffOf([fence('0 ft', '24 ft', { buildUp: with1('2 3/8 in') })]))).toEqual([])
  })
})

describe('post pieces by elevations', () => {
  // Household a's ground lies 6 in above the fence's, b's 4 in below it; the hole is dug from the ground under the fence.
  const line = { stations: [{ at: '0 ft', gradeA: '6 in', gradeB: '-4 in', gradeFence: '0 in' }] }

  test.each([
    ['a', '9 ft 4 1/4 in'],
    ['higher', '9 ft 4 1/4 in'],
    ['b', '8 ft 6 1/4 in'],
    ['lower', '8 ft 6 1/4 in'],
  ])('6 ft from the ground "%s" make %s', (measuredFrom, length) => {
    const { posts } = takeOffOf([fence('0 ft', '24 ft', { height: { agreed: '6 ft', measuredFrom } })], {
      line,
    })
    expect(sameLength(posts[0]?.piece.length, length)).toBe(true)
  })
})

describe('on a slope of 10 ft in 100 ft', () => {
  const line = slope('100 ft', '10 ft')

  // √(100² + 10²) = 100.498756 ft; 13 raked bays of √(7.6923² + 0.76923²) each.
  test('raked rails follow it: 100.498756 ft of each', () => {
    const { tops } = takeOffOf([fence('0 ft', '100 ft')], { line })
    expect(tops.bays.reduce((sum, bay) => sum + feet(bay.along), 0)).toBeCloseTo(100.498756, 5)
    expect(quantityOf(takeOffOf([fence('0 ft', '100 ft')], { line }), 'rails').quantity).toBe('200.998')
  })

  test('raked posts are all alike', () => {
    const { posts } = takeOffOf([fence('0 ft', '100 ft')], { line })
    for (const { piece } of posts) expect(sameLength(piece.length, '8 ft 10 1/4 in')).toBe(true)
  })

  const stepped = { ...steelBuildUp, slope: 'stepped' }

  test('stepped rails take the run: 100 ft of each', () => {
    expect(
      quantityOf(takeOffOf([fence('0 ft', '100 ft', { buildUp: stepped })], { line }), 'rails').quantity,
    ).toBe('200')
  })

  test('a stepped post takes the higher rail: all but the last are a step of 10 ft ÷ 13 longer', () => {
    const { posts } = takeOffOf([fence('0 ft', '100 ft', { buildUp: stepped })], { line })
    const plain = 8 + 10.25 / 12
    expect(posts.slice(0, -1).map(({ piece }) => feet(piece.length))).toEqual(
      posts.slice(0, -1).map(() => expect.closeTo(plain + 10 / 13, 9)),
    )
    expect(feet(posts.at(-1)?.piece.length)).toBeCloseTo(plain, 9)
  })

  test('welded panels are refused where they are raked, and taken where the section is stepped', () => {
    const panels = { ...steelBuildUp, infill: [{ kind: 'panel', width: '8 ft' }] }
    expect(findingsOf(takeOffOf([fence('0 ft', '100 ft', { buildUp: panels })], { line }))).toEqual([
      'sections[0].buildUp.infill[0]: panel-on-a-slope',
    ])
    expect(
      findingsOf(
        takeOffOf([fence('0 ft', '100 ft', { buildUp: { ...panels, slope: 'stepped' } })], { line }),
      ),
    ).toEqual([])
  })
})

// √(8² + 1²) = 8.062258 ft.
test('a bay of 8 ft that rises 1 ft has a rail of 8.062258 ft', () => {
  const { tops } = takeOffOf([fence('0 ft', '8 ft')], { line: slope('8 ft', '1 ft') })
  expect(feet(tops.bays[0]?.along)).toBeCloseTo(8.062258, 6)
})

describe('rails against their stock', () => {
  const rails = (more: Record<string, unknown>) => ({
    posts: { ...steelPosts, spacing: '12 ft' },
    rails: { ...pipe, count: '2', stock: '10 ft', ...more },
  })

  test('a bay longer than the stock is found where joints lie only over posts', () => {
    const found = takeOffOf([fence('0 ft', '24 ft', { buildUp: rails({}) })])
    expect(found.findings).toMatchObject([
      { path: 'sections[0].buildUp.rails.stock', kind: 'rail-longer-than-stock', bays: 2 },
    ])
  })

  test('where pieces may be let in, each rail is one length of stock and a piece of 2 ft', () => {
    const found = takeOffOf([fence('0 ft', '24 ft', { buildUp: rails({ joints: 'spliced' }) })])
    expect(findingsOf(found)).toEqual([])
    const job = found.cutJobs.find(({ pieces }) => pieces.some(({ part }) => part === 'rails'))
    const pieces = job?.pieces
      .filter(({ part }) => part === 'rails')
      .map(({ length, count }) => [feet(length), count])
    expect(pieces).toEqual([
      [10, 4],
      [2, 4],
    ])
    expect(found.sections[0]?.work.splices).toBe(4)
  })

  test('a longer piece at hand will do', () => {
    const inventory = [
      { what: 'old pipe', shape: 'round', outside: '2.375 in', wall: '', length: '13 ft', count: '4' },
    ]
    const found = takeOffOf([fence('0 ft', '24 ft', { buildUp: rails({}) })], { inventory })
    expect(findingsOf(found)).toEqual([])
    expect(found.cutJobs[0]?.inventory).toMatchObject([{ index: 0, count: 4 }])
  })

  test('a piece at hand of another size fits no job', () => {
    const inventory = [{ outside: '2 in', length: '13 ft' }]
    expect(takeOffOf([fence('0 ft', '24 ft')], { inventory }).cutJobs[0]?.inventory).toEqual([])
  })
})

describe('a gate', () => {
  const buildUp = {
    clearances: { hinge: '3/4 in', latch: '1/4 in', ground: '2 in' },
    frame: { shape: 'round', outside: '1 in', wall: '0.1 in', material: 'steel' },
    brace: 'compression',
    hinges: { perLeaf: '2', apart: '4 ft' },
  }
  const withGate = (more: Record<string, unknown> = {}, ground: Record<string, unknown> = {}) =>
    takeOffOf([fence('0 ft', '40 ft')], {
      gates: [gateAt('20 ft', '4 ft', { opens: 'toward household a', buildUp: { ...buildUp, ...more } })],
      ...ground,
    })

  test('has a leaf as wide as the opening less its clearances, as high as the fence less the gap below', () => {
    const leaf = withGate().gates[0]?.leaf
    expect([inches(leaf?.width), inches(leaf?.height)]).toEqual([47, 70])
  })

  test('of two leaves has two hinge gaps and one between the leaves: (48 − 2 × ¾ − 1) ÷ 2 = 22¾ in', () => {
    const leaf = withGate({ leaves: '2', clearances: { ...buildUp.clearances, middle: '1 in' } }).gates[0]
      ?.leaf
    expect(inches(leaf?.width)).toBe(22.75)
  })

  test('has a frame of its perimeter and a brace from corner to corner inside: √(45² + 68²) = 81.54 in', () => {
    const frame = withGate().gates[0]?.frame
    expect(inches(frame?.perimeter)).toBe(234)
    expect(inches(frame?.brace?.length)).toBeCloseTo(Math.hypot(45, 68), 4)
  })

  // 10.69014 · (1 − 0.1) · 0.1 = 0.96211 lb/ft; (234 + 81.54) in of it are 25.30 lb, times 47 in ÷ 2 = 49.55 lb ft.
  test('pulls at its hinges by its weight times half its width', () => {
    const frame = withGate().gates[0]?.frame
    expect((frame?.kilograms ?? 0) / 0.45359237).toBeCloseTo(25.298, 2)
    expect((frame?.pull?.newtonMetres ?? 0) / 4.4482216152605 / 0.3048).toBeCloseTo(49.54, 1)
    expect((frame?.pull?.newtonsAtHinge ?? 0) / 4.4482216152605).toBeCloseTo(49.54 / 4, 2)
  })

  test('has no weight while that of its infill is not known', () => {
    expect(withGate({ infill: [{ kind: 'panel' }] }).gates[0]?.frame?.kilograms).toBeUndefined()
  })

  test('carries a header over both posts, and they reach up under it', () => {
    const found = withGate({ header: { ...pipe, clear: '8 ft' } })
    // Opening of 48 in and two posts of 2⅜ in.
    expect(inches(found.gates[0]?.leaf.header?.length)).toBe(52.75)
    const jamb = found.posts.find(({ post }) => post.kind === 'gate')
    // 36 in in the ground, 8 ft clear, the header's 2⅜ in less 1¾ in of saddle.
    expect(sameLength(jamb?.piece.length, '11 ft 5/8 in')).toBe(true)
  })

  test('a header lower than the leaf is found', () => {
    expect(findingsOf(withGate({ header: { ...pipe, clear: '5 ft' } }))).toContain(
      'gates[0].buildUp.header.clear: header-below-leaf',
    )
  })

  test('that opens uphill by more than it clears is found', () => {
    const rising = (gradeA: string) => ({
      line: { stations: [{ at: '0 ft', gradeA, gradeB: '0 in', gradeFence: '0 in' }] },
    })
    expect(findingsOf(withGate({}, rising('2 in')))).toEqual([])
    expect(findingsOf(withGate({}, rising('3 in')))).toEqual(['gates[0].opens: swings-uphill'])
  })

  test.each([
    ['a', '2 in', 'a'],
    ['b', '2 in', 'both'],
    ['b', '50 in', 'b'],
  ])(
    'with the fence on the land of %s, %s from the line, it swings over the land of %s',
    (side, distance, over) => {
      const stations = [
        { at: '0 ft', setback: { side, distance } },
        { at: '40 ft', setback: { side, distance } },
      ]
      expect(withGate({}, { line: { stations } }).gates[0]?.leaf.swings[0]?.over).toBe(over)
    },
  )

  test('whose clearances leave nothing is found', () => {
    expect(findingsOf(withGate({ clearances: { hinge: '3 ft', latch: '1 ft', ground: '2 in' } }))).toContain(
      'gates[0].buildUp.clearances: leaf-nothing-left',
    )
  })
})
