import { readFileSync } from 'node:fs'
import path from 'node:path'
import { describe, expect, test } from 'vitest'
import type { FaultFacts, ValueKind } from '../../lib/core/faults.ts'
import { dayWords } from '../../lib/words/day.ts'
import { faultText, faultTextIn } from '../../lib/words/faultText.ts'

/** One of each kind: the compiler refuses a kind that is missing here. */
const oneOfEach: { readonly [Kind in FaultFacts['kind']]: Extract<FaultFacts, { kind: Kind }> } = {
  'not-json': { kind: 'not-json', detail: 'it breaks off' },
  'json-breaks': { kind: 'json-breaks', line: 3, column: 7, found: '}' },
  unreadable: { kind: 'unreadable', detail: 'no such file' },
  'too-large': { kind: 'too-large', bytes: 3_000_000, limit: 2_000_000 },
  'too-deep': { kind: 'too-deep', limit: 64 },
  'wrong-format': { kind: 'wrong-format', found: 'cookbook' },
  'wrong-version': { kind: 'wrong-version', found: '2' },
  'key-twice': { kind: 'key-twice', key: 'caps' },
  needed: { kind: 'needed', what: 'length' },
  'not-a': { kind: 'not-a', what: 'list', found: '{}' },
  'not-one-of': { kind: 'not-one-of', found: 'fair', allowed: ['equal', 'one'] },
  'number-form': { kind: 'number-form', found: 'a dozen', fractionDigits: 6 },
  'money-digits': { kind: 'money-digits', found: '1.005', currency: 'USD', digits: 2 },
  'percent-range': { kind: 'percent-range', found: '101' },
  'length-form': { kind: 'length-form', found: '6 feet', mayBeNegative: false },
  'length-negative': { kind: 'length-negative', found: '-6 ft' },
  'date-form': { kind: 'date-form', found: '2027-02-30', mayBeEmpty: false },
  'currency-unknown': { kind: 'currency-unknown', found: 'XAU' },
  'currency-fixed': { kind: 'currency-fixed', currency: 'USD' },
  'id-twice': { kind: 'id-twice', id: 's1' },
  'id-unknown': { kind: 'id-unknown', id: 's9', known: ['s1'] },
  'percent-pair': { kind: 'percent-pair', a: '50', b: '49', sum: '99' },
  'difference-nested': { kind: 'difference-nested' },
  'use-off-gate': { kind: 'use-off-gate' },
  'share-both-forms': { kind: 'share-both-forms' },
  'weights-zero': { kind: 'weights-zero', principle: 'length' },
  'saving-dearer': { kind: 'saving-dearer', pot: '24.00', alone: '20.00', over: '4.00' },
  'saving-outside': { kind: 'saving-outside', household: 'a', share: '-5.00', pot: '10.00' },
  'pot-below-zero': { kind: 'pot-below-zero', below: '0.01' },
  'spread-waits': { kind: 'spread-waits', on: ['Lane to the gates', 'g3'] },
  'spread-nowhere': { kind: 'spread-nowhere' },
  'lines-above-amount': { kind: 'lines-above-amount', amount: '40.00', sum: '43.00', excess: '3.00' },
  'gift-hired': { kind: 'gift-hired' },
  'caps-short': { kind: 'caps-short', a: '1.00', b: '2.00', total: '3.01', short: '0.01' },
  'instalments-sum': {
    kind: 'instalments-sum',
    total: '30.00',
    sum: '29.50',
    difference: '0.50',
    way: 'less',
  },
  'instalments-order': { kind: 'instalments-order', on: '2027-04-01', before: '2027-05-01' },
}

describe('every kind of fault', () => {
  test.each(Object.values(oneOfEach).map((facts) => [facts.kind, facts] as const))(
    'is told in a whole sentence with everything it knows: %s',
    (_, facts) => {
      const sentence = faultText(facts)
      expect(sentence).toMatch(/^["A-Z{0-9].*\.$/)
      expect(sentence).not.toMatch(/undefined|\[object|NaN/)
      expect(sentence.length).toBeGreaterThan(20)
      const known = Object.entries(facts).filter(
        ([key]) =>
          !['kind', 'what', 'mayBeNegative', 'mayBeEmpty', 'principle', 'fractionDigits'].includes(key),
      )
      const said = (value: unknown) =>
        facts.kind === 'instalments-order' ? dayWords(String(value)) : String(value)
      for (const [, value] of known) for (const one of [value].flat()) expect(sentence).toContain(said(one))
    },
  )

  test('has a sentence of its own', () => {
    const sentences = Object.values(oneOfEach).map((fault) => faultText(fault))
    expect(new Set(sentences).size).toBe(sentences.length)
  })

  test('is written down in one place, and all of them stand in this test', () => {
    const source = readFileSync(path.join(import.meta.dirname, '../../lib/core/faults.ts'), 'utf8')
    const kinds = new Set([...source.matchAll(/kind: '([a-z-]+)'/g)].map(([, kind]) => kind))
    expect([...kinds].sort()).toEqual(Object.keys(oneOfEach).sort())
  })
})

describe('what would be right is said for every kind of value', () => {
  const kinds: ValueKind[] = [
    'text',
    'number',
    'money',
    'percent',
    'length',
    'date',
    'household',
    'yes-or-no',
    'list',
    'object',
    'choice',
  ]
  test.each(kinds)('%s', (what) => {
    expect(faultText({ kind: 'needed', what })).toMatch(/^Needed: .+\.$/)
    expect(faultText({ kind: 'not-a', what, found: '5' })).toMatch(/^5 stands here; it has to be .+\.$/)
  })
})

test('whole units are asked for where a currency has no smaller one', () => {
  expect(faultText({ kind: 'money-digits', found: '1.0', currency: 'JPY', digits: 0 })).toContain(
    'whole units, such as "1200"',
  )
})

test('a list of known ids is kept short, and none is invented where there are none', () => {
  const known = Array.from({ length: 500 }, (_, index) => `s${index}`)
  expect(faultText({ kind: 'id-unknown', id: 'x', known }).length).toBeLessThan(300)
  expect(faultText({ kind: 'id-unknown', id: 'x', known: [] })).toContain('there are none yet')
})

describe('a length without a unit is offered with one', () => {
  const bare = (found: string, mayBeNegative = false) =>
    ({ kind: 'length-form', found, mayBeNegative }) as const

  test('in the units of the notebook', () => {
    expect(faultTextIn(bare('0'), 'ft-in')).toBe(
      '"0" has no unit: write "0 ft", or "0 in" where inches are meant.',
    )
    expect(faultTextIn(bare('1.8'), 'metric')).toBe(
      '"1.8" has no unit: write "1.8 m", or "1.8 cm" where centimetres are meant.',
    )
  })

  test('in either where no notebook says', () => {
    expect(faultText(bare('0'))).toContain('write "0 ft", "0 in", "0 m" or "0 cm"')
  })

  test('below zero only where that may be', () => {
    expect(faultTextIn(bare('-3', true), 'ft-in')).toContain('"-3 ft"')
    expect(faultTextIn(bare('-3'), 'ft-in')).toContain("can't be read as a length")
  })

  test('and what is no figure is told how a length is written', () => {
    expect(faultTextIn(bare('tall'), 'ft-in')).toContain('write a figure with its unit')
  })
})

describe('a file that can’t be read on', () => {
  const broken = (found: string) => faultText({ kind: 'json-breaks', line: 12, column: 7, found })

  test('is told by the line, the place in it and what stands there', () => {
    expect(broken('}')).toContain('from line 12, character 7, where “}” does not fit')
  })

  test('is told to be cut off where it ends too early', () => {
    expect(broken('')).toContain('it ends in line 12 before it is complete')
  })

  test('is told a character that nobody can see by its number', () => {
    expect(broken('\u0000')).toContain('the character U+0000')
  })
})

test('a number or a length that lacks little is told as it would be right', () => {
  const number = (found: string) => faultText({ kind: 'number-form', found, fractionDigits: 6 })
  expect(number('$120')).toBe('"$120" can\'t be read as a number: write "120".')
  expect(number('1.412,50')).toBe('"1.412,50" can\'t be read as a number: write "1412.50".')
  expect(number('1,200')).toContain('write "1200", or "1.200", whichever is meant.')
  expect(faultText({ kind: 'length-form', found: "5'6", mayBeNegative: false })).toBe(
    '"5\'6" can\'t be read as a length: write "5 ft 6 in".',
  )
})

describe('a number that can’t be read', () => {
  const number = (found: string, fractionDigits = 6) =>
    faultText({ kind: 'number-form', found, fractionDigits })

  test('is told by examples, and limits only where they are what is wrong', () => {
    expect(number('abc')).toBe(
      '"abc" can\'t be read as a number: write it in figures, such as "14" or "0.385".',
    )
    expect(number('5.1234567')).toBe('"5.1234567" has too many digits after the point: write at most 6.')
    expect(number('1234567890123')).toBe(
      '"1234567890123" has too many digits before the point: write at most 12.',
    )
    expect(number('-5')).toBe(
      '"-5" can\'t be read as a number: nothing below zero is taken here, so write it without the minus.',
    )
  })

  test('is offered rounded where it is a fraction without an end', () => {
    expect(number('7 1/3')).toContain(
      'at most 6 digits after the point: write it rounded, such as "7.333333".',
    )
    expect(number('1/3', 2)).toContain('such as "0.33".')
    expect(number('2/3', 0)).toBe('"2/3" comes to no whole figure: write it rounded, such as "1".')
  })
})
