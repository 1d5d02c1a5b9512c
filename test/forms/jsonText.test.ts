import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { joinPath, pathText, scanJson, valueAt } from '../../lib/forms/jsonText.ts'

describe('the scan of JSON text finds', () => {
  test.each([
    ['no key twice in plain data', '{"a":1,"b":{"a":2},"c":[{"a":3},{"a":4}]}', []],
    ['a key twice', '{"a":1,"a":2}', ['a']],
    ['a key three times, at both later places', '{"a":1,"a":2,"a":3}', ['a', 'a']],
    ['a key twice inside a list', '[0,{"x":[1,2],"y":{},"x":3}]', ['[1].x']],
    ['a key twice deep inside', '{"a":[[{"b":{"c":1,"c":2}}]]}', ['a[0][0].b.c']],
    ['the same key in escapes', '{"a":1,"\\u0061":2}', ['a']],
    ['an empty key twice', '{"":1,"":2}', ['']],
    ['no key in texts that look like keys', '{"a":"\\"a\\":1,","b":"{\\"a\\":"}', []],
    ['no key in texts with signs of structure', '["a:","{","}","[",",","a"]', []],
    ['keys with blanks around them', '{ "a" : 1 ,\n "a" : 2 }', ['a']],
    ['a name that every object has', '{"constructor":1,"constructor":2,"__proto__":1}', ['constructor']],
  ])('%s', (_, text, doubled) => {
    expect(scanJson(text).doubledKeys.map(({ path }) => path)).toEqual(doubled)
  })

  test.each([
    ['1', 0],
    ['"[[["', 0],
    ['[]', 1],
    ['[[],{}]', 2],
    ['{"a":{"b":[1]}}', 3],
  ])('how deep it goes: %s is %i', (text, depth) => {
    expect(scanJson(text).depth).toBe(depth)
  })

  test.each([
    ['"\\ud83d\\ude00"', false],
    ['"\\ud83d"', true],
    ['"\\ude00\\ud83d"', true],
    ['{"\\ud83d":1}', true],
    ['"\\\\ud83d"', false],
    ['"😀"', false],
  ])('half of a character: %s is %s', (text, half) => {
    expect(scanJson(text).halfCharacter).toBe(half)
  })
})

/** How deep data goes, told from the data. */
function depthOf(value: unknown): number {
  if (value === null || typeof value !== 'object') return 0
  return 1 + Math.max(0, ...Object.values(value).map(depthOf))
}

const anyJson = fc.oneof(fc.jsonValue(), fc.jsonValue({ stringUnit: 'binary' }))

test('the scan agrees with JSON.parse on any data: no key twice, and as deep as it is', () => {
  fc.assert(
    fc.property(anyJson, fc.constantFrom(undefined, 1, '\t'), (data, indent) => {
      const text = JSON.stringify(data, null, indent)
      const scan = scanJson(text)
      expect(scan.doubledKeys).toEqual([])
      expect(scan.depth).toBe(depthOf(JSON.parse(text)))
      expect(scan.halfCharacter).toBe(false)
    }),
    { numRuns: 500 },
  )
})

test('a key that is put in twice anywhere is found', () => {
  const key = fc.string({ unit: 'grapheme', maxLength: 5 })
  fc.assert(
    fc.property(
      key,
      fc.jsonValue(),
      fc.jsonValue(),
      fc.array(fc.constantFrom('list', 'object')),
      (name, one, other, around) => {
        const twice = `{${JSON.stringify(name)}:${JSON.stringify(one)},${JSON.stringify(name)}:${JSON.stringify(other)}}`
        const text = around.reduce(
          (inner, kind) => (kind === 'list' ? `[0,${inner}]` : `{"o":${inner}}`),
          twice,
        )
        expect(scanJson(text).doubledKeys).toHaveLength(1)
      },
    ),
  )
})

describe('paths', () => {
  test('read like the file', () => {
    expect(pathText(['sections', 0, 'share', 'materials', 'b'])).toBe('sections[0].share.materials.b')
    expect(pathText([])).toBe('')
    expect(joinPath('', 'caps')).toBe('caps')
    expect(joinPath('list', 3)).toBe('list[3]')
  })

  test('lead to the value, or nowhere', () => {
    expect(valueAt({ a: [{ b: 5 }] }, ['a', 0, 'b'])).toBe(5)
    expect(valueAt({ a: 1 }, ['a', 'b', 'c'])).toBeUndefined()
    expect(valueAt(null, ['a'])).toBeUndefined()
  })
})
