import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { plannedHours } from '../../../lib/core/hours/plannedHours.ts'
import { plannedStatement } from '../../../lib/core/shares/statement.ts'
import { notebookWith } from '../madeNotebook.ts'

const halves = { materials: { principle: 'equal' }, labour: { principle: 'equal' } }

/** One section: a welds 8 h and digs 4, 2 are hired, b paints 3 as a gift. Counted: 14 h, halved. */
const worked = (caps: object = {}) =>
  notebookWith({
    caps,
    sections: [
      {
        id: 's1',
        labour: [
          { task: 'weld', hours: '8', rate: '30', by: 'a' },
          { task: 'dig', hours: '4', rate: '30', by: 'a' },
          { task: 'dig', hours: '2', rate: '30', by: 'hired' },
          { task: 'paint', hours: '3', by: 'b', counts: false },
        ],
        share: halves,
      },
    ],
  })

function hoursOf(notebook: ReturnType<typeof worked>) {
  const statement = plannedStatement(notebook)
  if (!statement.ok) throw new Error('these shares can be worked out')
  return plannedHours(notebook, statement.value)
}

describe('planned hours', () => {
  test('are the share of each in one figure and what each works in another; gifts are in none', () => {
    expect(hoursOf(worked())).toEqual({
      all: 1400n,
      share: { a: 700n, b: 700n },
      does: { a: 1200n, b: 0n },
      hired: 200n,
    })
  })

  test('are no share of a household that a cap asks for nothing: they fall to the other', () => {
    expect(hoursOf(worked({ b: '0' })).share).toEqual({ a: 1400n, b: 0n })
    expect(hoursOf(worked({ a: '0' })).share).toEqual({ a: 0n, b: 1400n })
  })

  test('add up: the two shares are all of the hours, whoever works them', () => {
    const by = fc.constantFrom('a', 'b', 'hired')
    const line = fc.record({ hours: fc.integer({ min: 0, max: 9999 }), by, rate: fc.constantFrom('0', '30') })
    fc.assert(
      fc.property(fc.array(line, { maxLength: 6 }), (lines) => {
        const labour = lines.map((one) => ({ ...one, task: '', hours: (one.hours / 100).toFixed(2) }))
        const { all, share, does, hired } = hoursOf(
          notebookWith({ sections: [{ id: 's1', labour, share: halves }] }),
        )
        const planned = lines.reduce((sum, { hours }) => sum + BigInt(hours), 0n)
        expect(share.a + share.b).toBe(planned)
        expect(all).toBe(planned)
        expect(does.a + does.b + hired).toBe(planned)
      }),
    )
  })
})
