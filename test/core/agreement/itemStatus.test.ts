import { describe, expect, test } from 'vitest'
import { agreementText } from '../../../lib/core/agreement/canonicalText.ts'
import { changedSinceSigned, itemStatus, lookOf } from '../../../lib/core/agreement/itemStatus.ts'
import { documentWith, halves, sectionOf } from '../madeNotebook.ts'

const none = { a: false, b: false }
const both = { a: true, b: true }

describe('where an item stands', () => {
  test.each([
    ['agreed, where both have marked it', both, true, { kind: 'agreed' }, 'agreed'],
    ['marked by one, whoever it is', { a: false, b: true }, false, { kind: 'marked by one', by: 'b' }, 'one'],
    ['marked by one, edited or not', { a: true, b: false }, true, { kind: 'marked by one', by: 'a' }, 'one'],
    ['open, where nobody has', none, false, { kind: 'open' }, 'open'],
    ['changed, where it was edited and nobody has', none, true, { kind: 'changed' }, 'changed'],
  ])('is %s', (_, marked, edited, status, look) => {
    const found = itemStatus({ marked, edited })
    expect(found).toEqual(status)
    expect(lookOf(found)).toBe(look)
  })

  test.each([
    ['both', both],
    ['a', { a: true, b: false }],
    ['none', none],
  ])('is changed since it was signed, whoever has marked it since: %s', (marks, marked) => {
    const found = itemStatus({ marked, edited: true, sinceSigned: { revision: 2, added: false } })
    expect(found).toEqual({ kind: 'changed since signed', revision: 2, added: false, marks })
    expect(lookOf(found)).toBe('changed')
  })
})

describe('what changed since a revision was signed', () => {
  const lane = { ...sectionOf('10', { principle: 'equal' }), name: 'Lane to the gates' }
  const signed = documentWith({ sections: [lane], gates: [{ id: 'g1', share: halves }] })
  const since = (document: Record<string, unknown>) =>
    Object.fromEntries(changedSinceSigned(document, agreementText(signed)))

  test('is nothing where the document says the same', () => {
    expect(since(structuredClone(signed))).toEqual({})
  })

  test('is the item that says something else, and no other', () => {
    expect(since({ ...signed, sections: [{ ...lane, infill: 'boards' }] })).toEqual({
      'item:s1': { added: false },
    })
  })

  test('is new where the revision had no such item; one that was taken out stands nowhere', () => {
    expect(since({ ...signed, gates: [{ id: 'g2', share: halves }] })).toEqual({ 'item:g2': { added: true } })
  })

  test('is nothing where only the book or the letter went on', () => {
    const entry = { household: 'a', kind: 'cash', amount: '99999', date: '2027-03-02', for: 's1' }
    expect(since({ ...signed, contributions: [entry], letter: { wrong: 'It leans.' } })).toEqual({})
  })
})
