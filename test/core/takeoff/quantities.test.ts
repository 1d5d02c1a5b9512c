import { describe, expect, test } from 'vitest'
import {
  fence,
  findingsOf,
  gateAt,
  pipe,
  quantityOf,
  steelBuildUp,
  steelPosts,
  takeOffOf,
} from './madeFence.ts'

function built(more: Record<string, unknown>, to = '24 ft', metric = false) {
  return takeOffOf(
    [fence('0 ft', to, { buildUp: { ...steelBuildUp, ...more } })],
    metric ? { units: 'metric' } : {},
  )
}

describe('weights', () => {
  // NPS 2, schedule 40 (ASME B36.10M): 3.66 lb/ft published, 3.6563 by 10.69014(D − t)t.
  test('48 ft of rails of 2⅜ in by 0.154 in weigh 48 × 3.6563 lb', () => {
    const { kilograms } = quantityOf(built({}), 'rails')
    expect((kilograms ?? 0) / 0.45359237).toBeCloseTo(48 * 3.6563, 1)
    expect(Math.abs((kilograms ?? 0) / 0.45359237 / 48 / 3.66 - 1)).toBeLessThan(0.002)
  })

  test('the reclaimed share is by weight: posts of 4 × 8 ft 10¼ in against rails of 48 ft', () => {
    const { weights } = built({ rails: { ...pipe, count: '2', reclaimed: true } })
    expect(weights.reclaimedShare).toBeCloseTo(48 / (48 + 4 * (8 + 10.25 / 12)), 9)
  })

  test('a thing without a known weight is counted as such and in no sum', () => {
    const { weights } = built({ posts: { ...steelPosts, material: 'wood' } })
    expect(weights.unknown).toBe(1)
    expect(weights.kilograms / 0.45359237).toBeCloseTo(48 * 3.6563, 1)
  })
})

describe('concrete', () => {
  const bag = (figure: string) => ({ fill: 'concrete', bagYield: { figure, unit: 'cu ft' } })

  // 12 in × 36 in = 2.35619 ft³ less the post of 2⅜ in, 0.092295 ft³: 2.263900 ft³ a hole (check by hand, πD²h/4).
  test('is the hole less the post: four holes of 2.2639 ft³', () => {
    expect(quantityOf(built({ footing: { fill: 'concrete' } }), 'concrete')).toMatchObject({
      quantity: '9.056',
      unit: 'cu ft',
    })
  })

  // Bag yields as on labels of ASTM C387 concrete. Rounded up for the job: 11 holes are 24.9029 ft³, 41.5 bags of 80 lb.
  test.each([
    ['0.60', '42'],
    ['0.45', '56'],
    ['0.375', '67'],
  ])('eleven holes with bags of %s ft³ take %s bags, not so many for each hole', (figure, bags) => {
    expect(quantityOf(built({ footing: bag(figure) }, '80 ft'), 'concrete')).toMatchObject({
      quantity: bags,
      unit: 'bag',
    })
  })

  // A bed of 6 in in a 12 in hole is 0.392699 ft³.
  test('a gravel bed takes its part of the hole', () => {
    const found = built({ posts: { ...steelPosts, gravel: '6 in' }, footing: { fill: 'concrete' } })
    expect(quantityOf(found, 'gravel').quantity).toBe('1.571')
    expect(quantityOf(found, 'concrete').quantity).toBe(((2.2639 * 4 * 30) / 36).toFixed(3))
  })

  test('posts set in earth take none', () => {
    expect(built({ footing: { fill: 'earth' } }).quantities.some(({ part }) => part === 'concrete')).toBe(
      false,
    )
  })

  test('deeper holes on site take more: 12 in more of one hole is 0.754633 ft³', () => {
    const buildUp = { ...steelBuildUp, footing: { fill: 'concrete' } }
    const found = takeOffOf([fence('0 ft', '24 ft', { buildUp, measured: [{ post: '2', depth: '48 in' }] })])
    expect(quantityOf(found, 'concrete').quantity).toBe('9.81')
  })

  test('in a metric notebook it comes in litres: one hole of 12 in × 36 in less its post is 64.107 L', () => {
    const [steps] = quantityOf(built({ footing: { fill: 'concrete' } }, '24 ft', true), 'concrete').workings
    expect(steps && 'litres' in steps ? steps.litres / 4 : 0).toBeCloseTo(2.2639 * 28.316846592, 2)
  })
})

describe('infill', () => {
  test('rolls: 24 ft and two wraps of 6 in are 25 ft, three rolls of 10 ft with two laps of 4 in', () => {
    const roll = { kind: 'roll', roll: '10 ft', lap: '4 in', wrap: '6 in' }
    const found = quantityOf(built({ infill: [roll] }), 'infill 1')
    expect(found).toMatchObject({ quantity: '3', unit: 'roll' })
    expect(found.workings).toMatchObject([
      { step: 'fence length', runs: 1 },
      { step: 'wraps', runs: 1 },
      { step: 'laps', laps: 2 },
      { step: 'rolls', rolls: 3 },
    ])
  })

  test('by the foot where no roll is said, with waste: 24 ft and 5 percent', () => {
    expect(quantityOf(built({ infill: [{ kind: 'roll', waste: '5' }] }), 'infill 1')).toMatchObject({
      quantity: '25.2',
      unit: 'ft',
    })
  })

  test('panels: three bays of 8 ft with panels of 6 ft take two each', () => {
    expect(quantityOf(built({ infill: [{ kind: 'panel', width: '6 ft' }] }), 'infill 1').quantity).toBe('6')
  })

  // (288 + 1/8) ÷ (5½ + 1/8) = 51.22: n boards have n − 1 gaps.
  test('boards of 5½ in with gaps of ⅛ in: 52 for 24 ft', () => {
    const board = { kind: 'board', width: '5 1/2 in', gap: '1/8 in' }
    expect(quantityOf(built({ infill: [board] }), 'infill 1').quantity).toBe('52')
  })

  // Common practice, no source: 4 in openings take 3 in strips, two from a 6 in coil. 72 ÷ 4 = 18 rows of 24 ft × 1.02.
  test('woven strips: 18 rows of 24 ft, slit in two from the coil', () => {
    const strip = { kind: 'strip', opening: '4 in', width: '3 in', takeUp: '1.02', coilWidth: '6 in' }
    expect(quantityOf(built({ infill: [strip] }), 'infill 1')).toMatchObject({
      quantity: '220.32',
      unit: 'ft',
    })
    expect(quantityOf(built({ infill: [{ ...strip, coil: '100 ft' }] }), 'infill 1')).toMatchObject({
      quantity: '3',
      unit: 'coil',
    })
  })

  test('strips too wide for their coil, a lap as long as its roll and a gap as high as the fence are found', () => {
    const infill = [
      { kind: 'strip', opening: '4 in', width: '7 in', coilWidth: '6 in' },
      { kind: 'roll', roll: '1 ft', lap: '1 ft' },
      { kind: 'board', width: '5 in', ground: '6 ft' },
    ]
    expect(findingsOf(built({ infill })).sort()).toEqual([
      'sections[0].buildUp.infill[0].width: strip-wider-than-coil',
      'sections[0].buildUp.infill[1].lap: lap-longer-than-roll',
      'sections[0].buildUp.infill[2].ground: layer-without-height',
    ])
  })

  test('a weight by area is of the whole layer: 24 ft × 6 ft at 0.5 lb/sq ft are 72 lb', () => {
    const roll = { kind: 'roll', weight: { figure: '0.5', per: 'lb/sq ft' } }
    expect((quantityOf(built({ infill: [roll] }), 'infill 1').kilograms ?? 0) / 0.45359237).toBeCloseTo(72, 9)
  })
})

describe('the rest', () => {
  test('ties: 6 on each of 4 posts and 4 on each of 6 rails', () => {
    expect(quantityOf(built({ ties: { perPost: '6', perRail: '4' } }), 'ties').quantity).toBe('48')
  })

  test('hollow posts that no rail closes take caps', () => {
    expect(built({}).quantities.some(({ part }) => part === 'caps')).toBe(false)
    expect(
      quantityOf(built({ posts: { ...steelPosts, top: 'beside', deduction: '' } }), 'caps').quantity,
    ).toBe('4')
  })

  // 4 posts of 8 ft 10¼ in − 3 ft and 48 ft of rail, 71.417 ft, around π × 2⅜ in: 44.405 ft²; two coats at 100 ft².
  test('paint goes on what stands above the ground', () => {
    const finishes = [{ coverage: '100', coverageUnit: 'sq ft', unit: 'gal', coats: '2' }]
    const area = ((4 * (5 + 10.25 / 12) + 48) * Math.PI * 2.375) / 12
    expect(Number(quantityOf(built({ finishes }), 'finish 1').quantity)).toBeCloseTo((2 * area) / 100, 3)
  })

  test('by length: 24 ft at 10 ft a can', () => {
    const finishes = [{ coverage: '10', coverageUnit: 'ft' }]
    expect(quantityOf(built({ finishes }), 'finish 1').quantity).toBe('2.4')
  })

  test.each([
    ['post', '4'],
    ['bay', '3'],
    ['ft', '24'],
    ['m', '7.315'],
    ['sq ft', '144'],
    ['sq m', '13.378'],
    ['once', '1'],
  ])('a free line for each %s is %s', (basis, quantity) => {
    expect(quantityOf(built({ lines: [{ what: 'x', basis }] }), 'line 1').quantity).toBe(quantity)
  })

  test('a free line with a factor, waste and packs: 3 bays × 102, 5 percent more, in boxes of 350', () => {
    const line = { what: 'screws', basis: 'bay', factor: '102', waste: '5', pack: '350', packUnit: 'box' }
    expect(quantityOf(built({ lines: [line] }), 'line 1')).toMatchObject({ quantity: '1', unit: 'box' })
  })

  test('a free line for each gate counts the gates of the section', () => {
    const buildUp = { ...steelBuildUp, lines: [{ what: 'sign', basis: 'gate' }] }
    const gates = [gateAt('10 ft', '4 ft'), gateAt('30 ft', '4 ft')]
    expect(quantityOf(takeOffOf([fence('0 ft', '40 ft', { buildUp })], { gates }), 'line 1').quantity).toBe(
      '2',
    )
  })
})

describe('sawing and welding', () => {
  const welded = (to: string, more = {}) =>
    built({ rails: { ...pipe, count: '2', welded: true, ...more } }, to).sections[0]?.work

  test('two joints for each rail, each welded once around', () => {
    const work = welded('24 ft')
    expect(work).toMatchObject({ joints: 12, saddles: 4, weepHoles: 10 })
    expect(Number(work?.weldLength.over) / Number(work?.weldLength.under)).toBeCloseTo(
      12 * Math.PI * 60.325,
      4,
    )
  })

  // 100 ft of steel move by 12 × 10⁻⁶ × 55.6 °C × 1200 in = 0.8 in over 100 °F.
  test('100 ft of welded rail move by 0.8 in over 100 °F, and slip joints of ½ in take that in two', () => {
    const heat = welded('100 ft', { slip: '1/2 in' })?.heat
    expect(heat?.fahrenheitRange).toBe('100')
    expect(Number(heat?.movement.over) / Number(heat?.movement.under) / 25.4).toBeCloseTo(0.8, 6)
    expect(heat?.slipJoints).toBe(2)
  })

  test('rails that are not welded ask for none', () => {
    expect(built({}).sections[0]?.work.heat).toBeUndefined()
  })
})
