import { describe, expect, test } from 'vitest'
import { type FirstSplit, firstSection, splitFirst } from '../../../lib/core/shares/firstSplit.ts'

const typed: FirstSplit = {
  length: '60 ft',
  height: '5 ft',
  materials: '900.00',
  hours: '20',
  rate: '15.00',
  by: 'a',
  way: 'equal',
  frontA: '',
  frontB: '',
  basic: '',
  wants: 'a',
}

function asked(split: FirstSplit): unknown {
  const shared = splitFirst(split, 'USD', 2)
  return shared.ok ? [shared.value.total, shared.value.a, shared.value.b] : shared.faults
}

describe('a first split, worked by hand', () => {
  test('halves: 900.00 of materials and 20 hours at 15.00 are 1,200.00, so 600.00 each', () => {
    expect(asked(typed)).toEqual([120000n, 60000n, 60000n])
  })

  test('by length, 40 ft and 20 ft: two thirds and one third of 1,200.00', () => {
    expect(asked({ ...typed, way: 'length', frontA: '40 ft', frontB: '20 ft' })).toEqual([
      120000n,
      80000n,
      40000n,
    ])
  })

  test('pay the difference: of a basic fence of 700.00 half each, the 500.00 above it by whoever wants more', () => {
    expect(asked({ ...typed, way: 'difference', basic: '700.00', wants: 'b' })).toEqual([
      120000n,
      35000n,
      85000n,
    ])
  })

  test('materials alone, or work alone, can be split; what the worker brings is told apart', () => {
    expect(asked({ ...typed, hours: '', rate: '' })).toEqual([90000n, 45000n, 45000n])
    const work = splitFirst({ ...typed, materials: '', by: 'b' }, 'USD', 2)
    expect(work.ok && work.value.promised).toEqual({ a: 0n, b: 30000n })
  })
})

describe('a first split that can’t be worked out', () => {
  test.each<[string, Partial<FirstSplit>, readonly [string, string][]]>([
    [
      'nothing typed',
      { length: '', height: '', materials: '', hours: '', rate: '' },
      [
        ['length', 'needed'],
        ['materials', 'needed'],
      ],
    ],
    ['a length without a unit', { length: '60' }, [['length', 'length-form']]],
    ['a fence of less than nothing', { length: '-60 ft' }, [['length', 'length-negative']]],
    ['half a cent', { materials: '900.005' }, [['materials', 'money-digits']]],
    ['hours in words', { hours: 'twenty' }, [['hours', 'number-form']]],
    ['hours that are worth nothing said', { rate: '' }, [['rate', 'needed']]],
    [
      'by length without the lengths',
      { way: 'length' },
      [
        ['frontA', 'needed'],
        ['frontB', 'needed'],
      ],
    ],
    [
      'by lengths of nothing',
      { way: 'length', frontA: '0 ft', frontB: '0 ft' },
      [
        ['frontA', 'weights-zero'],
        ['frontA', 'weights-zero'],
      ],
    ],
    ['pay the difference without a basic fence', { way: 'difference' }, [['basic', 'needed']]],
  ])('%s', (_what, change, faults) => {
    const split = splitFirst({ ...typed, ...change }, 'USD', 2)
    expect(split.ok ? [] : split.faults.map(({ path, kind }) => [path, kind])).toEqual(faults)
  })
})

test('the section that is kept has one cost line and one labour line, along the whole line', () => {
  const naming = { name: 'The whole fence', materials: 'all materials', work: 'all the work', unit: 'lot' }
  expect(firstSection(typed, naming, '0 ft')).toMatchObject({
    name: 'The whole fence',
    from: '0 ft',
    to: '60 ft',
    height: { agreed: '5 ft' },
    materials: [{ what: 'all materials', quantity: '1', unitPrice: '900.00', suppliedBy: 'bought' }],
    labour: [{ task: 'all the work', hours: '20', rate: '15.00', by: 'a' }],
    share: { materials: { principle: 'equal' }, labour: { principle: 'equal' } },
  })
})
