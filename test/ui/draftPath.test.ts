import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import {
  getAt,
  insertAt,
  listAt,
  moveAt,
  removeAt,
  setAt,
  stepsOf,
  textAt,
} from '../../app/ui/draft/draftPath.ts'

const draft = {
  name: 'Lane to the gates',
  share: { materials: { principle: 'percent', a: '60', b: '40' } },
  materials: [{ what: 'pipe' }, { what: 'mesh' }, { what: 'cement' }],
}

describe('a path', () => {
  test('is read into keys and places', () => {
    expect(stepsOf('sections[10].share.materials.a')).toEqual(['sections', 10, 'share', 'materials', 'a'])
    expect(stepsOf('[0].what')).toEqual([0, 'what'])
    expect(stepsOf('grid[1][2]')).toEqual(['grid', 1, 2])
  })

  test('that is empty means the whole draft', () => {
    expect(stepsOf('')).toEqual([])
    expect(getAt(draft, '')).toBe(draft)
    expect(setAt(draft, '', 'else')).toBe('else')
  })

  test.each(['a..b', 'a[', 'a[x]', 'a[01]', 'a[0]b', 'a.', 'a]'])('that is none is refused: %s', (path) => {
    expect(() => stepsOf(path)).toThrow(path)
  })
})

describe('reading', () => {
  test('finds what stands there', () => {
    expect(getAt(draft, 'share.materials.a')).toBe('60')
    expect(getAt(draft, 'materials[1].what')).toBe('mesh')
  })

  test.each([
    'labour[0].hours',
    'share.labour.principle',
    'name.first',
    'materials.length',
    'materials[7]',
    'toString',
  ])('finds nothing where nothing stands: %s', (path) => {
    expect(getAt(draft, path)).toBeUndefined()
  })

  test('as text gives an empty text for a missing value', () => {
    expect(textAt(draft, 'share.labour.a')).toBe('')
    expect(textAt({ count: 4 }, 'count')).toBe('4')
    expect(textAt(draft, 'materials')).toBe('')
  })

  test('as a list gives an empty list where there is none', () => {
    expect(listAt(draft, 'labour')).toEqual([])
    expect(listAt(draft, 'name')).toEqual([])
  })
})

describe('setting', () => {
  test('changes one place and shares the rest with the old draft', () => {
    const next = setAt(draft, 'materials[1].what', 'wire') as typeof draft
    expect(next.materials).toEqual([{ what: 'pipe' }, { what: 'wire' }, { what: 'cement' }])
    expect(next.share).toBe(draft.share)
    expect(next.materials[0]).toBe(draft.materials[0])
    expect(draft.materials[1]).toEqual({ what: 'mesh' })
  })

  test('makes the objects and lists that are missing on the way', () => {
    expect(setAt({}, 'a.b[0].c', 'x')).toEqual({ a: { b: [{ c: 'x' }] } })
    expect(setAt({ a: null }, 'a.b', 'x')).toEqual({ a: { b: 'x' } })
  })

  test('adds at the end of a list and leaves no gap in one', () => {
    expect(setAt({ a: ['x'] }, 'a[1]', 'y')).toEqual({ a: ['x', 'y'] })
    expect(() => setAt({ a: ['x'] }, 'a[2]', 'y')).toThrow(RangeError)
  })

  test('reaches no prototype', () => {
    const next = setAt({}, '__proto__.polluted', 'x')
    expect(({} as Record<string, unknown>).polluted).toBeUndefined()
    expect(Object.getPrototypeOf(next)).toBe(Object.prototype)
  })
})

describe('removing', () => {
  test('takes a list entry out and closes up', () => {
    expect(listAt(removeAt(draft, 'materials[0]'), 'materials')).toEqual([
      { what: 'mesh' },
      { what: 'cement' },
    ])
  })

  test('takes a key off, also one that holds undefined', () => {
    expect(removeAt({ a: { b: 'x', c: 'y' } }, 'a.b')).toEqual({ a: { c: 'y' } })
    expect(Object.keys(removeAt({ a: undefined }, 'a') as object)).toEqual([])
  })

  test('leaves the draft itself where there is nothing to remove', () => {
    expect(removeAt(draft, 'labour[0]')).toBe(draft)
    expect(removeAt(draft, 'materials[3]')).toBe(draft)
    expect(removeAt(draft, 'share.labour')).toBe(draft)
  })

  test('of the whole draft is refused', () => {
    expect(() => removeAt(draft, '')).toThrow('whole')
  })
})

describe('moving', () => {
  test('carries an entry to its new place', () => {
    const order = (from: number, to: number) =>
      listAt(moveAt(draft, 'materials', from, to), 'materials').map((row) => getAt(row, 'what'))
    expect(order(2, 0)).toEqual(['cement', 'pipe', 'mesh'])
    expect(order(0, 1)).toEqual(['mesh', 'pipe', 'cement'])
  })

  test('leaves the draft itself where a place is not in the list', () => {
    expect(moveAt(draft, 'materials', 0, 3)).toBe(draft)
    expect(moveAt(draft, 'materials', -1, 0)).toBe(draft)
    expect(moveAt(draft, 'materials', 1, 1)).toBe(draft)
  })
})

const key = fc.constantFrom('a', 'b', 'share', 'at')
const place = fc.nat({ max: 0 })
const path = fc
  .array(fc.oneof(key, place), { minLength: 1, maxLength: 5 })
  .map((steps) =>
    steps.map((step, at) => (typeof step === 'number' ? `[${step}]` : at === 0 ? step : `.${step}`)).join(''),
  )

describe('for every path', () => {
  test('what was set is read back', () => {
    fc.assert(
      fc.property(path, fc.string(), (at, value) => {
        expect(getAt(setAt({}, at, value), at)).toBe(value)
      }),
    )
  })

  test('what was removed and put back is as before', () => {
    fc.assert(
      fc.property(fc.array(fc.string(), { minLength: 1 }), fc.nat(), (rows, pick) => {
        const at = pick % rows.length
        const without = removeAt({ rows }, `rows[${at}]`)
        expect(insertAt(without, 'rows', at, rows[at])).toEqual({ rows })
      }),
    )
  })

  test('a move and its way back change nothing, and no entry is lost', () => {
    fc.assert(
      fc.property(fc.array(fc.nat(), { minLength: 1 }), fc.nat(), fc.nat(), (rows, one, other) => {
        const from = one % rows.length
        const to = other % rows.length
        const moved = moveAt({ rows }, 'rows', from, to)
        expect(moveAt(moved, 'rows', to, from)).toEqual({ rows })
        expect(listAt(moved, 'rows')[to]).toBe(rows[from])
      }),
    )
  })
})
