import { describe, expect, test } from 'vitest'
import { ratio } from '../../../lib/core/amounts/ratio.ts'
import { statementOf } from '../../../lib/core/shares/statement.ts'
import type { TryingWith } from '../../../lib/core/trying/applyTried.ts'
import { influences, inputsOf, variedBy } from '../../../lib/core/trying/influences.ts'
import { exampleDocument } from '../../../lib/forms/exampleNotebook.ts'
import { readDocument } from '../../../lib/forms/readNotebook.ts'
import { halves, notebookWith } from '../madeNotebook.ts'

const using: TryingWith = { sections: new Map(), gates: new Map(), nameOf: ({ kind }) => kind }

const line = (unitPrice: string, quantity = '1') => ({
  what: 'pipe',
  quantity,
  unit: 'each',
  unitPrice,
  suppliedBy: 'bought',
})

describe('what moves a household’s share most', () => {
  test('is the input whose ten percent come to most, up and down', () => {
    const notebook = notebookWith({
      sections: [
        { id: 's1', materials: [line('100.00'), line('30.00')], labour: [], share: halves },
        {
          id: 's2',
          materials: [line('400.00')],
          labour: [],
          share: { materials: { principle: 'one', household: 'a' }, labour: { principle: 'equal' } },
        },
      ],
    })
    // 10 percent of $100.00, halved, is $5.00 for b; the $400.00 are asked of a alone.
    expect(influences(notebook, 'b', using, 2)).toEqual([
      {
        input: { item: 's1', field: 'quantity', line: 0, text: '1' },
        more: 500n,
        less: -500n,
        beforeCaps: { more: 500n, less: -500n },
      },
      {
        input: { item: 's1', field: 'unitPrice', line: 0, text: '100.00' },
        more: 500n,
        less: -500n,
        beforeCaps: { more: 500n, less: -500n },
      },
    ])
    expect(influences(notebook, 'a', using, 1)[0]).toMatchObject({ input: { item: 's2' }, more: 4000n })
  })

  test('is said after caps: a share that a cap holds does not rise', () => {
    const notebook = notebookWith({
      sections: [{ id: 's1', materials: [line('100.00')], labour: [], share: halves }],
      caps: { b: '48.00' },
    })
    // Halves ask $50.00, the cap holds $48.00: ten percent less asks $45.00.
    expect(influences(notebook, 'b', using, 1)).toMatchObject([
      { more: 0n, less: -300n, beforeCaps: { more: 500n, less: -500n } },
    ])
  })

  test('leaves out what is zero, not priced or a gift', () => {
    const notebook = notebookWith({
      sections: [
        {
          id: 's1',
          materials: [line('', '3'), line('10.00', '0')],
          labour: [{ task: 'paint', hours: '4', rate: '20', by: 'b', counts: false }],
          share: halves,
        },
      ],
    })
    expect(influences(notebook, 'b', using)).toEqual([])
    expect(inputsOf(notebook).map(({ field }) => field)).toEqual(['quantity', 'unitPrice'])
  })

  test('agrees, on the example, with trying every input over the whole fence one by one', () => {
    const read = readDocument(exampleDocument())
    if (!read.ok) throw new Error('the example holds')
    const { caps: _none, ...rest } = read.value.notebook
    const notebook = { ...rest, caps: {} }
    const askedOf = (one: typeof notebook) => {
      const statement = statementOf(one)
      if (!statement.ok) throw new Error('the example has a statement')
      return statement.value.asked.b
    }
    const largestOf = (moves: readonly bigint[]) => Math.max(...moves.map((move) => Math.abs(Number(move))))
    const all = inputsOf(notebook).map((input) =>
      largestOf(
        [ratio(11n, 10n), ratio(9n, 10n)].map(
          (factor) => askedOf(variedBy(notebook, input, factor, using)) - askedOf(notebook),
        ),
      ),
    )
    const largest = all.sort((left, right) => right - left).slice(0, 3)
    const found = influences(notebook, 'b', using).map(({ more, less }) => largestOf([more, less]))
    expect(largest[0]).toBeGreaterThan(0)
    expect(found).toEqual(largest)
  })
})
