import { describe, expect, test } from 'vitest'
import { statementOf } from '../../../lib/core/shares/statement.ts'
import { applyTried, type TryingWith, triedItems } from '../../../lib/core/trying/applyTried.ts'
import { nothingTried, type Tried, type TriedEdit } from '../../../lib/core/trying/tried.ts'
import { halves, notebookWith } from '../madeNotebook.ts'

const using: TryingWith = { sections: new Map(), gates: new Map(), nameOf: ({ kind }) => kind }

const plan = notebookWith({
  sections: [
    {
      id: 's1',
      from: '0 ft',
      to: '20 ft',
      height: { agreed: '5 ft', measuredFrom: 'higher' },
      materials: [
        { what: 'posts', quantity: '4', unit: 'each', unitPrice: '10.00', suppliedBy: 'bought' },
        { what: 'paint', quantity: '100', unit: 'sq ft', unitPrice: '0.50', suppliedBy: 'bought' },
      ],
      labour: [{ task: 'dig', hours: '8', rate: '25', by: 'a' }],
      share: halves,
    },
  ],
  gates: [{ id: 'g1', opening: '4 ft', materials: [], labour: [], share: halves }],
  common: [
    {
      id: 'c1',
      materials: [{ what: 'auger', quantity: '1', unit: 'day', unitPrice: '90.00', suppliedBy: 'bought' }],
      labour: [],
      share: halves,
    },
  ],
})

const edited = (...edits: TriedEdit[]): Tried => ({ ...nothingTried, edits })
const tryIt = (tried: Tried) => applyTried(plan, tried, using)

describe('a tried change', () => {
  test('that says nothing leaves the plan as it is', () => {
    expect(tryIt(nothingTried)).toEqual(plan)
    expect(triedItems(plan, tryIt(nothingTried))).toEqual([])
  })

  test('puts a typed text in place of the plan’s, on the one line that it is for', () => {
    const tried = tryIt(edited({ item: 's1', field: 'unitPrice', line: 0, text: '12.50' }))
    expect(tried.sections[0]?.materials.map(({ unitPrice }) => unitPrice)).toEqual(['12.50', '0.50'])
    expect(triedItems(plan, tried)).toEqual(['s1'])
    expect(plan.sections[0]?.materials[0]?.unitPrice).toBe('10.00')
  })

  test('that does not hold, or is of what is not in the plan, is left out', () => {
    const wrong: TriedEdit[] = [
      { item: 's1', field: 'quantity', line: 0, text: '1e3' },
      { item: 's1', field: 'height', text: 'high' },
      { item: 's1', field: 'height', text: '-6 ft' },
      { item: 's9', field: 'height', text: '6 ft' },
      { item: 's1', field: 'quantity', line: 7, text: '3' },
      { item: 's1', field: 'buildUp', text: 'of gold' },
    ]
    for (const edit of wrong) expect(triedItems(plan, tryIt(edited(edit)))).toEqual([])
  })

  test('of a length moves what was typed by hand in proportion, hours too', () => {
    const tried = tryIt(edited({ item: 's1', field: 'to', text: '30 ft' }))
    expect(tried.sections[0]?.materials.map(({ quantity }) => quantity)).toEqual(['6', '150'])
    expect(tried.sections[0]?.labour[0]?.hours).toBe('12')
  })

  test('of a height moves what goes by area, and nothing else', () => {
    const tried = tryIt(edited({ item: 's1', field: 'height', text: '6 ft' }))
    expect(tried.sections[0]?.materials.map(({ quantity }) => quantity)).toEqual(['4', '120'])
    expect(tried.sections[0]?.labour[0]?.hours).toBe('8')
  })

  test('leaves a quantity that was typed anew where it was put', () => {
    const tried = tryIt(
      edited(
        { item: 's1', field: 'to', text: '40 ft' },
        { item: 's1', field: 'quantity', line: 0, text: '5' },
      ),
    )
    expect(tried.sections[0]?.materials.map(({ quantity }) => quantity)).toEqual(['5', '200'])
  })

  test('of all prices moves every price that was not typed anew, to six decimals', () => {
    const tried = tryIt({
      edits: [{ item: 's1', field: 'unitPrice', line: 0, text: '11' }],
      moves: { prices: '20', hours: '', rates: '-10' },
    })
    const prices = [...tried.sections, ...tried.common].flatMap(({ materials }) =>
      materials.map(({ unitPrice }) => unitPrice),
    )
    expect(prices).toEqual(['11', '0.6', '108'])
    expect(tried.sections[0]?.labour[0]).toMatchObject({ hours: '8', rate: '22.5' })
  })

  test('moves both shares as the core shares the changed plan', () => {
    // By hand: 4 × 12.00 + 100 × 0.60 + 90 × 1.2 = 216.00 of materials, 200.00 of labour, halved.
    const statement = statementOf(tryIt({ edits: [], moves: { prices: '20', hours: '', rates: '' } }))
    expect(statement.ok && statement.value.asked).toMatchObject({ a: 20800n, b: 20800n })
  })
})
