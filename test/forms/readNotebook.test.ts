import { describe, expect, test } from 'vitest'
import type { Fault } from '../../lib/core/faults.ts'
import { readNotebook, unknownKeys } from '../../lib/forms/readNotebook.ts'
import { faultText } from '../../lib/words/faultText.ts'
import { bought, documentWith, halves, sectionOf } from '../core/madeNotebook.ts'

const faultsIn = (file: Uint8Array | string): readonly Fault[] => {
  const read = readNotebook(file)
  return read.ok ? [] : read.faults
}
const faultsOf = (parts: Record<string, unknown>) => faultsIn(JSON.stringify(documentWith(parts)))

const section = (more: Record<string, unknown>) => ({ sections: [{ id: 's1', share: halves, ...more }] })
const materials = (share: unknown) => ({ sections: [sectionOf('1', share)] })
const entry = (more: Record<string, unknown>) => ({
  contributions: [{ household: 'a', kind: 'cash', amount: '1', date: '2027-03-02', ...more }],
})

/** A notebook that is refused for one fault: where, of which kind, and what the sentence says would be right. */
const refusals: [string, Record<string, unknown>, string, Fault['kind'], string][] = [
  ['another format', { format: 'cookbook' }, 'format', 'wrong-format', 'has to be "mearing-notebook"'],
  ['no format', { format: undefined }, 'format', 'wrong-format', 'has to be "mearing-notebook"'],
  ['another version', { version: 2 }, 'version', 'wrong-version', 'written as the number 1'],
  ['the version as text', { version: '1' }, 'version', 'wrong-version', 'written as the number 1'],
  ['no currency', { currency: undefined }, 'currency', 'needed', 'a text'],
  ['gold for money', { currency: 'XAU' }, 'currency', 'currency-unknown', 'its three letters'],
  ['a list for the currency', { currency: ['USD'] }, 'currency', 'currency-unknown', 'its three letters'],
  ['a number for the currency', { currency: 840 }, 'currency', 'currency-unknown', 'its three letters'],
  ['no households', { households: undefined }, 'households', 'needed', 'an object'],
  ['one household only', { households: { a: {} } }, 'households.b', 'needed', 'an object'],
  ['a number for the title', { title: 5 }, 'title', 'not-a', 'has to be a text'],
  ['an object where a list belongs', { sections: {} }, 'sections', 'not-a', 'has to be a list'],
  ['a list where an object belongs', { line: [] }, 'line', 'not-a', 'has to be an object'],
  ['nothing where a list belongs', { terms: null }, 'terms', 'not-a', 'has to be a list'],
  [
    'a text where true or false belongs',
    { checks: [{ done: 'yes' }] },
    'checks[0].done',
    'not-a',
    'true or false',
  ],
  ['units of another kind', { units: 'yards' }, 'units', 'not-one-of', 'one of "ft-in", "metric"'],
  [
    'a capacity that is not known',
    { households: { a: { parties: [{ capacity: 'king' }] }, b: {} } },
    'households.a.parties[0].capacity',
    'not-one-of',
    '"owner"',
  ],
  ['an item without an id', section({ id: undefined }), 'sections[0].id', 'needed', 'a text'],
  ['an item with an empty id', section({ id: '' }), 'sections[0].id', 'needed', 'a text'],
  ['an item without a share', section({ share: undefined }), 'sections[0].share', 'needed', 'an object'],
  [
    'a share of the labour missing',
    section({ share: { materials: { principle: 'equal' } } }),
    'sections[0].share.labour',
    'needed',
    'an object',
  ],
  [
    'a share of both forms',
    section({ share: { ...halves, together: { principle: 'equal' } } }),
    'sections[0].share',
    'share-both-forms',
    'not both ways at once',
  ],
  [
    'a principle that is not known',
    materials({ principle: 'fair' }),
    'sections[0].share.materials.principle',
    'not-one-of',
    '"equal"',
  ],
  ['no principle', materials({}), 'sections[0].share.materials.principle', 'needed', 'one of "equal"'],
  [
    'use where there is no gate',
    materials({ principle: 'use' }),
    'sections[0].share.materials.principle',
    'use-off-gate',
    'choose another principle',
  ],
  [
    'a difference inside a difference',
    materials({
      principle: 'difference',
      basic: '1',
      basicShare: { principle: 'equal' },
      upgradeShare: { principle: 'difference' },
    }),
    'sections[0].share.materials.upgradeShare.principle',
    'difference-nested',
    'choose another principle',
  ],
  [
    'percentages that add to 99.9999',
    materials({ principle: 'percent', a: '50', b: '49.9999' }),
    'sections[0].share.materials.b',
    'percent-pair',
    'add to exactly 100',
  ],
  [
    'a percentage above 100',
    materials({ principle: 'percent', a: '100.0001', b: '0' }),
    'sections[0].share.materials.a',
    'percent-range',
    'between 0 and 100',
  ],
  [
    'a household that is neither',
    materials({ principle: 'one', household: 'c' }),
    'sections[0].share.materials.household',
    'not-one-of',
    '"a", "b"',
  ],
  [
    'a number with an exponent',
    section({ materials: [bought('1', { quantity: '1e3' })] }),
    'sections[0].materials[0].quantity',
    'number-form',
    'write it in figures, such as "14"',
  ],
  [
    'a JSON number for a quantity',
    section({ materials: [bought('1', { quantity: 3 })] }),
    'sections[0].materials[0].quantity',
    'not-a',
    'in quotation marks',
  ],
  [
    'a line without a quantity',
    section({ materials: [{ suppliedBy: 'bought' }] }),
    'sections[0].materials[0].quantity',
    'needed',
    'a number',
  ],
  [
    'hired labour as a gift',
    section({ labour: [{ hours: '1', by: 'hired', counts: false }] }),
    'sections[0].labour[0].counts',
    'gift-hired',
    'name the household that gives it',
  ],
  ['money with three digits in dollars', { caps: { a: '1.005' } }, 'caps.a', 'money-digits', 'at most 2'],
  ['a cap of null', { caps: { a: null } }, 'caps.a', 'not-a', 'an amount of money'],
  ['a negative cap', { caps: { a: '-1' } }, 'caps.a', 'number-form', 'without the minus'],
  ['yen with digits', { currency: 'JPY', caps: { b: '1.0' } }, 'caps.b', 'money-digits', 'whole units'],
  [
    'a length without a unit',
    section({ from: '0' }),
    'sections[0].from',
    'length-form',
    'has no unit: write "0 ft"',
  ],
  ['a negative place', section({ to: '-1 ft' }), 'sections[0].to', 'length-negative', 'without the minus'],
  [
    'a day that does not exist',
    entry({ date: '2027-02-30' }),
    'contributions[0].date',
    'date-form',
    'year-month-day',
  ],
  ['an entry without a day', entry({ date: '' }), 'contributions[0].date', 'needed', 'year-month-day'],
  [
    'a day of a decision that does not exist',
    { decisions: [{ on: '2027-13-01' }] },
    'decisions[0].on',
    'date-form',
    'or leave it empty',
  ],
  ['an entry of an unknown kind', entry({ kind: 'kiss' }), 'contributions[0].kind', 'not-one-of', '"cash"'],
  [
    'an entry for what is not there',
    entry({ for: 's9' }),
    'contributions[0].for',
    'id-unknown',
    'leave it out',
  ],
  [
    'an entry taken back without a day',
    entry({ struck: { by: 'a', why: '' } }),
    'contributions[0].struck.on',
    'needed',
    'year-month-day',
  ],
  [
    'an id that stands twice',
    { ...section({}), common: [{ id: 's1', share: halves }] },
    'common[0].id',
    'id-twice',
    'an id of their own',
  ],
]

describe('a notebook file is refused, with the place and what would be right, for', () => {
  test.each(refusals)('%s', (_, parts, path, kind, right) => {
    const faults = faultsOf(parts)
    expect(faults.map((fault) => [fault.path, fault.kind])).toEqual([[path, kind]])
    for (const fault of faults) expect(faultText(fault)).toContain(right)
  })
})

describe('a file that is no notebook at all is refused as a whole:', () => {
  test.each([
    ['nothing', ''],
    ['plain text', 'Dear neighbour'],
    ['a file that breaks off', '{"format":"mearing-notebook",'],
    ['two files in one', '{}{}'],
    ['a comment', '{/* x */}'],
  ])('%s, with the place where it breaks', (_, text) => {
    expect(faultsIn(text)).toMatchObject([{ path: '(file)', kind: 'json-breaks', line: 1 }])
  })

  test.each([
    ['half of a character', '{"title":"\\ud83d"}'],
    ['half of a character in a key', '{"\\ude00":1}'],
  ])('%s', (_, text) => {
    expect(faultsIn(text)).toMatchObject([{ path: '(file)', kind: 'not-json' }])
  })

  test.each([
    ['a list', '[]'],
    ['a text', '"x"'],
    ['a number', '1'],
    ['null', 'null'],
  ])('%s', (_, text) => {
    expect(faultsIn(text)).toMatchObject([{ path: '(file)', kind: 'not-a', what: 'object' }])
  })

  test('bytes that are not UTF-8', () => {
    expect(faultsIn(new Uint8Array([0x7b, 0x22, 0xff, 0x22, 0x7d]))).toMatchObject([
      { path: '(file)', kind: 'not-json' },
    ])
  })

  test('text in UTF-16', () => {
    const bytes = new Uint8Array(new Uint16Array([...'{"a":1}'].map((one) => one.charCodeAt(0))).buffer)
    expect(faultsIn(bytes)).toMatchObject([{ path: '(file)', kind: 'json-breaks', column: 2 }])
  })
})

describe('a key that stands twice', () => {
  test('is refused at the later place, each of them', () => {
    const text = '{"a":1,"list":[{"x":1},{"x":1,"y":2,"x":3}],"a":2}'
    expect(faultsIn(text)).toEqual([
      { path: 'list[1].x', kind: 'key-twice', key: 'x' },
      { path: 'a', kind: 'key-twice', key: 'a' },
    ])
  })

  test('is the same key however it is written', () => {
    expect(faultsIn('{"a":1,"\\u0061":2}')).toMatchObject([{ path: 'a', kind: 'key-twice', key: 'a' }])
  })

  test('is named whole, a point in it too', () => {
    expect(faultsIn('{"a.b":1,"a.b":2}')).toMatchObject([{ kind: 'key-twice', key: 'a.b' }])
  })
})

describe('a notebook file is taken', () => {
  test('with the least it may have', () => {
    const read = readNotebook(
      '{"format":"mearing-notebook","version":1,"currency":"USD","households":{"a":{},"b":{}}}',
    )
    expect(read.ok && read.value.notebook).toMatchObject({
      title: '',
      units: 'ft-in',
      sections: [],
      gates: [],
      common: [],
      caps: {},
      contributions: [],
      terms: [],
      checks: [],
      decisions: [],
      line: { start: '', end: '', evidence: '', stations: [] },
    })
  })

  test('with a byte order mark, which is ignored', () => {
    const text = JSON.stringify(documentWith({ title: 'Südgrenze' }))
    const bytes = new TextEncoder().encode(`\uFEFF${text}`)
    for (const file of [bytes, `\uFEFF${text}`]) {
      const read = readNotebook(file)
      expect(read.ok && read.value.notebook.title).toBe('Südgrenze')
    }
  })

  test('with the defaults that the format names', () => {
    const read = readNotebook(
      JSON.stringify(
        documentWith(
          section({
            materials: [{ quantity: '1', suppliedBy: 'bought' }],
            labour: [{ hours: '1', by: 'a' }],
          }),
        ),
      ),
    )
    const [one] = read.ok ? read.value.notebook.sections : []
    expect(one?.materials[0]).toMatchObject({ taxPercent: '0', credit: false, unitPrice: '' })
    expect(one?.labour[0]).toMatchObject({ counts: true, rate: '' })
  })

  test('and keeps what stands in it as it stands, without the defaults', () => {
    const document = documentWith(section({ extra: { deep: [1, null, 'x'] } }))
    const read = readNotebook(JSON.stringify(document))
    expect(read.ok && JSON.stringify(read.value.document)).toBe(JSON.stringify(document))
  })

  test('with negative grades', () => {
    expect(faultsOf({ line: { stations: [{ at: '0 ft', gradeA: '-3 in', gradeB: '-1 ft 2 in' }] } })).toEqual(
      [],
    )
  })
})

test('all faults come at once, in the order in which they stand in the file', () => {
  const faults = faultsOf({
    title: 5,
    sections: [{ ...sectionOf('x', { principle: 'equal' }), from: '6' }],
    caps: { a: '1,2' },
  })
  expect(faults.map(({ path }) => path)).toEqual([
    'title',
    'sections[0].materials[0].unitPrice',
    'sections[0].from',
    'caps.a',
  ])
})

test('a share that cannot be worked out is named along with a fault elsewhere', () => {
  const faults = faultsOf({ ...materials({ principle: 'benefit', a: '0', b: '0' }), caps: { a: 'x' } })
  expect(faults.map(({ path, kind }) => [path, kind])).toEqual([
    ['sections[0].share.materials', 'weights-zero'],
    ['caps.a', 'number-form'],
  ])
})

test('keys that the program does not know are found wherever they stand', () => {
  const document = documentWith({
    colour: 'grey',
    households: { a: { pet: 'dog' }, b: {} },
    line: { stations: [{ at: '0 ft', setback: { side: 'a', distance: '1 in', why: 'x' } }] },
    sections: [
      {
        ...sectionOf('1', { principle: 'equal', note: 'x' }),
        height: { agreed: '6 ft', top: 'flat' },
        labour: [{ hours: '1', by: 'a', tool: 'spade' }],
      },
    ],
    gates: [{ id: 'g1', share: halves, uses: { a: '1', b: '1', c: '1' } }],
    caps: { c: '1' },
    contributions: [
      { household: 'a', kind: 'hours', hours: '1', date: '2027-01-01', tip: '1' },
      {
        household: 'a',
        kind: 'cash',
        amount: '1',
        date: '2027-01-01',
        struck: { on: '2027-01-01', by: 'a', x: 1 },
      },
    ],
    terms: [{ topic: 't', colour: 1 }],
    checks: [{ what: 'w', colour: 1 }],
    decisions: [{ text: 'd', colour: 1 }],
  })
  expect(faultsIn(JSON.stringify(document))).toEqual([])
  expect(unknownKeys(document).sort()).toEqual(
    [
      'caps.c',
      'checks[0].colour',
      'colour',
      'contributions[0].tip',
      'contributions[1].struck.x',
      'decisions[0].colour',
      'gates[0].uses.c',
      'households.a.pet',
      'line.stations[0].setback.why',
      'sections[0].height.top',
      'sections[0].labour[0].tool',
      'sections[0].share.materials.note',
      'terms[0].colour',
    ].sort(),
  )
})
