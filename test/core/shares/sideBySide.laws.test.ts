import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import type { Notebook } from '../../../lib/core/agreement/notebook.ts'
import { itemSideBySide, wholeSideBySide } from '../../../lib/core/shares/sideBySide.ts'
import { type Statement, statementOf } from '../../../lib/core/shares/statement.ts'
import { randomNotebook, readMade } from '../randomNotebook.ts'

function onEach(check: (notebook: Notebook, statement: Statement) => void): void {
  fc.assert(
    fc.property(randomNotebook, (document) => {
      const notebook = readMade(document)
      const statement = statementOf(notebook)
      if (!statement.ok) throw new Error('a made notebook is refused')
      check(notebook, statement.value)
    }),
    { numRuns: 150 },
  )
}

const onEachItem = (
  check: (found: NonNullable<ReturnType<typeof itemSideBySide>>, item: Statement['items'][number]) => void,
) =>
  onEach((notebook, statement) => {
    for (const item of statement.items) {
      const found = itemSideBySide(notebook, item.id)
      if (found === undefined) throw new Error('there is such an item')
      check(found, item)
    }
  })

describe('for every item', () => {
  test('every way that can be used adds to the item’s total exactly', () => {
    onEachItem((found, item) => {
      for (const { shares } of found.ways) expect(shares.a + shares.b).toBe(item.total)
    })
  })

  test('what is chosen is the statement’s own figure, and so is the row that says it is chosen', () => {
    onEachItem((found, item) => {
      expect(found.chosen).toEqual({ ok: true, value: item })
      for (const { shares } of found.ways.filter(({ chosen }) => chosen)) expect(shares).toEqual(item)
    })
  })

  test('every way is told of once, as usable or with its reason', () => {
    onEachItem((found) => {
      const told = [...found.ways, ...found.unusable].map(({ way }) => way)
      expect([...told].sort()).toEqual([...new Set(told)].sort())
      expect(told).toHaveLength(9)
    })
  })

  test('the middle lies in the range, no further than a unit from half of its ends, and adds to the total', () => {
    onEachItem(({ range }, item) => {
      if (range === undefined) throw new Error('halves can always be used')
      const { low, high, middle } = range
      expect(middle.a + middle.b).toBe(item.total)
      expect(low.a <= middle.a && middle.a <= high.a).toBe(true)
      expect(high.b <= middle.b && middle.b <= low.b).toBe(true)
      const off = 2n * middle.a - low.a - high.a
      expect(off >= -1n && off <= 1n).toBe(true)
      expect(low.a <= item.a && item.a <= high.a).toBe(true)
    })
  })
})

describe('for the whole fence', () => {
  test('every way adds to the total, the chosen one is the statement’s, and the middle lies in the range', () => {
    onEach((notebook, statement) => {
      const whole = wholeSideBySide(notebook)
      if (!whole.ok) throw new Error('a made notebook is refused')
      const { ways, chosen, range, total } = whole.value
      expect(chosen).toEqual(statement)
      for (const { asked } of ways) expect(asked.a + asked.b).toBe(total)
      const { a, b } = statement.asked
      for (const one of ways.filter((way) => way.chosen)) expect(one.asked).toEqual({ a, b })
      if (range === undefined) throw new Error('what is chosen is always in the range')
      expect(range.low.a <= range.middle.a && range.middle.a <= range.high.a).toBe(true)
      expect(range.low.a <= a && a <= range.high.a).toBe(true)
    })
  })
})
