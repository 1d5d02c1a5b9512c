import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { jsonBreak } from '../../lib/forms/jsonBreak.ts'

describe('the place where text stops being JSON', () => {
  test.each([
    ['a comma too many', '{"a":1,}', { line: 1, column: 8, found: '}' }],
    ['a comma forgotten, two lines down', '{"a": 1,\r\n "b": [1\n  2]}', { line: 3, column: 3, found: '2' }],
    ['a letter instead of a notebook', 'Dear neighbour', { line: 1, column: 1, found: 'D' }],
    [
      'a key without quotes, after a sign of two halves',
      '{"😀": {x: 1}}',
      { line: 1, column: 8, found: 'x' },
    ],
    ['a text that is not closed in its line', '["a\nb"]', { line: 1, column: 4, found: '\n' }],
    ['a bracket that closes something else', '[{"a":1]', { line: 1, column: 8, found: ']' }],
    ['two files in one', '{}{}', { line: 1, column: 3, found: '{' }],
    ['an end before the end', '{"a":\n', { line: 2, column: 1, found: '' }],
    ['nothing', '', { line: 1, column: 1, found: '' }],
  ])('%s', (_, text, place) => {
    expect(jsonBreak(text)).toEqual(place)
  })

  test('is nowhere in what JSON.parse takes, and somewhere in all that it refuses', () => {
    const taken = (text: string) => {
      try {
        JSON.parse(text)
        return true
      } catch {
        return false
      }
    }
    const bits = fc.constantFrom(
      '',
      '{',
      '}',
      '[',
      ']',
      ',',
      ':',
      '"',
      '\\',
      '\\u00e9',
      '0',
      '-',
      '.',
      'e1',
      'true',
      ' ',
    )
    fc.assert(
      fc.property(fc.json(), fc.nat(), fc.nat({ max: 3 }), bits, (json, place, cut, bit) => {
        const at = place % (json.length + 1)
        const changed = json.slice(0, at) + bit + json.slice(at + cut)
        expect(jsonBreak(json)).toBeUndefined()
        expect(jsonBreak(changed) === undefined).toBe(taken(changed))
      }),
      { numRuns: 2000 },
    )
  })

  test('is found however deep lists lie inside one another', () => {
    expect(jsonBreak('['.repeat(200_000))).toEqual({ line: 1, column: 200_001, found: '' })
  })
})
