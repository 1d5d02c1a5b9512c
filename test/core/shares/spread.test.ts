import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { addRatios, multiplyRatios, ratio } from '../../../lib/core/amounts/ratio.ts'
import { sumRatios } from '../../../lib/core/amounts/sumRatios.ts'
import { commonParts } from '../../../lib/core/shares/commonParts.ts'
import { itemSideBySide, wholeSideBySide } from '../../../lib/core/shares/sideBySide.ts'
import { type Statement, statementOf } from '../../../lib/core/shares/statement.ts'
import { bought, halves, notebookWith, statementWith } from '../madeNotebook.ts'
import { randomNotebook, readMade } from '../randomNotebook.ts'

const spreads = ['length', 'cost', 'equal'] as const

/** Any notebook, with something to lay its common costs on, laid each in some way. */
const laidNotebooks = fc
  .tuple(randomNotebook, fc.array(fc.constantFrom(...spreads), { minLength: 1, maxLength: 4 }))
  .map(([document, ways]) => {
    const common = (document.common as Record<string, unknown>[] | undefined) ?? []
    const { sections } = document as { sections?: unknown[] }
    return readMade({
      ...document,
      caps: {},
      sections: [...(sections ?? []), { id: 'laid on', from: '1 ft', to: '9 ft', share: halves }],
      common: [
        // Under one pot of both, credits may take the materials below zero; laid, they have a pot of their own.
        ...common.map((one, at) =>
          'together' in (one.share as object) ? one : { ...one, spread: ways[at % ways.length] },
        ),
        { id: 'laid', materials: [bought('7.77')], share: halves, spread: ways[0] },
      ],
    })
  })

function statementFor(notebook: Parameters<typeof statementOf>[0]): Statement {
  const statement = statementOf(notebook)
  if (!statement.ok) throw new Error(JSON.stringify(statement.faults))
  return statement.value
}

const potsOf = ({ pots }: Statement['items'][number]) =>
  pots.form === 'together' ? [pots.together] : [pots.materials, pots.labour]

describe('whatever a common cost is laid on', () => {
  test('its parts add to exactly one, and what a is asked for is the sum over them, rounded once', () => {
    fc.assert(
      fc.property(laidNotebooks, (notebook) => {
        for (const pot of statementFor(notebook).items.flatMap(potsOf)) {
          if (pot.principle.principle !== 'laid') continue
          const { parts } = pot.principle
          const whole = parts.reduce((sum, { part }) => addRatios(sum, part), ratio(0n, 1n))
          expect(whole.over).toBe(whole.under)
          const exact = parts.reduce(
            (sum, { part, fractionA }) => addRatios(sum, multiplyRatios(part, fractionA)),
            ratio(0n, 1n),
          )
          // Less than one unit off the exact share, and the two shares are the whole pot.
          const off = pot.a * exact.under - pot.total * exact.over
          expect(off < exact.under && -off < exact.under).toBe(true)
          expect(pot.a + pot.b).toBe(pot.total)
        }
      }),
      { numRuns: 200 },
    )
  })

  test('every section and gate keeps its own figures, and with its part they add to the whole fence', () => {
    fc.assert(
      fc.property(laidNotebooks, (notebook) => {
        const statement = statementFor(notebook)
        const parts = commonParts(statement.items)
        const sums = [...(parts?.carried ?? []).map(({ sum }) => sum), ...(parts?.standing ?? [])]
        const total = sums.reduce((so, one) => ({ a: so.a + one.a, b: so.b + one.b }), { a: 0n, b: 0n })
        expect(total).toEqual(statement.beforeCaps)
        for (const { item, laid, sum } of parts?.carried ?? []) {
          expect(laid.a >= 0n && laid.b >= 0n).toBe(true)
          expect(sum.total).toBe(item.total + laid.a + laid.b)
        }
      }),
      { numRuns: 200 },
    )
  })

  test('what it says of its own share changes nothing', () => {
    fc.assert(
      fc.property(laidNotebooks, (notebook) => {
        const share = {
          materials: { principle: 'one' as const, household: 'b' as const },
          labour: { principle: 'equal' as const },
        }
        const resting = notebook.common.map((one) => (one.spread === '' ? one : { ...one, share }))
        expect(statementFor({ ...notebook, common: resting })).toEqual(statementFor(notebook))
      }),
      { numRuns: 100 },
    )
  })

  test('laid by anything on sections that are all halved, it is halved', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...spreads),
        fc.array(fc.integer({ min: 0, max: 500 }), { minLength: 1, maxLength: 6 }),
        fc.integer({ min: 0, max: 99_999 }),
        (spread, lengths, cents) => {
          const { items } = statementWith({
            sections: lengths.map((length, at) => ({
              id: `s${at}`,
              from: '0 ft',
              to: `${length} ft`,
              materials: [bought(String(length))],
              share: halves,
            })),
            common: [{ id: 'c', materials: [bought((cents / 100).toFixed(2))], share: halves, spread }],
          })
          const laid = items.at(-1)
          expect(laid && laid.a - laid.b <= 1n && laid.b - laid.a <= 1n).toBe(true)
        },
      ),
    )
  })
})

describe('the parts of the common costs, worked by hand', () => {
  const parts = commonParts(
    statementWith({
      sections: [
        {
          id: 's1',
          name: 'Lane',
          materials: [bought('1.00')],
          share: { together: { principle: 'one', household: 'a' } },
        },
        {
          id: 's2',
          name: 'Creek',
          materials: [bought('1.00')],
          share: { together: { principle: 'one', household: 'b' } },
        },
        {
          id: 's3',
          name: 'Yard',
          materials: [bought('1.00')],
          share: { together: { principle: 'one', household: 'b' } },
        },
      ],
      common: [
        { id: 'c1', materials: [bought('1.00')], share: halves, spread: 'equal' },
        { id: 'c2', materials: [bought('3.00')], share: halves },
      ],
    }).items,
  )

  test('a dollar laid on three: 33 1/3 cents are a’s, 66 2/3 b’s, and b’s odd cent falls to the first of its two', () => {
    expect(parts?.carried.map(({ laid }) => [laid.a, laid.b])).toEqual([
      [33n, 0n],
      [0n, 34n],
      [0n, 33n],
    ])
    expect(parts?.carried.map(({ sum }) => sum.total)).toEqual([133n, 134n, 133n])
  })

  test('a common cost that is shared by itself stands beside them', () => {
    expect(parts?.standing.map(({ id }) => id)).toEqual(['c2'])
  })

  test('there is no such table where no common cost is laid', () => {
    expect(
      commonParts(statementWith({ common: [{ id: 'c', materials: [bought('1')], share: halves }] }).items),
    ).toBe(undefined)
  })
})

describe('side by side', () => {
  const one = (household: 'a' | 'b') => ({ together: { principle: 'one', household } })
  const notebook = notebookWith({
    sections: [{ id: 's1', from: '0 ft', to: '3 ft', materials: [bought('10')], share: one('a') }],
    common: [{ id: 'c', materials: [bought('1')], share: one('b'), spread: 'length' }],
  })

  test('the ways of a common cost that is laid on the others rest, and what it asks for is shown', () => {
    const found = itemSideBySide(notebook, 'c')
    expect(found).toMatchObject({ ways: [], unusable: [], range: undefined, laid: 'length', total: 100n })
    expect(found?.chosen).toMatchObject({ ok: true, value: { a: 100n, b: 0n } })
  })

  test('over the whole fence it follows what it is laid on', () => {
    const whole = wholeSideBySide(notebook)
    expect(whole).toMatchObject({ ok: true, value: { items: 1 } })
    const halvesOfAll = whole.ok ? whole.value.ways.find(({ way }) => way === 'equal') : undefined
    expect(halvesOfAll).toMatchObject({ asked: { a: 550n, b: 550n }, follow: 1 })
  })
})

test('many quotients add to the same, however they are paired', () => {
  fc.assert(
    fc.property(fc.array(fc.tuple(fc.bigInt(-999n, 999n), fc.bigInt(1n, 99n))), (pairs) => {
      const values = pairs.map(([over, under]) => ratio(over, under))
      const one = values.reduce(addRatios, ratio(0n, 1n))
      const sum = sumRatios(values)
      expect(sum.over * one.under).toBe(one.over * sum.under)
    }),
  )
})
