import { describe, expect, test } from 'vitest'
import { distanceBetween } from '../../../lib/core/shares/distance.ts'
import { middleShare } from '../../../lib/core/shares/middleShare.ts'
import { bought, halves, notebookWith } from '../madeNotebook.ts'

function apart(one: Record<string, unknown>, other: Record<string, unknown>) {
  const distance = distanceBetween(notebookWith(one), notebookWith(other))
  if (!distance.ok) throw new Error(`can’t be shared: ${JSON.stringify(distance.faults)}`)
  return distance.value
}

const labour = { task: 'dig', hours: '10', rate: '20', by: 'a' }
/** 14 pipes at 10.00 with 5 percent tax: 147.00; 10 hours at 20: 200.00; all halved. */
const section = {
  id: 's1',
  materials: [bought('10', { what: 'pipe', quantity: '14', taxPercent: '5' })],
  labour: [labour],
  share: halves,
}
const planned = { sections: [section] }
const moved = (amount: bigint) => ({ a: amount, b: amount })
const nothing = moved(0n)
const steps = (found: ReturnType<typeof apart>) =>
  found.items[0]?.steps.map(({ causes, moves }) => [causes.join(' '), moves])

describe('where a distance comes from', () => {
  test('more of the same is quantities', () => {
    // 16 pipes come to 168.00: 21.00 more, 10.50 for each.
    const more = { ...section, materials: [{ ...section.materials[0], quantity: '16' }] }
    expect(steps(apart(planned, { sections: [more] }))).toEqual([
      ['quantities', moved(1050n)],
      ['prices', nothing],
      ['hours', nothing],
      ['principle', nothing],
    ])
  })

  test('a line that only one of them has is quantities, and tax goes with the prices', () => {
    // 50.00 of wire; without tax the pipes come to 140.00, 7.00 less.
    const other = {
      ...section,
      materials: [{ ...section.materials[0], taxPercent: '0' }, bought('50')],
    }
    expect(steps(apart(planned, { sections: [other] }))).toEqual([
      ['quantities', moved(2500n)],
      ['prices', moved(-350n)],
      ['hours', nothing],
      ['principle', nothing],
    ])
  })

  test('lines with the same words are told apart by their place', () => {
    const two = (first: string, second: string) => ({
      sections: [{ ...section, labour: [], materials: [bought(first), bought(second)] }],
    })
    // Only the second 'wire' became dearer, by 4.00.
    expect(steps(apart(two('10', '20'), two('10', '24')))).toEqual([
      ['quantities', nothing],
      ['prices', moved(200n)],
      ['hours', nothing],
      ['principle', nothing],
    ])
  })

  test('hours, rates and a task that is done for nothing are hours', () => {
    const gift = { ...section, labour: [{ ...labour, counts: false }] }
    const rated = { ...section, labour: [{ ...labour, rate: '26' }] }
    expect(steps(apart(planned, { sections: [gift] }))?.[2]).toEqual(['hours', moved(-10_000n)])
    expect(steps(apart(planned, { sections: [rated] }))?.[2]).toEqual(['hours', moved(3000n)])
  })

  test('all of it at once, each after the one before', () => {
    // 16 pipes: 168.00. At 12.00: 201.60. 12 hours at 20: 240.00. Then a bears 60 percent of the materials, 120.96.
    const other = {
      ...section,
      materials: [{ ...section.materials[0], quantity: '16', unitPrice: '12' }],
      labour: [{ ...labour, hours: '12' }],
      share: { materials: { principle: 'percent', a: '60', b: '40' }, labour: { principle: 'equal' } },
    }
    const found = apart(planned, { sections: [other] })
    expect(steps(found)).toEqual([
      ['quantities', moved(1050n)],
      ['prices', moved(1680n)],
      ['hours', moved(2000n)],
      ['principle', { a: 2016n, b: -2016n }],
    ])
    expect(found.moves).toEqual({ a: 6746n, b: 2714n })
  })

  test('the passages of a gate are numbers of how it is shared', () => {
    const gate = (a: string) => ({
      gates: [
        {
          id: 'g1',
          materials: [bought('100')],
          uses: { a, b: '5' },
          share: { materials: { principle: 'use' }, labour: { principle: 'equal' } },
        },
      ],
    })
    expect(steps(apart(gate('5'), gate('15')))?.[3]).toEqual(['principle', { a: 2500n, b: -2500n }])
  })

  test('a plan on the way that can’t be shared joins the next', () => {
    // Building alone both would pay 80.00 each. 20 pieces at 5.00 and 10 at 10.00 are 100.00; 20 at 10.00 would cost more than both.
    const shared = (quantity: string, unitPrice: string) => ({
      sections: [
        {
          id: 's1',
          materials: [bought(unitPrice, { quantity })],
          share: {
            materials: { principle: 'saving', aloneA: '80', aloneB: '80' },
            labour: { principle: 'equal' },
          },
        },
      ],
    })
    const found = apart(shared('10', '10'), shared('20', '5.50'))
    expect(steps(found)).toEqual([
      ['quantities prices', moved(500n)],
      ['hours', nothing],
      ['principle', nothing],
    ])
  })
})

describe('odd cents', () => {
  const cent = (id: string, share: Record<string, unknown>) => ({
    id,
    materials: [bought('0.01')],
    share: { materials: share, labour: { principle: 'equal' } },
  })
  const one = (household: string) => ({ principle: 'one', household })

  test('a cent that falls to the other household is a distance of a cent', () => {
    const found = apart(
      { sections: [cent('s1', { principle: 'equal' })] },
      { sections: [cent('s1', one('b'))] },
    )
    expect(found.moves).toEqual({ a: -1n, b: 1n })
    expect(found.middle).toMatchObject({ a: 1n, b: 0n, odd: { to: 'a', because: 'first on a full tie' } })
    expect(steps(found)?.[3]).toEqual(['principle', { a: -1n, b: 1n }])
  })

  test('an item that nobody proposes anything for can move by the cent that a tie decides', () => {
    const withFirst = (share: Record<string, unknown>) => ({
      sections: [cent('s1', share), cent('s2', { principle: 'equal' })],
    })
    const found = apart(withFirst(one('a')), withFirst(one('b')))
    expect(found.items.map(({ id, moves }) => [id, moves])).toEqual([
      ['s1', { a: -1n, b: 1n }],
      ['s2', { a: 1n, b: -1n }],
    ])
    expect(found.moves).toEqual(nothing)
  })
})

describe('caps', () => {
  test('what they move stands beside the items', () => {
    const shared = (a: string, b: string) => ({
      sections: [
        {
          ...section,
          labour: [],
          share: { materials: { principle: 'percent', a, b }, labour: { principle: 'equal' } },
        },
      ],
      caps: { b: '80' },
    })
    // Of 147.00 b would be asked for 73.50, then for 102.90, of which its cap of 80.00 moves 22.90 to a.
    const found = apart(shared('50', '50'), shared('30', '70'))
    expect(found.items[0]?.moves).toEqual({ a: -2940n, b: 2940n })
    expect(found.caps).toEqual({ a: 2290n, b: -2290n })
    expect(found.moves).toEqual({ a: -650n, b: 650n })
  })

  test('a plan that can’t be shared is refused with its faults', () => {
    const short = notebookWith({ ...planned, caps: { a: '1', b: '1' } })
    expect(distanceBetween(notebookWith(planned), short)).toMatchObject({
      ok: false,
      faults: [{ path: 'caps', kind: 'caps-short' }],
    })
  })
})

describe('agreed parts that ask for the middle', () => {
  test.each([
    // Of 100.00 a is asked for 50.00 and 70.00, then for 0 and all; of 0.03 for 0.02 and 0.01.
    [5000n, 7000n, 10_000n, '60', '40'],
    [0n, 10_000n, 10_000n, '50', '50'],
    [2n, 1n, 3n, '50', '50'],
    // 12,345.67 of which 1.00 and 1.01 are asked: 1.005 is 0.00814… percent.
    [100n, 101n, 1_234_567n, '0.0081', '99.9919'],
  ])('%d and %d of %d', (one, other, total, a, b) => {
    const share = middleShare({ from: { a: one, b: total - one }, to: { a: other, b: total - other } })
    expect(share).toEqual({ together: { principle: 'percent', a, b } })
  })

  test('are none where the plans cost differently, or nothing', () => {
    expect(middleShare({ from: { a: 1n, b: 1n }, to: { a: 1n, b: 2n } })).toBeUndefined()
    expect(middleShare({ from: nothing, to: nothing })).toBeUndefined()
  })
})
