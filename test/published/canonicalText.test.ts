import { describe, expect, test } from 'vitest'
import { canonicalText } from '../../lib/core/agreement/canonicalText.ts'

/** The canonical form of JSON text. */
const canonical = (text: string) => canonicalText(JSON.parse(text))

describe('RFC 8785, JSON Canonicalization Scheme: reference test data of its author, found in a public text', () => {
  test('values', () => {
    const input = String.raw`{
  "numbers": [1E30, 4.50, 333333333.33333329, 2e-3, 0.000000000000000000000000001],
  "escaping": "\u20ac$\u000F\u000aA'\u0042\u0022\u005c\\\"\/",
  "literals": [null, true, false]
}`
    const output = String.raw`{"escaping":"€$\u000f\nA'B\"\\\\\"/","literals":[null,true,false],"numbers":[1e+30,4.5,333333333.3333333,0.002,1e-27]}`
    expect(canonical(input)).toBe(output)
  })

  test('keys are sorted by UTF-16 code units, so an emoji stands before a Hebrew presentation form', () => {
    const input = String.raw`{
  "\u20ac": "Euro Sign",
  "1": "One",
  "\u0080": "Control\u007f",
  "\ud83d\ude02": "Smiley",
  "\u00f6": "Latin Small Letter O With Diaeresis",
  "\ufb33": "Hebrew Letter Dalet With Dagesh",
  "</script>": "Browser Challenge"
}`
    const output =
      '{"1":"One","</script>":"Browser Challenge","\u0080":"Control\u007f","\u00f6":"Latin Small Letter O With Diaeresis","\u20ac":"Euro Sign","\ud83d\ude02":"Smiley","\ufb33":"Hebrew Letter Dalet With Dagesh"}'
    expect(canonical(input)).toBe(output)
  })

  test('structures', () => {
    const input = String.raw`{"1": {"f": {"f": "hi","F": 5} ,"\n": 56.0}, "10": { }, "": "empty", "a": { }, "111": [ { } ], "A": { } }`
    const output = String.raw`{"":"empty","1":{"\n":56,"f":{"F":5,"f":"hi"}},"10":{},"111":[{}],"A":{},"a":{}}`
    expect(canonical(input)).toBe(output)
  })

  test('no language’s order of letters is followed', () => {
    const input = '{"peach":1,"p\u00e9ch\u00e9":2,"p\u00eache":3,"sin":4}'
    expect(canonical(input)).toBe(input)
  })

  test('text is not composed anew', () => {
    expect(canonical(String.raw`{"Unnormalized Unicode":"\u1e0d\u0307"}`)).toBe(
      '{"Unnormalized Unicode":"\u1e0d\u0307"}',
    )
  })
})

/** The number whose IEEE 754 bits are these. */
function double(bits: string): number {
  const view = new DataView(new ArrayBuffer(8))
  view.setBigUint64(0, BigInt(`0x${bits}`))
  return view.getFloat64(0)
}

test.each([
  ['4340000000000001', '9007199254740994'],
  ['444b1ae4d6e2ef50', '1e+21'],
  ['3eb0c6f7a0b5ed8d', '0.000001'],
  ['3eb0c6f7a0b5ed8c', '9.999999999999997e-7'],
  ['8000000000000000', '0'],
])('RFC 8785 appendix B, found in a public text, recomputed: the number %s is written %s', (bits, text) => {
  expect(canonicalText(double(bits))).toBe(text)
})

test('RFC 8785 section 3.2.2: numbers that JSON can’t hold are refused', () => {
  for (const number of [Number.NaN, Number.POSITIVE_INFINITY]) expect(() => canonicalText([number])).toThrow()
})

test('a small one, recomputed', () => {
  expect(canonical('{"b":2,"a":1.0,"c":[3,{"z":0,"y":-0}]}')).toBe('{"a":1,"b":2,"c":[3,{"y":0,"z":0}]}')
})
