import { describe, expect, test } from 'vitest'
import { changeWords, influenceWords, inputName, triedItemWords } from '../../lib/words/tryText.ts'
import { halves, notebookWith } from '../core/madeNotebook.ts'

const notebook = notebookWith({
  sections: [
    {
      id: 's1',
      name: 'Along the gardens',
      materials: [{ what: 'steel strip', quantity: '1', unitPrice: '2', suppliedBy: 'bought' }],
      labour: [{ task: '', hours: '1', rate: '20', by: 'a' }],
      share: halves,
    },
  ],
})
const same = { more: 500n, less: -500n }

describe('a tried change in words', () => {
  test('names an input by its item and its line', () => {
    expect(inputName(notebook, { item: 's1', field: 'unitPrice', line: 0, text: '2' })).toBe(
      'Along the gardens: price of steel strip',
    )
    expect(inputName(notebook, { item: 's1', field: 'rate', line: 0, text: '20' })).toBe(
      'Along the gardens: rate of line 1',
    )
    expect(inputName(notebook, { item: 's1', field: 'to', text: '9 ft' })).toBe('Along the gardens: length')
  })

  test('says what ten percent do, and what a cap keeps away', () => {
    const input = { item: 's1', field: 'to', text: '9 ft' } as const
    expect(influenceWords({ input, ...same, beforeCaps: same }, 'USD')).toBe(
      '10 percent more asks $5.00 more; 10 percent less asks $5.00 less.',
    )
    expect(influenceWords({ input, more: 0n, less: -300n, beforeCaps: same }, 'USD')).toBe(
      '10 percent more changes nothing; 10 percent less asks $3.00 less. Before caps: 10 percent more asks $5.00 more; 10 percent less asks $5.00 less.',
    )
  })

  test('says what changed, and what did not', () => {
    expect(changeWords(100n, 250n, 'USD')).toBe('+$1.50')
    expect(changeWords(250n, 100n, 'USD')).toBe('−$1.50')
    expect(triedItemWords(100n, 100n, 'USD')).toBe('$1.00, as planned')
    expect(triedItemWords(100n, 250n, 'USD')).toBe('$2.50 (+$1.50)')
    expect(triedItemWords(100n, undefined, 'USD')).toBe('can’t be shared so')
  })
})
