import { describe, expect, test } from 'vitest'
import { basicFenceSums, heldPotsOf } from '../../lib/core/shares/basicFence.ts'
import {
  aboveLabel,
  basicApartSentence,
  basicFenceWords,
  basicHeldSentence,
  basicSumsSentence,
  heldPotsLabel,
} from '../../lib/words/basicFenceText.ts'
import { shareNames } from '../../lib/words/shareText.ts'
import { basicFenceBlocks } from '../../lib/words/summary/basicFenceBlocks.ts'
import { notebookWith } from '../core/madeNotebook.ts'
import { readingGrade } from './readingGrade.ts'

const basicFence = {
  height: '4 ft',
  infill: 'farm wire',
  notes: 'No. 14 said that wire keeps its dog out',
  materials: [
    { what: 'posts and wire', quantity: '12', unit: 'bay', unitPrice: '20.05', suppliedBy: 'bought' },
    { what: 'old wire', quantity: '1', unit: '', unitPrice: '10', suppliedBy: 'bought', credit: true },
    { what: 'staples', quantity: '1', unit: 'box', suppliedBy: 'bought' },
  ],
  labour: [
    { task: 'set posts', hours: '8', rate: '25', by: 'a' },
    { task: 'tea', hours: '1', by: 'b', counts: false },
  ],
}
const difference = (basic: string) => ({
  principle: 'difference',
  basic,
  basicShare: { principle: 'equal' },
  upgradeShare: { principle: 'one', household: 'b' },
})
const notebook = notebookWith({
  sections: [
    { id: 's1', basicFence, share: { materials: difference('230.60'), labour: difference('150') } },
    { id: 's2', share: { together: { principle: 'equal' } } },
  ],
})
const [section, without] = notebook.sections
if (section?.basicFence === undefined || without === undefined) throw new Error('two sections, one with it')
const sums = basicFenceSums(section.basicFence, 2)

describe('a basic fence in words', () => {
  test('says what it is and what it comes to', () => {
    expect(basicFenceWords(section.basicFence ?? { ...section, height: '' })).toBe('4 ft high, farm wire')
    expect(basicSumsSentence(sums, 'USD')).toBe(
      'The basic fence comes to $230.60 in materials and $200.00 in work, $430.60 together.',
    )
  })

  test('says both figures where the share is held against another', () => {
    const [materials, labour] = heldPotsOf(section, 2)
    expect(materials && basicHeldSentence(materials, 'USD')).toBe(
      'The share of the materials is held against it, at $230.60.',
    )
    expect(labour && basicApartSentence(labour, 'USD')).toBe(
      'The share of the work is held against $150.00, but the basic fence comes to $200.00.',
    )
  })

  test('offers each pot with the sum that a press writes, and each household by its name', () => {
    expect(heldPotsLabel('apart', sums, 'USD')).toBe('Materials and work each by itself: $230.60 and $200.00')
    expect(heldPotsLabel('together', sums, 'USD')).toBe('Both together, as one pot: $430.60')
    expect(aboveLabel('b', shareNames(notebook))).toBe('No. 14')
  })
})

describe('a basic fence in the summary', () => {
  test('stands with its lines, its sum, and where the share is held against another figure', () => {
    const [paragraph, table] = basicFenceBlocks(notebook, section)
    expect(paragraph).toEqual({
      kind: 'paragraph',
      text: 'A plainer fence that would be enough here is called the basic fence. Nobody builds it, and it is in no sum. It is this: 4 ft high, farm wire. No. 14 said that wire keeps its dog out. The basic fence comes to $230.60 in materials and $200.00 in work, $430.60 together. The share of the work is held against $150.00, but the basic fence comes to $200.00.',
    })
    const plain = (cells: readonly string[]) => cells.map((cell) => cell.replaceAll('\u00a0', ' '))
    if (table?.kind !== 'table') throw new Error('its lines stand in a table')
    expect(table.rows.map(({ cells }) => plain(cells))).toEqual([
      ['posts and wire', '12 bay', '$240.60'],
      ['old wire (credit)', '1', '−$10.00'],
      ['staples', '1 box', 'not priced yet'],
      ['set posts', '8 h', '$200.00'],
      ['tea', '1 h', 'a gift'],
    ])
    expect(plain(table.foot ?? [])).toEqual(['The basic fence in all', '8.00 h', '$430.60'])
    expect(readingGrade(paragraph?.kind === 'paragraph' ? paragraph.text : '')).toBeLessThanOrEqual(8)
  })

  test('is not spoken of where none is described', () => {
    expect(basicFenceBlocks(notebook, without)).toEqual([])
  })
})
