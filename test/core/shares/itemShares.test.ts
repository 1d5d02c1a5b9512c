import { describe, expect, test } from 'vitest'
import { bought, faultsWith, halves, sectionOf, statementWith } from '../madeNotebook.ts'

const equal = { principle: 'equal' }
const work = (hours: string, rate: string, by: string, more: Record<string, unknown> = {}) => ({
  task: 'dig',
  hours,
  rate,
  by,
  ...more,
})

function itemOf(item: Record<string, unknown>) {
  const shared = statementWith({ sections: [{ id: 's1', share: halves, ...item }] }).items[0]
  if (shared === undefined) throw new Error('one item was asked for')
  return shared
}

describe('one pot of both', () => {
  test('holds cheap stock that takes many hours against one figure', () => {
    const item = itemOf({
      materials: [bought('40')],
      labour: [work('10', '20', 'a')],
      share: { together: { principle: 'percent', a: '75', b: '25' } },
    })
    expect([item.materialsTotal, item.labourTotal, item.a, item.b]).toEqual([4000n, 20000n, 18000n, 6000n])
    expect([item.hours.a, item.hours.b]).toEqual([750n, 250n])
  })

  test('makes one even pot of two odd cents', () => {
    const lines = { materials: [bought('0.01')], labour: [work('1', '0.01', 'hired')] }
    const together = itemOf({ ...lines, share: { together: equal } })
    expect(together.pots.form === 'together' && together.pots.together.parts[0]?.odd).toBeUndefined()
    expect([together.a, together.b]).toEqual([1n, 1n])
  })

  test('may hold credits above its materials as long as labour covers them', () => {
    const item = itemOf({
      materials: [bought('5', { credit: true })],
      labour: [work('1', '20', 'hired')],
      share: { together: equal },
    })
    expect([item.materialsTotal, item.total, item.a]).toEqual([-500n, 1500n, 750n])
  })
})

describe('credits', () => {
  test('lower the pot', () => {
    expect(itemOf({ materials: [bought('100'), bought('30', { credit: true })] }).materialsTotal).toBe(7000n)
  })

  test('above the materials are refused, even where labour would cover them', () => {
    const item = { id: 's1', share: halves, labour: [work('9', '9', 'a')] }
    const sections = [{ ...item, materials: [bought('1'), bought('1.01', { credit: true })] }]
    expect(faultsWith({ sections })).toEqual([
      { path: 'sections[0].materials', kind: 'pot-below-zero', below: '0.01' },
    ])
  })

  test('below zero and weights of nothing in the other pot are both named', () => {
    const nobody = { principle: 'benefit', a: '0', b: '0' }
    const sections = [
      {
        id: 's1',
        share: { materials: nobody, labour: nobody },
        materials: [bought('1', { credit: true })],
        labour: [work('1', '1', 'a')],
      },
    ]
    expect(faultsWith({ sections }).map(({ path, kind }) => [path, kind])).toEqual([
      ['sections[0].materials', 'pot-below-zero'],
      ['sections[0].share.labour', 'weights-zero'],
    ])
  })
})

describe('what a household has promised', () => {
  test('is what it gives in kind and the work it counts, priced', () => {
    const { promised } = itemOf({
      materials: [bought('10'), bought('20', { suppliedBy: 'a' }), bought('5', { suppliedBy: 'b' })],
      labour: [work('2', '10', 'a'), work('1', '10', 'b'), work('3', '10', 'hired')],
    })
    expect(promised).toEqual({ a: 4000n, b: 1500n })
  })

  test('is lowered by a credit that it keeps', () => {
    const { promised } = itemOf({
      materials: [bought('20', { suppliedBy: 'a' }), bought('5', { suppliedBy: 'a', credit: true })],
    })
    expect(promised).toEqual({ a: 1500n, b: 0n })
  })

  test('holds no gift', () => {
    const item = itemOf({ labour: [work('2', '10', 'a', { counts: false })] })
    expect(item.promised).toEqual({ a: 0n, b: 0n })
    expect(item.labourTotal).toBe(0n)
    expect(item.hours).toEqual({ hours: 0n, a: 0n, b: 0n, gifts: { a: 200n, b: 0n } })
  })
})

describe('hours', () => {
  test('keep gifts apart from work that counts, for each household', () => {
    const gift = { counts: false }
    const { hours } = itemOf({
      labour: [
        work('4', '10', 'a'),
        work('1.005', '10', 'a', gift),
        work('2', '', 'b', gift),
        work('2', '10', 'b'),
      ],
    })
    expect(hours).toEqual({ hours: 600n, a: 300n, b: 300n, gifts: { a: 101n, b: 200n } })
  })

  test('are asked by the exact fraction of the labour pot, hired ones too', () => {
    const item = itemOf({
      labour: [work('6', '10', 'a'), work('3', '30', 'hired')],
      share: { materials: equal, labour: { principle: 'percent', a: '33.3333', b: '66.6667' } },
    })
    expect([item.hours.hours, item.hours.a, item.hours.b]).toEqual([900n, 300n, 600n])
  })

  test('are halved where the pot is nothing', () => {
    const item = itemOf({
      labour: [work('5', '', 'a')],
      share: { materials: equal, labour: { principle: 'one', household: 'a' } },
    })
    expect([item.hours.a, item.hours.b]).toEqual([250n, 250n])
  })

  test('of an odd hundredth go to the household asked for fewer hours so far', () => {
    const section = (id: string) => ({ id, share: halves, labour: [work('0.01', '1', 'a')] })
    const { items } = statementWith({ sections: [section('s1'), section('s2'), section('s3')] })
    expect(items.map(({ hours }) => [hours.a, hours.b])).toEqual([
      [1n, 0n],
      [0n, 1n],
      [1n, 0n],
    ])
  })
})

describe('the odd cent', () => {
  test('runs over sections, gates and common costs, materials before labour', () => {
    const item = (id: string) => ({
      id,
      share: halves,
      materials: [bought('0.01')],
      labour: [work('1', '0.01', 'hired')],
    })
    const { items } = statementWith({ common: [item('c1')], gates: [item('g1')], sections: [item('s1')] })
    expect(items.map(({ id }) => id)).toEqual(['s1', 'g1', 'c1'])
    for (const { pots } of items) {
      if (pots.form === 'together') throw new Error('two pots were asked for')
      expect([pots.materials.a, pots.labour.a]).toEqual([1n, 0n])
    }
  })

  test('is not moved by what has been given, nor by a cap', () => {
    const sections = [sectionOf('0.01', equal), sectionOf('0.01', equal, 's2')]
    const plain = statementWith({ sections })
    const capped = statementWith({ sections, caps: { a: '0' } })
    expect(capped.items).toEqual(plain.items)
    expect([capped.asked.a, capped.asked.b]).toEqual([0n, 2n])
  })
})

test('an item at fault asks nobody for anything, and the faults of all items come at once', () => {
  const nobody = { principle: 'benefit', a: '0', b: '0' }
  const sections = [sectionOf('1', nobody), sectionOf('1', equal, 's2'), sectionOf('1', nobody, 's3')]
  expect(faultsWith({ sections }).map(({ path }) => path)).toEqual([
    'sections[0].share.materials',
    'sections[2].share.materials',
  ])
})
