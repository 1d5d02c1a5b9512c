import { expect, test } from 'vitest'
import { keepPassages, withoutPassages, withoutTakes, withPassages } from '../../lib/forms/gatePassages.ts'
import { documentText } from '../../lib/forms/parts.ts'
import { documentWith } from '../core/madeNotebook.ts'

const counts = { a: { a: '1', b: '2' }, b: { a: '3', b: '4' }, takes: { a: 'b' as const } }
const gate = { id: 'g1', name: 'Gate', uses: { a: '5', b: '9' } }
const document = (one: object) => documentWith({ gates: [one, { ...gate, id: 'g2' }] })
const unsaid = { a: '', b: '' }

test('the file holds the count or the counting, and nothing that is not said', () => {
  const apart = withPassages(document(gate), 'g1', { uses: unsaid, passages: counts })
  expect(apart).toEqual(document({ id: 'g1', name: 'Gate', passages: counts }))
  expect(withPassages(apart, 'g1', { uses: gate.uses })).toEqual(document(gate))
})

test('a form that sends other passages changes none', () => {
  const stood = document({ ...gate, passages: counts })
  for (const typed of [
    { ...gate, name: 'New name', uses: { a: '0', b: '99' } },
    { ...gate, name: 'New name', passages: { ...counts, takes: { a: 'b', b: 'b' } } },
    { id: 'g1', name: 'New name' },
  ]) {
    const kept = keepPassages(stood, document(typed), { part: 'item', id: 'g1' })
    expect(kept).toEqual(document({ ...gate, name: 'New name', passages: counts }))
  }
})

test('a form that leaves the passages alone leaves the file’s very text alone', () => {
  const stood = document({ uses: gate.uses, id: 'g1', name: 'Gate' })
  const kept = keepPassages(stood, structuredClone(stood), { part: 'item', id: 'g1' })
  expect(documentText(kept)).toBe(documentText(stood))
})

test('a new gate has no passages, whatever its form sends', () => {
  expect(withoutPassages({ name: 'Gate', uses: gate.uses, passages: counts })).toEqual({ name: 'Gate' })
})

test('a file that is taken in brings counts, and nobody’s word that one is taken', () => {
  const { takes: _marks, ...bare } = counts
  expect(withoutTakes(document({ ...gate, passages: counts }))).toEqual(document({ ...gate, passages: bare }))
  const plain = document(gate)
  expect(withoutTakes(plain)).toBe(plain)
})
