import { describe, expect, test } from 'vitest'
import { shoppingList, shoppingListCsv } from '../../../lib/words/takeoff/shoppingList.ts'
import { halves, notebookWith } from '../../core/madeNotebook.ts'

const line = (what: string, more: object = {}) => ({ what, quantity: '2', suppliedBy: 'bought', ...more })
const notebook = notebookWith({
  households: { a: { name: 'No. 1' }, b: { name: 'No. 2' } },
  sections: [
    {
      id: 's1',
      name: 'Lane',
      share: halves,
      materials: [line('wire', { unitPrice: '1.25', unit: 'roll' }), line('paint "grey"')],
    },
  ],
  common: [
    {
      id: 'c1',
      name: 'Scrap',
      share: halves,
      materials: [line('=1+1', { unitPrice: '3', credit: true, suppliedBy: 'b' })],
    },
  ],
})
const list = shoppingList(notebook)
const csv = shoppingListCsv(list)

describe('the shopping list', () => {
  test('holds every cost line, by material, with where it belongs and who it comes from', () => {
    expect(list.map(({ what, item, from, amount }) => [what, item, from, amount])).toEqual([
      ['=1+1 (credit)', 'Scrap', 'No. 2', '-6.00'],
      ['paint "grey"', 'Lane', 'bought', ''],
      ['wire', 'Lane', 'bought', '2.50'],
    ])
  })

  test('is comma-separated values as RFC 4180 has them: quotation marks doubled, lines ended by CR LF', () => {
    expect(csv.split('\r\n')[2]).toBe('"paint ""grey""","Lane",2,,"bought",,0,,"USD"')
    expect(csv.endsWith('\r\n')).toBe(true)
  })

  test('gives figures as figures, with a point, so that a spreadsheet adds them up', () => {
    expect(csv.split('\r\n')[3]).toBe('"wire","Lane",2,"roll","bought",1.25,0,2.50,"USD"')
  })

  test('lets no spreadsheet take a text for a formula', () => {
    expect(csv.split('\r\n')[1]).toContain(`"'=1+1 (credit)"`)
  })
})
