import { describe, expect, test } from 'vitest'
import { feet, fence, findingsOf, gateAt, inches, steelBuildUp, takeOffOf } from './madeFence.ts'

/** Household b's ground lies 2 ft below a's over the whole line. */
const terrace = {
  stations: [
    { at: '0 ft', gradeA: '2 ft', gradeB: '0 ft', gradeFence: '2 ft' },
    { at: '24 ft', gradeA: '2 ft', gradeB: '0 ft', gradeFence: '2 ft' },
  ],
}

function limited(...limits: Record<string, unknown>[]) {
  return { line: { ...terrace, limits } }
}

describe('the height that each household sees', () => {
  test('a fence of 6 ft on a terrace of 2 ft is 8 ft high from below', () => {
    const { heights } = takeOffOf([fence('0 ft', '24 ft')], { line: terrace })
    expect(heights.map(({ a, b }) => [feet(a), feet(b)])).toEqual(heights.map(() => [6, 8]))
    // Two stations and four posts.
    expect(heights).toHaveLength(6)
  })

  test('measured from the lower ground it is 4 ft high from above', () => {
    const low = fence('0 ft', '24 ft', { height: { agreed: '6 ft', measuredFrom: 'lower' } })
    const { heights } = takeOffOf([low], { line: terrace })
    expect(heights.map(({ a, b }) => [feet(a), feet(b)])).toEqual(heights.map(() => [4, 6]))
  })

  test('is known without a build-up too, from what is agreed', () => {
    const plain = fence('0 ft', '24 ft', { buildUp: undefined })
    expect(takeOffOf([plain], { line: terrace }).heights.map(({ b }) => feet(b))).toEqual([8, 8])
  })

  test('between two posts the top runs straight, however the ground lies', () => {
    // A hump of 1 ft in the middle of a bay of 8 ft: the rail passes 6 ft above the posts' ground.
    const stations = ['0 ft', '4 ft', '8 ft'].map((at) => {
      const height = at === '4 ft' ? '1 ft' : '0 ft'
      return { at, gradeA: height, gradeB: height, gradeFence: height }
    })
    const { heights } = takeOffOf([fence('0 ft', '8 ft')], { line: { stations } })
    const hump = heights.find(({ place }) => 'station' in place && place.station === 1)
    expect(feet(hump?.a)).toBe(5)
  })

  test('where two stepped bays meet, the higher one counts', () => {
    const ground = (height: string) => ({ gradeA: height, gradeB: height, gradeFence: height })
    const line = {
      stations: [
        { at: '0 ft', ...ground('0 in') },
        { at: '16 ft', ...ground('16 in') },
      ],
    }
    const stepped = fence('0 ft', '16 ft', { buildUp: { ...steelBuildUp, slope: 'stepped' } })
    const { heights } = takeOffOf([stepped], { line })
    const posts = heights.filter(({ place }) => 'post' in place)
    expect(posts.map(({ a }) => inches(a))).toEqual([80, 80, 72])
  })
})

describe('limits that households entered', () => {
  test('the place that exceeds one most is found, with whose ground, the height and who said so', () => {
    const found = takeOffOf(
      [fence('0 ft', '24 ft')],
      limited({
        from: '0 ft',
        to: '24 ft',
        limit: '7 ft',
        measuredFrom: 'b',
        saidBy: 'permit office',
        on: '2027-02-10',
      }),
    )
    expect(found.findings).toHaveLength(1)
    expect(found.findings[0]).toMatchObject({
      path: 'line.limits[0]',
      kind: 'over-limit',
      from: 'b',
      saidBy: 'permit office',
    })
    const [over] = found.findings
    expect(over && 'height' in over ? feet(over.height) : 0).toBe(8)
  })

  test.each([
    ['a', '6 ft', []],
    ['a', '5 ft 11 in', ['line.limits[0]: over-limit']],
    ['higher', '6 ft', []],
    ['lower', '7 ft 11 in', ['line.limits[0]: over-limit']],
    ['lower', '8 ft', []],
    ['', '7 ft', ['line.limits[0]: over-limit']],
  ])('from the ground "%s", a limit of %s', (measuredFrom, limit, findings) => {
    expect(findingsOf(takeOffOf([fence('0 ft', '24 ft')], limited({ limit, measuredFrom })))).toEqual(
      findings,
    )
  })

  test('hold within their zone only, ends included', () => {
    const low = fence('0 ft', '12 ft', { height: { agreed: '3 ft', measuredFrom: 'a' } })
    const zone = (from: string, to: string) =>
      findingsOf(
        takeOffOf([low, fence('12 ft', '24 ft')], limited({ from, to, limit: '4 ft', measuredFrom: 'a' })),
      )
    expect(zone('0 ft', '11 ft 11 in')).toEqual([])
    expect(zone('0 ft', '12 ft')).toEqual(['line.limits[0]: over-limit'])
  })

  test('an end of a zone between two posts is looked at too', () => {
    const steep = {
      stations: [
        { at: '0 ft', gradeA: '0 ft', gradeB: '0 ft', gradeFence: '0 ft' },
        { at: '4 ft', gradeA: '-2 ft', gradeB: '0 ft', gradeFence: '0 ft' },
        { at: '8 ft', gradeA: '0 ft', gradeB: '0 ft', gradeFence: '0 ft' },
      ],
    }
    const limits = [{ from: '1 ft', to: '3 ft', limit: '7 ft', measuredFrom: 'a' }]
    const found = takeOffOf([fence('0 ft', '8 ft')], { line: { ...steep, limits } })
    expect(findingsOf(found)).toEqual(['line.limits[0]: over-limit'])
    // At 3 ft the ground of a lies 1½ ft down.
    const [over] = found.findings
    expect(over && 'height' in over ? feet(over.height) : 0).toBe(7.5)
  })

  test('without a figure are found as missing', () => {
    expect(findingsOf(takeOffOf([fence('0 ft', '24 ft')], limited({ from: '0 ft' })))).toEqual([
      'line.limits[0].limit: missing',
    ])
  })
})

test('a gate between two sections keeps the height of the fence beside it', () => {
  const found = takeOffOf([fence('0 ft', '10 ft'), fence('14 ft', '24 ft')], {
    line: terrace,
    gates: [gateAt('12 ft', '4 ft')],
  })
  const jambs = found.heights.filter(({ place }) => 'post' in place)
  expect(jambs.map(({ a }) => feet(a))).toEqual(jambs.map(() => 6))
})
