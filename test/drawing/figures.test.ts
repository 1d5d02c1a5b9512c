import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import type { BarsFigure, StepsFigure } from '../../lib/core/figures/figure.ts'
import type { Box } from '../../lib/drawing/drawing.ts'
import { type DrawnFigure, figureDrawing } from '../../lib/drawing/figures/figureDrawing.ts'
import { patternMarks } from '../../lib/drawing/patternMarks.ts'
import { figureWords } from '../../lib/words/figures/figureWords.ts'
import { outside, overlapping, textsOf } from './drawnBoxes.ts'

const looks = [
  { width: 300, text: 13, words: figureWords },
  { width: 660, text: 13, words: figureWords },
  { width: 504, text: 8, words: figureWords },
]
const names = { a: 'no. 12', b: 'no. 14' }
const money = { kind: 'money', currency: 'USD' } as const

const amount = fc.oneof(
  fc.constant(0),
  fc.integer({ min: -5000, max: 5000 }),
  fc.integer({ min: -2_000_000_000, max: 2_000_000_000 }),
  fc.constantFrom(1, -1, 9e15, 123_456_789_012_345),
)
const parts = fc.record({ a: amount, b: amount })

const anyBars: fc.Arbitrary<BarsFigure> = fc.record({
  kind: fc.constant('bars'),
  unit: fc.constantFrom({ kind: 'money', currency: 'USD' } as const, { kind: 'hours' } as const),
  names: fc.record({ a: fc.string({ maxLength: 60 }), b: fc.constantFrom('no. 14', 'Mörike und Söhne') }),
  groups: fc.array(
    fc.record({
      title: fc.oneof(fc.constantFrom('Section 2: Along the gardens', 'x'.repeat(90)), fc.string()),
      bars: fc.array(
        fc.record({
          parts,
          text: fc.constantFrom('$9.00 planned', '$123,456,789,012.00 planned', ''),
          thin: fc.boolean(),
        }),
        { minLength: 1, maxLength: 3 },
      ),
    }),
    { maxLength: 6 },
  ),
})

const day = fc
  .date({ min: new Date('0001-01-01'), max: new Date('9999-12-31'), noInvalidDate: true })
  .map((date) => date.toISOString().slice(0, 10))
const closeDay = fc.integer({ min: 0, max: 400 }).map((after) => new Date(Date.UTC(2027, 2, 2 + after)))
const days = fc.oneof(
  fc.array(day, { minLength: 1, maxLength: 8 }),
  fc.array(
    closeDay.map((date) => date.toISOString().slice(0, 10)),
    { minLength: 1, maxLength: 120 },
  ),
)

const anySteps: fc.Arbitrary<StepsFigure> = fc
  .record({
    days,
    dues: fc.array(fc.record({ on: day, met: fc.boolean() }), { maxLength: 2 }),
    against: amount,
  })
  .chain(({ days: typed, dues, against }) => {
    const ordered = [...new Set(typed)].toSorted()
    return fc.array(parts, { minLength: ordered.length, maxLength: ordered.length }).map((sums) => ({
      kind: 'steps' as const,
      unit: money,
      steps: ordered.map((on, at) => ({ on, parts: sums[at] ?? { a: 0, b: 0 } })),
      against,
      dues,
      texts: { a: 'no. 12: $1.00', b: 'no. 14', both: 'both', against: 'planned', due: 'due', met: 'paid' },
    }))
  })

function boxesOf(drawn: DrawnFigure, household: 'a' | 'b', height: number): Box[] {
  return drawn.shapes.flatMap((shape) =>
    shape.kind === 'patterned' && shape.household === household
      ? shape.boxes.filter((box) => Math.abs(box.height - height) < 0.01)
      : [],
  )
}

const near = (figure: number) => expect.closeTo(figure, 6)

const steps = (
  sums: readonly (readonly [on: string, a: number, b: number])[],
  more: Partial<StepsFigure> = {},
) =>
  ({
    kind: 'steps',
    unit: money,
    steps: sums.map(([on, a, b]) => ({ on, parts: { a, b } })),
    against: 100_000,
    dues: [],
    texts: { a: 'no. 12', b: 'no. 14', both: 'both', against: 'planned', due: 'due', met: 'paid' },
    ...more,
  }) satisfies StepsFigure

describe.each(looks)('figures $width units wide', (look) => {
  test('stay inside their box with no two texts on one another, whatever is drawn', () => {
    fc.assert(
      fc.property(fc.oneof(anyBars, anySteps), (figure) => {
        const drawn = figureDrawing(figure, look)
        expect(outside(drawn)).toEqual([])
        expect(overlapping(drawn)).toEqual([])
      }),
    )
  })

  test('draw every bar as long as its amount, both households on one scale', () => {
    fc.assert(
      fc.property(
        fc.array(fc.tuple(fc.nat(90_000), fc.nat(90_000)), { minLength: 1, maxLength: 8 }),
        (made) => {
          const groups = [[50_000, 20_000] as const, ...made].map(([a, b], at) => ({
            title: `Section ${at + 1}`,
            bars: [{ parts: { a, b }, text: '' }],
          }))
          const drawn = figureDrawing({ kind: 'bars', unit: money, names, groups }, look)
          const [a, b] = (['a', 'b'] as const).map((household) => boxesOf(drawn, household, look.text))
          const unit = (a?.[0]?.width ?? 0) / 50_000
          for (const [household, boxes] of [['a', a] as const, ['b', b] as const]) {
            const amounts = groups
              .flatMap(({ bars }) => bars.map((bar) => bar.parts[household]))
              .filter(Boolean)
            expect(boxes?.length).toBe(amounts.length)
            boxes?.forEach(({ width }, at) => {
              expect(width).toBeCloseTo((amounts[at] ?? 0) * unit, 6)
            })
          }
        },
      ),
    )
  })

  test('an axis of amounts has a round place at nothing and one at or above the longest bar', () => {
    const groups = [{ title: 'Gate', bars: [{ parts: { a: 91_341, b: 20_000 }, text: '' }] }]
    const drawn = figureDrawing({ kind: 'bars', unit: money, names, groups }, look)
    const ticks = textsOf(drawn)
      .filter(({ ink }) => ink === 'quiet')
      .map(({ text }) => text)
    expect(ticks[0]).toBe('$0')
    expect(Number(ticks.at(-1)?.replace(/[$,]/g, ''))).toBeGreaterThanOrEqual(1113.41)
  })

  test('what is below nothing lies on the other side of the line', () => {
    const groups = [{ title: 'Gate', bars: [{ parts: { a: 500, b: -300 }, text: '' }] }]
    const drawn = figureDrawing({ kind: 'bars', unit: money, names, groups }, look)
    const [[a], [b]] = [boxesOf(drawn, 'a', look.text), boxesOf(drawn, 'b', look.text)]
    expect((b?.x ?? 0) + (b?.width ?? 0)).toBeCloseTo(a?.x ?? -1, 6)
    expect((b?.width ?? 0) / (a?.width ?? 1)).toBeCloseTo(0.6, 6)
  })

  test('steps go up where something was spent, stand on one another, and end on the last day told', () => {
    const drawn = figureDrawing(
      steps([
        ['2027-03-02', 20_000, 0],
        ['2027-03-20', 20_000, 30_000],
        ['2027-04-01', 50_000, 30_000],
      ]),
      look,
    )
    // The key has a box of its own, before the steps.
    const [a, b] = (['a', 'b'] as const).map((household) =>
      drawn.shapes.flatMap((shape) =>
        shape.kind === 'patterned' && shape.household === household ? [shape.boxes] : [],
      ),
    )
    const [ofA = [], ofB = []] = [a?.at(-1), b?.at(-1)]
    expect(ofA.map(({ height }) => height / (ofA[0]?.height ?? 1))).toEqual([1, 1, 2.5].map(near))
    expect(ofB.map(({ height }) => height / (ofA[0]?.height ?? 1))).toEqual([1.5, 1.5].map(near))
    expect(ofB.map(({ x, y, height }) => [x, y + height])).toEqual(
      ofA.slice(1).map(({ x, y }) => [near(x), near(y)]),
    )
    expect((ofA[0]?.x ?? 0) + (ofA[0]?.width ?? 0)).toBeCloseTo(ofA[1]?.x ?? 0, 6)
    const line = drawn.shapes.flatMap((shape) =>
      shape.kind === 'polyline' && shape.points.length > 2 ? [shape.points] : [],
    )[0]
    expect(line?.map(({ x }) => x)).toEqual(line?.map(({ x }) => x).toSorted((one, other) => one - other))
    for (const [at, point] of (line ?? []).entries()) {
      const before = line?.[at - 1]
      if (before) expect(point.x === before.x || point.y === before.y).toBe(true)
    }
  })

  test('one single day, and days a thousand years apart, have their days named', () => {
    const named = (figure: StepsFigure) =>
      textsOf(figureDrawing(figure, look))
        .map(({ text }) => text)
        .filter((text) => /^(\d+ )?([A-Z][a-z]+ )?\d{1,4}$/.test(text))
    const single = named(steps([['2027-03-02', 20_000, 0]]))
    expect(single.length).toBeGreaterThan(0)
    expect(single.every((text) => text.endsWith('March 2027'))).toBe(true)
    const years = named(
      steps([
        ['1027-03-02', 1, 0],
        ['2027-03-02', 2, 0],
      ]),
    )
    expect(years.length).toBeGreaterThan(1)
    expect(years.every((text) => /^\d{2}00$/.test(text))).toBe(true)
  })

  test('a day on which something is due stands at its place, filled once it was paid', () => {
    const drawn = figureDrawing(
      steps([['2027-03-02', 20_000, 0]], {
        dues: [
          { on: '2027-04-02', met: true },
          { on: '2027-05-02', met: false },
        ],
      }),
      look,
    )
    const stakes = drawn.shapes.flatMap((shape) =>
      shape.kind === 'polygon' && shape.points.length === 5
        ? [{ fill: shape.fill, x: shape.points[3]?.x ?? 0 }]
        : [],
    )
    // The last two stand on the axis, the first two in the key.
    expect(stakes.slice(-2).map(({ fill }) => fill)).toEqual(['ink', 'sheet'])
    expect(stakes.at(-2)?.x).toBeLessThan(stakes.at(-1)?.x ?? 0)
  })
})

describe('the patterns of the households', () => {
  const box = fc.record({
    x: fc.double({ min: 0, max: 300, noNaN: true }),
    y: fc.double({ min: 0, max: 300, noNaN: true }),
    width: fc.double({ min: 0.1, max: 200, noNaN: true }),
    height: fc.double({ min: 0.1, max: 200, noNaN: true }),
  })

  test('no mark leaves its box', () => {
    fc.assert(
      fc.property(fc.constantFrom('a', 'b'), box, (household, one) => {
        const { lines, dots } = patternMarks({ kind: 'patterned', household, boxes: [one] })
        const inside = ({ x, y }: { x: number; y: number }, by: number) =>
          x >= one.x + by - 1e-6 &&
          x <= one.x + one.width - by + 1e-6 &&
          y >= one.y + by - 1e-6 &&
          y <= one.y + one.height - by + 1e-6
        expect(lines.every(({ from, to }) => inside(from, 0) && inside(to, 0))).toBe(true)
        expect(dots.every(({ centre, radius }) => inside(centre, radius))).toBe(true)
      }),
    )
  })

  test('two boxes side by side have the marks of the one that they make together', () => {
    const whole = { x: 10, y: 20, width: 120, height: 40 }
    const halves = [
      { ...whole, width: 47 },
      { ...whole, x: 57, width: 73 },
    ]
    const dots = (boxes: readonly Box[]) =>
      patternMarks({ kind: 'patterned', household: 'b', boxes }).dots.map(
        ({ centre }) => `${centre.x} ${centre.y}`,
      )
    expect(dots(halves).toSorted()).toEqual(dots([whole]).toSorted())
    const length = (boxes: readonly Box[]) =>
      patternMarks({ kind: 'patterned', household: 'a', boxes }).lines.reduce(
        (sum, { from, to }) => sum + to.x - from.x,
        0,
      )
    expect(length(halves)).toBeCloseTo(length([whole]), 6)
  })
})
