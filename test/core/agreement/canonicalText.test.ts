import { describe, expect, test } from 'vitest'
import { agreementText, canonicalText } from '../../../lib/core/agreement/canonicalText.ts'

describe('canonical text', () => {
  test('is the same for the same data, whatever the order of keys', () => {
    expect(canonicalText({ b: [{ d: 1, c: 2 }], a: 'x' })).toBe('{"a":"x","b":[{"c":2,"d":1}]}')
  })

  test('keeps the order of lists', () => {
    expect(canonicalText([2, 1])).not.toBe(canonicalText([1, 2]))
  })

  test('keeps text as it was typed, letter for letter', () => {
    // An é in one piece and one made of two look alike and are different text.
    expect(canonicalText('\u00e9')).not.toBe(canonicalText('e\u0301'))
  })

  test('of nothing at all is a mistake of the program', () => {
    expect(() => canonicalText(undefined)).toThrow()
  })
})

test('what is signed leaves out the book and nothing else', () => {
  const document = { title: 'Orchard line', contributions: [{ amount: '1' }], checks: [], extra: 1 }
  expect(agreementText(document)).toBe('{"checks":[],"extra":1,"title":"Orchard line"}')
  expect(agreementText({ ...document, contributions: [] })).toBe(agreementText(document))
})
