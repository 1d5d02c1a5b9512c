import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { lengthOf } from '../../../lib/core/amounts/length.ts'
import { compareRatios } from '../../../lib/core/amounts/ratio.ts'
import { layOutBays } from '../../../lib/core/takeoff/bays.ts'
import { nothing, subtractRatios, sumOf } from '../../../lib/core/takeoff/exact.ts'
import { feet } from './madeFence.ts'

function laid(
  to: string,
  spacing: string,
  more: { stock?: string; before?: string[]; after?: string[] } = {},
) {
  const { stock, before = [], after = [] } = more
  return layOutBays(nothing, lengthOf(to), {
    spacing: lengthOf(spacing),
    ...(stock ? { stock: lengthOf(stock) } : {}),
    bracesBefore: before.map(lengthOf),
    bracesAfter: after.map(lengthOf),
  })
}

describe('equal bays', () => {
  // 100 ÷ 8 = 12.5, so 13 bays; 100 ÷ 13 = 7.6923 ft.
  test('100 ft at no more than 8 ft are 13 bays of 7.6923 ft on 14 posts', () => {
    const layout = laid('100 ft', '8 ft')
    expect(layout.bays).toBe(13)
    expect(layout.places).toHaveLength(14)
    expect(feet(layout.bay)).toBeCloseTo(7.6923, 4)
  })

  test('a run that is a whole number of spacings has just so many: 96 ft are 12 bays of 8 ft', () => {
    const layout = laid('96 ft', '8 ft')
    expect(layout.bays).toBe(12)
    expect(feet(layout.bay)).toBe(8)
  })

  test('a hair more than 96 ft is 13 bays, since lengths are exact', () => {
    expect(laid('96 ft 1/64 in', '8 ft').bays).toBe(13)
  })

  test('a run shorter than the spacing is one bay', () => {
    expect(laid('3 ft', '8 ft').places.map(feet)).toEqual([0, 3])
  })
})

describe('bays laid out to stock', () => {
  test('25 ft with stock of 10 ft are two bays of 10 ft and one of 5 ft', () => {
    expect(laid('25 ft', '10 ft', { stock: '10 ft' }).places.map(feet)).toEqual([0, 10, 20, 25])
  })

  test('stock of 21 ft with posts at no more than 8 ft is divided into three bays of 7 ft, so that joints lie over posts', () => {
    const layout = laid('50 ft', '8 ft', { stock: '21 ft' })
    expect(feet(layout.bay)).toBeCloseTo(7, 12)
    expect(layout.places).toHaveLength(9)
    expect(feet(layout.remainder)).toBeCloseTo(1, 12)
  })

  test('no remainder where the stock comes out even', () => {
    expect(laid('30 ft', '10 ft', { stock: '10 ft' }).remainder).toBeUndefined()
  })
})

describe('brace assemblies', () => {
  test('stand inside both ends of the run, and the rest is laid out between them', () => {
    const layout = laid('40 ft', '12 ft', { before: ['8 ft'], after: ['8 ft'] })
    expect(layout.places.map(feet)).toEqual([0, 8, 20, 32, 40])
    expect(layout.bays).toBe(2)
  })

  test('two in a row', () => {
    expect(laid('40 ft', '12 ft', { before: ['8 ft', '8 ft'] }).places.map(feet)).toEqual([0, 8, 16, 28, 40])
  })

  test('that just fill the run leave no other bay', () => {
    const layout = laid('16 ft', '12 ft', { before: ['8 ft'], after: ['8 ft'] })
    expect(layout.places.map(feet)).toEqual([0, 8, 16])
    expect(layout.bays).toBe(0)
  })

  test('that do not fit are left out', () => {
    const layout = laid('12 ft', '12 ft', { before: ['8 ft'], after: ['8 ft'] })
    expect(layout.bracesFit).toBe(false)
    expect(layout.places.map(feet)).toEqual([0, 12])
  })
})

describe('laws', () => {
  const sixteenths = (min: number, max: number) => fc.integer({ min, max }).map((count) => `${count}/16 in`)

  test('bays add up to the run exactly, and none is wider than the spacing', () => {
    fc.assert(
      fc.property(
        sixteenths(16, 60_000),
        sixteenths(200, 4000),
        fc.option(sixteenths(200, 6000)),
        (run, spacing, stock) => {
          const { places } = laid(run, spacing, stock === null ? {} : { stock })
          const bays = places.slice(1).map((place, index) => subtractRatios(place, places[index] ?? nothing))
          expect(compareRatios(sumOf(bays), lengthOf(run))).toBe(0)
          for (const bay of bays) {
            expect(compareRatios(bay, lengthOf(spacing))).toBeLessThanOrEqual(0)
            expect(bay.over > 0n).toBe(true)
          }
        },
      ),
    )
  })

  test('equal bays are as few as the spacing allows', () => {
    fc.assert(
      fc.property(sixteenths(16, 60_000), sixteenths(200, 4000), (run, spacing) => {
        const { bays } = laid(run, spacing)
        const { over, under } = lengthOf(spacing)
        expect(compareRatios({ over: over * BigInt(bays - 1), under }, lengthOf(run))).toBeLessThan(0)
      }),
    )
  })
})
