import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { longestStrokePath, strokeBox, strokePathOf, strokesOf } from '../../app/ui/draft/strokePath.ts'

describe('a drawn signature', () => {
  test('is written with whole numbers, one M for each stroke', () => {
    const path = strokePathOf([
      [
        { x: 10.4, y: 20.6 },
        { x: 30, y: 40 },
      ],
      [
        { x: 100, y: 50 },
        { x: 101, y: 51 },
      ],
    ])
    expect(path).toBe('M10 21L30 40M100 50L101 51')
  })

  test('keeps a dot as a stroke of no length', () => {
    expect(strokePathOf([[{ x: 5, y: 6 }]])).toBe('M5 6L5 6')
  })

  test('stays inside the box', () => {
    expect(
      strokePathOf([
        [
          { x: -3, y: 700 },
          { x: 900, y: -1 },
        ],
      ]),
    ).toBe('M0 200L600 0')
  })

  test('of nothing is an empty text', () => {
    expect(strokePathOf([])).toBe('')
    expect(strokesOf('')).toEqual([])
  })

  test('leaves points out evenly where it grows too long, and keeps both ends', () => {
    const long = Array.from({ length: 9000 }, (_, at) => ({ x: at % 600, y: (at * 7) % 200 }))
    const path = strokePathOf([long])
    expect(path.length).toBeLessThanOrEqual(longestStrokePath)
    expect(path.length).toBeGreaterThan(longestStrokePath / 3)
    expect(path.startsWith('M0 0')).toBe(true)
    expect(path.endsWith(`L${8999 % 600} ${(8999 * 7) % 200}`)).toBe(true)
  })

  test('of too many strokes keeps the first that fit', () => {
    const dots = Array.from({ length: 5000 }, (_, at) => [{ x: at % 600, y: at % 200 }])
    const path = strokePathOf(dots)
    expect(path.length).toBeLessThanOrEqual(longestStrokePath)
    expect(strokesOf(path)?.length).toBeGreaterThan(1000)
  })

  test.each([
    'M1 2',
    'M1 2L3',
    'm1 2l3 4',
    'M1 2L3 4Z',
    'M1 2L3 4<script>',
    'M1000 2L3 4',
    'M601 0L3 4',
    'M3 4L0 201',
    ' ',
  ])('that was not written here is not read: %s', (text) => {
    expect(strokesOf(text)).toBeNull()
  })

  test('reads back as it was written, whatever was drawn', () => {
    const point = fc.record({
      x: fc.double({ min: -10, max: strokeBox.width + 10, noNaN: true }),
      y: fc.double({ min: -10, max: strokeBox.height + 10, noNaN: true }),
    })
    fc.assert(
      fc.property(fc.array(fc.array(point, { maxLength: 20 }), { maxLength: 8 }), (strokes) => {
        const path = strokePathOf(strokes)
        const back = strokesOf(path)
        expect(back).not.toBeNull()
        expect(strokePathOf(back ?? [])).toBe(path)
      }),
    )
  })
})
