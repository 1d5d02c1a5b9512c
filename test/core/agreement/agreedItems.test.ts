import { describe, expect, test } from 'vitest'
import {
  agreedItems,
  changedItems,
  decisionKey,
  onlyCameCheaper,
} from '../../../lib/core/agreement/agreedItems.ts'
import { documentWith, halves, sectionOf } from '../madeNotebook.ts'

const section = { ...sectionOf('10', { principle: 'equal' }), name: 'Lane to the gates' }
const hazel = { on: '2027-02-12', text: 'The old hazel stays.' }
const full = documentWith({
  sections: [section],
  gates: [{ id: 'g1', share: halves }],
  common: [{ id: 'c1', name: 'Auger hire', share: halves }],
  decisions: [hazel],
  contributions: [{ household: 'a', kind: 'cash', amount: '1', date: '2027-03-02' }],
  checks: [{ what: 'Permit office' }],
})

const keys = (before: Record<string, unknown>, after: Record<string, unknown>) =>
  changedItems(before, after).map(({ itemKey }) => itemKey)

describe('what both households mark', () => {
  test('is parties, line, every section, gate and common cost, caps, terms and decisions, in file order', () => {
    expect(agreedItems(full).map(({ key, kind, path, name }) => [key, kind, path, name])).toEqual([
      ['parties', 'parties', 'households', ''],
      ['line', 'line', 'line', ''],
      ['item:s1', 'section', 'sections[0]', 'Lane to the gates'],
      ['item:g1', 'gate', 'gates[0]', ''],
      ['item:c1', 'common', 'common[0]', 'Auger hire'],
      ['caps', 'caps', 'caps', ''],
      ['terms', 'terms', 'terms', ''],
      [decisionKey(hazel), 'decision', 'decisions[0]', 'The old hazel stays.'],
    ])
  })

  test('of a notebook with nothing in it is parties, line, caps and terms', () => {
    expect(agreedItems(documentWith()).map(({ key }) => key)).toEqual(['parties', 'line', 'caps', 'terms'])
  })

  test('has its own key for each', () => {
    const all = agreedItems(full).map(({ key }) => key)
    expect(new Set(all).size).toBe(all.length)
  })
})

describe('what has changed', () => {
  test('is nothing between the same data in another order of keys', () => {
    const turned = Object.fromEntries(Object.entries(full).reverse())
    expect(changedItems(full, turned)).toEqual([])
  })

  test('is one item where one price is another', () => {
    const dearer = { ...full, sections: [{ ...section, materials: [{ ...section, unitPrice: '11' }] }] }
    expect(keys(full, dearer)).toEqual(['item:s1'])
  })

  test('is every item that holds money where the currency is another', () => {
    expect(keys(full, { ...full, currency: 'EUR' })).toEqual(['item:s1', 'item:g1', 'item:c1', 'caps'])
  })

  test('is an unknown key inside an item as well', () => {
    expect(keys(full, { ...full, sections: [{ ...section, colour: 'grey' }] })).toEqual(['item:s1'])
  })

  test('has no before on a new item and no after on a removed one', () => {
    const without = { ...full, sections: [] }
    const [added] = changedItems(without, full)
    const [removed] = changedItems(full, without)
    expect([added?.itemKey, 'before' in (added ?? {}), 'after' in (added ?? {})]).toEqual([
      'item:s1',
      false,
      true,
    ])
    expect([removed?.itemKey, 'before' in (removed ?? {}), 'after' in (removed ?? {})]).toEqual([
      'item:s1',
      true,
      false,
    ])
  })

  test('makes a reworded decision another one', () => {
    const reworded = { ...full, decisions: [{ ...hazel, text: 'The old hazel goes.' }] }
    expect(keys(full, reworded)).toEqual([
      decisionKey(hazel),
      decisionKey({ ...hazel, text: 'The old hazel goes.' }),
    ])
  })

  test('is nothing where an item only stands elsewhere in its list', () => {
    const other = { id: 's2', share: halves }
    expect(keys({ ...full, sections: [section, other] }, { ...full, sections: [other, section] })).toEqual([])
  })

  test('is nothing in receipts, checks, title and units, which nobody marks', () => {
    const { contributions: _book, checks: _checks, ...bare } = full
    expect(keys(full, { ...bare, title: 'Another name', units: 'metric' })).toEqual([])
  })

  test('is nothing between a missing list and an empty one', () => {
    expect(keys(documentWith(), documentWith({ caps: {}, terms: [], line: {}, decisions: [] }))).toEqual([])
  })
})

test('a decision is told by what it says, whatever the order of its keys', () => {
  expect(decisionKey({ text: 'x', on: '' })).toBe(decisionKey({ on: '', text: 'x' }))
  expect(decisionKey({ text: 'x' })).not.toBe(decisionKey({ text: 'y' }))
})

describe('an item of which only the cost beyond the tolerance has changed', () => {
  const item = { id: 's1', name: 'Along the gardens' }
  const at = (beyondTolerance?: string, more: object = {}) => ({
    currency: 'USD',
    item: { ...item, ...more },
    ...(beyondTolerance === undefined ? {} : { beyondTolerance }),
  })
  test.each([
    ['came cheaper', at('330.01'), at('330.00'), true],
    ['came cheaper, in figures of another length', at('1000.00'), at('999.99'), true],
    ['is within the tolerance again', at('330.01'), at(), true],
    ['of salvage alone brings more', at('-5.00'), at('-6.00'), true],
    ['came dearer', at('330.00'), at('330.01'), false],
    ['came beyond the tolerance', at(), at('330.01'), false],
    ['was changed besides', at('330.01'), at(undefined, { name: 'The bank' }), false],
    ['was removed', at('330.01'), undefined, false],
  ])('keeps its marks where it came cheaper, not else: it %s', (_case, before, after, kept) => {
    expect(onlyCameCheaper({ before, after })).toBe(kept)
  })
})
