import { describe, expect, test } from 'vitest'
import { actualsOf } from '../../../lib/core/ledger/actual.ts'
import { asBuilt } from '../../../lib/core/ledger/asBuilt.ts'
import { plannedStatement, type Statement, statementOf } from '../../../lib/core/shares/statement.ts'
import { faultsWith } from '../madeNotebook.ts'
import { cash, digging, documentOf, markedBy, notebookOf, on, pipe, scrap, wire } from './madeBooks.ts'

function statement(contributions: readonly object[], books: object): Statement {
  const worked = statementOf(notebookOf(contributions, books))
  if (!worked.ok) throw new Error(JSON.stringify(worked.faults))
  return worked.value
}

const bothBought = (line: object, amount: string) => ({ ...line, amount, marks: markedBy('a', 'b') })

describe('what a line actually came to', () => {
  const amountOf = (contributions: readonly object[], path: string) =>
    actualsOf(notebookOf(contributions), 2).byPath.get(path)?.amount

  test('is what was spent on it less what came back', () => {
    const entries = [
      cash('a', '90.00', { ...wire, amount: '80.00' }),
      cash('b', '20.00', { ...wire, amount: '15.50' }),
      { ...cash('a', '5.50', { ...wire, amount: '5.50' }), kind: 'refund' },
    ]
    expect(amountOf(entries, 'sections[0].materials[0]')).toBe(9000n)
  })

  test('leaves entries out that were taken back', () => {
    const struck = { on, by: 'a', why: 'entered twice' }
    const entry = { ...cash('a', '80.00', { ...wire, amount: '80.00' }), struck }
    expect(amountOf([entry], 'sections[0].materials[0]')).toBeUndefined()
  })

  test('of a credit line is what came back', () => {
    const entry = { ...cash('b', '12.00', { ...scrap, amount: '12.00' }), kind: 'refund' }
    expect(amountOf([entry], 'sections[0].materials[2]')).toBe(1200n)
  })

  test('of a labour line takes in the hours of its task, and hired hands that were paid', () => {
    const hours = {
      household: 'a',
      kind: 'hours',
      hours: '5',
      rate: '25.00',
      date: on,
      for: 's1',
      task: 'dig',
    }
    expect(
      amountOf([hours, cash('b', '30.00', { ...digging, amount: '30.00' })], 'sections[0].labour[0]'),
    ).toBe(15500n)
  })

  test('finds a line that was moved by its words, and says so where the words are gone', () => {
    const moved = { ...wire, place: '3' }
    expect(amountOf([cash('a', '7.00', { ...moved, amount: '7.00' })], 'sections[0].materials[0]')).toBe(700n)
    const gone = { ...wire, what: 'barbed wire' }
    const { gone: found, byPath } = actualsOf(notebookOf([cash('a', '7.00', { ...gone, amount: '7.00' })]), 2)
    expect(found).toMatchObject([{ entry: 0, line: 0, amount: 700n }])
    expect(byPath.size).toBe(0)
  })
})

describe('the statement as built', () => {
  const receipt = cash('b', '112.40', { ...wire, amount: '112.40' })

  test('counts the actual amount once both marked the line', () => {
    const marked = statement([receipt], { bought: [bothBought(wire, '112.40')] })
    expect([marked.total, marked.asked.a, marked.asked.b]).toEqual([26240n, 13120n, 13120n])
    expect(marked.contributed).toEqual({ a: 0n, b: 11240n })
  })

  test.each([
    ['one household alone has marked it', [{ ...wire, amount: '112.40', marks: markedBy('a') }]],
    ['both marked a line that is gone', [bothBought({ ...wire, what: 'barbed wire' }, '112.40')]],
  ])('counts the planned amount while %s', (_case, bought) => {
    expect(statement([receipt], { bought }).total).toBe(25000n)
  })

  test('counts what both marked when another receipt comes in after that, until both mark another', () => {
    const later = cash('a', '3.00', { ...wire, amount: '3.00' })
    const marked = bothBought(wire, '112.40')
    // 250.00 with 112.40 in the place of 100.00.
    expect(statement([receipt, later], { bought: [marked] }).total).toBe(26240n)
    const half = { ...wire, amount: '115.40', marks: markedBy('a') }
    expect(statement([receipt, later], { bought: [marked, half] }).total).toBe(26240n)
    expect(statement([receipt, later], { bought: [bothBought(wire, '115.40')] }).total).toBe(26540n)
  })

  test('counts what both marked when the receipt is taken back by the one who wrote it', () => {
    const struck = { ...receipt, struck: { on, by: 'b', why: 'the wrong fence' } }
    expect(statement([struck], { bought: [bothBought(wire, '112.40')] }).total).toBe(26240n)
  })

  test('counts the last amount that both marked, where a file has several of one line', () => {
    const bought = [bothBought(wire, '112.40'), bothBought({ ...wire, place: '9' }, '90.00')]
    expect(statement([receipt], { bought }).total).toBe(24000n)
  })

  test('counts a line as nothing that both marked as not needed', () => {
    const { total, promised } = statement([], { bought: [bothBought(pipe, '0.00')] })
    expect([total, promised.a]).toEqual([19000n, 10000n])
  })

  test('takes the value of what a household keeps off the materials and off what it has given', () => {
    const thing = { kind: 'leftover', what: 'wire', item: 's1', household: 'b', value: '20.00' }
    const kept = statement([receipt], { things: [{ ...thing, marks: markedBy('a', 'b') }] })
    expect([kept.total, kept.contributed.b, kept.promised.b]).toEqual([23000n, 9240n, -2000n])
    const unmarked = statement([receipt], { things: [{ ...thing, marks: markedBy('b') }] })
    expect([unmarked.total, unmarked.contributed.b]).toEqual([25000n, 11240n])
  })

  describe('a thing that both marked', () => {
    const marked = { kind: 'leftover', what: 'wire', item: 's1', household: 'b', value: '20.00' }
    const agreed = { ...marked, marks: markedBy('a', 'b') }
    const taken = { on, by: 'b' }
    test.each([
      ['was changed by one household', { ...marked, value: '5.00', agreed }, 23000n],
      [
        'was changed, and one has marked the change',
        { ...marked, value: '5.00', marks: markedBy('b'), agreed },
        23000n,
      ],
      [
        'was changed, and both have marked the change',
        { ...marked, value: '5.00', marks: markedBy('a', 'b') },
        24500n,
      ],
      ['is to be kept by the other now', { ...marked, household: 'a', agreed }, 23000n],
      ['was taken off the list by one', { ...marked, marks: markedBy('b'), agreed, off: taken }, 23000n],
      ['was taken off the list by both', { ...marked, marks: markedBy('a', 'b'), off: taken }, 25000n],
      [
        'says that both marked it, and only one did',
        { ...marked, agreed: { ...marked, marks: markedBy('a') } },
        25000n,
      ],
    ])('and that %s', (_case, thing, total) => {
      expect(statement([], { things: [thing] }).total).toBe(total)
    })
  })

  test.each([
    ['was borrowed', { kind: 'borrowed' }],
    ['nobody keeps yet', { household: '' }],
    ['belongs to an item that is gone', { item: 's9' }],
    ['has no value', { value: '' }],
  ])('leaves a thing out that %s', (_case, change) => {
    const thing = {
      kind: 'tool',
      what: 'auger',
      item: 's1',
      household: 'b',
      value: '20.00',
      marks: markedBy('a', 'b'),
    }
    expect(statement([], { things: [{ ...thing, ...change }] }).total).toBe(25000n)
  })

  test('is refused, as any pot below zero, where more is kept than the materials cost', () => {
    const thing = {
      kind: 'salvage',
      what: 'posts',
      item: 's1',
      household: 'a',
      value: '150.01',
      marks: markedBy('a', 'b'),
    }
    expect(faultsWith(documentOf([], { things: [thing] }))).toMatchObject([
      { path: 'sections[0].materials', kind: 'pot-below-zero', below: '0.01' },
    ])
  })

  test('leaves the plan as it was signed', () => {
    const books = { bought: [bothBought(wire, '112.40')] }
    const planned = plannedStatement(notebookOf([receipt], books))
    expect(planned.ok && planned.value.total).toBe(25000n)
  })

  test('is the same notebook, untouched, where the books hold no mark of both', () => {
    const notebook = notebookOf([receipt], { bought: [{ ...wire, amount: '112.40', marks: markedBy('a') }] })
    expect(asBuilt(notebook, 2).notebook).toBe(notebook)
  })

  test('can’t be told an actual amount by a file that puts one on a line', () => {
    const { sections, ...rest } = documentOf()
    const [section] = sections
    const lines = section?.materials.map((line) => ({
      ...line,
      actual: '1.00',
      'Symbol(actual amount)': '1.00',
    }))
    expect(faultsWith({ ...rest, sections: [{ ...section, materials: lines }] })).toEqual([])
    expect(statement([], {}).total).toBe(25000n)
  })
})

describe('reclaimed stock', () => {
  const goods = (valuation: object) => ({
    household: 'a',
    kind: 'material',
    amount: '90.00',
    date: on,
    lines: [
      { ...pipe, amount: '50.00' },
      { ...wire, amount: '40.00' },
    ],
    valuation,
  })
  const given = (valuation: object) => statement([goods(valuation)], {}).contributed.a

  test.each([
    ['a paper says less', { documented: '70.00' }, 7000n],
    // 200 lb at 0.305 is 61.00.
    [
      'its weight at a yard’s price is less',
      { documented: '70.00', weight: '200', unit: 'lb', yardPrice: '0.305' },
      6100n,
    ],
    ['neither was said', {}, 9000n],
    ['a weight was said, but no price', { weight: '200', unit: 'kg' }, 9000n],
    ['both values are more', { documented: '95.00', weight: '400', unit: 'kg', yardPrice: '0.305' }, 9000n],
    ['one household alone marks the whole', { documented: '70.00', marks: markedBy('a') }, 7000n],
    ['both mark the whole', { documented: '70.00', marks: markedBy('a', 'b') }, 9000n],
    // 0.333333 × 0.15 = 0.04999995, which is nearer to 0.05.
    ['it weighs next to nothing', { weight: '0.333333', unit: 'kg', yardPrice: '0.15' }, 5n],
  ])('counts as it should where %s', (_case, valuation, expected) => {
    expect(given(valuation)).toBe(expected)
  })

  test('puts on its lines no more than what counts of it, in their order', () => {
    const { byPath } = actualsOf(notebookOf([goods({ documented: '70.00' })]), 2)
    expect(byPath.get('sections[0].materials[1]')?.amount).toBe(5000n)
    expect(byPath.get('sections[0].materials[0]')?.amount).toBe(2000n)
  })
})

describe('an entry’s lines', () => {
  test('may add to its amount, and no further: the excess is named', () => {
    const entry = (amount: string) => cash('a', '40.00', { ...wire, amount: '30.00' }, { ...pipe, amount })
    expect(faultsWith(documentOf([entry('10.00')]))).toEqual([])
    expect(faultsWith(documentOf([entry('13.00')]))).toEqual([
      {
        path: 'contributions[0].lines',
        kind: 'lines-above-amount',
        amount: '40.00',
        sum: '43.00',
        excess: '3.00',
      },
    ])
  })
})
