import { describe, expect, test } from 'vitest'
import { faultsWith, sectionOf, statementWith } from '../madeNotebook.ts'

/** What a and b are asked for of one pot of materials. */
function sharesOf(price: string, materials: unknown): [bigint, bigint] {
  const { asked } = statementWith({ sections: [sectionOf(price, materials)] })
  return [asked.a, asked.b]
}

function gateShares(uses: unknown, price = '140'): [bigint, bigint] {
  const { asked } = statementWith({ gates: [{ ...sectionOf(price, { principle: 'use' }, 'g1'), uses }] })
  return [asked.a, asked.b]
}

describe('halves', () => {
  test('ask each for half', () => {
    expect(sharesOf('900', { principle: 'equal' })).toEqual([45000n, 45000n])
  })

  test('of an odd cent ask a for it when nobody was asked before', () => {
    expect(sharesOf('0.01', { principle: 'equal' })).toEqual([1n, 0n])
  })
})

describe('agreed parts', () => {
  test('follow the percentages', () => {
    expect(sharesOf('900', { principle: 'percent', a: '30', b: '70' })).toEqual([27000n, 63000n])
  })

  test('with four digits after the point go to the larger remainder', () => {
    // 100.00 × 33.3333 % = 33.3333 and 66.6667
    expect(sharesOf('100', { principle: 'percent', a: '33.3333', b: '66.6667' })).toEqual([3333n, 6667n])
  })

  test('of 100 and 0 ask one household for all', () => {
    expect(sharesOf('9.99', { principle: 'percent', a: '100', b: '0' })).toEqual([999n, 0n])
  })
})

describe('one household', () => {
  test('is asked for all', () => {
    expect(sharesOf('900', { principle: 'one', household: 'a' })).toEqual([90000n, 0n])
    expect(sharesOf('900', { principle: 'one', household: 'b' })).toEqual([0n, 90000n])
  })
})

describe('by length', () => {
  test('asks in proportion to what each fronts, whatever the units', () => {
    expect(sharesOf('100', { principle: 'length', a: '30 ft', b: '120 in' })).toEqual([7500n, 2500n])
  })

  test('compares feet and metres exactly', () => {
    // 1 ft is 304.8 mm: of 1.3048 m in all it is 0.23359…
    expect(sharesOf('13048', { principle: 'length', a: '1 ft', b: '1 m' })).toEqual([304_800n, 1_000_000n])
  })

  test('asks nothing of a household that fronts none', () => {
    expect(sharesOf('100', { principle: 'length', a: '0 ft', b: '10 ft' })).toEqual([0n, 10000n])
  })

  test('is refused where neither fronts anything, at the place of the share', () => {
    const sections = [sectionOf('100', { principle: 'length', a: '0 ft', b: '0 m' })]
    expect(faultsWith({ sections })).toEqual([
      { path: 'sections[0].share.materials', kind: 'weights-zero', principle: 'length' },
    ])
  })
})

describe('by use', () => {
  test('asks in proportion to the passages of the gate', () => {
    expect(gateShares({ a: '5', b: '9' })).toEqual([5000n, 9000n])
  })

  test('takes a household that is not mentioned as never passing', () => {
    expect(gateShares({ b: '3' })).toEqual([0n, 14000n])
  })

  test('is refused where nobody passes', () => {
    for (const uses of [{ a: '0', b: '0' }, {}, undefined]) {
      const gates = [{ ...sectionOf('140', { principle: 'use' }, 'g1'), ...(uses ? { uses } : {}) }]
      expect(faultsWith({ gates })).toEqual([
        { path: 'gates[0].share.materials', kind: 'weights-zero', principle: 'use' },
      ])
    }
  })

  test('is refused on a section', () => {
    expect(faultsWith({ sections: [sectionOf('1', { principle: 'use' })] })).toEqual([
      { path: 'sections[0].share.materials.principle', kind: 'use-off-gate' },
    ])
  })
})

describe('by benefit', () => {
  test('asks in proportion to the points', () => {
    expect(sharesOf('100', { principle: 'benefit', a: '3', b: '1' })).toEqual([7500n, 2500n])
    expect(sharesOf('100', { principle: 'benefit', a: '0.000001', b: '0.000003' })).toEqual([2500n, 7500n])
  })

  test('is refused where both have none', () => {
    const sections = [sectionOf('100', { principle: 'benefit', a: '0', b: '0.0' })]
    expect(faultsWith({ sections })).toMatchObject([{ kind: 'weights-zero', principle: 'benefit' }])
  })
})

describe('share the saving', () => {
  test('asks each for its own fence less half of the saving', () => {
    expect(sharesOf('1500', { principle: 'saving', aloneA: '900', aloneB: '1800' })).toEqual([
      30000n,
      120000n,
    ])
  })

  test('asks each for its own fence where nothing is saved', () => {
    expect(sharesOf('30', { principle: 'saving', aloneA: '10', aloneB: '20' })).toEqual([1000n, 2000n])
  })

  test('may leave a household nothing to pay, or all', () => {
    expect(sharesOf('20', { principle: 'saving', aloneA: '0', aloneB: '20' })).toEqual([0n, 2000n])
    expect(sharesOf('20', { principle: 'saving', aloneA: '30', aloneB: '10' })).toEqual([2000n, 0n])
  })

  test('is refused where both are cheaper apart, and says by how much', () => {
    const sections = [sectionOf('24', { principle: 'saving', aloneA: '10', aloneB: '10' })]
    expect(faultsWith({ sections })).toEqual([
      {
        path: 'sections[0].share.materials',
        kind: 'saving-dearer',
        pot: '24.00',
        alone: '20.00',
        over: '4.00',
      },
    ])
  })

  test('is refused where a household would be paid, and says which', () => {
    const share = (aloneA: string, aloneB: string) => ({
      sections: [sectionOf('10', { principle: 'saving', aloneA, aloneB })],
    })
    const path = 'sections[0].share.materials'
    expect(faultsWith(share('1', '21'))).toEqual([
      { path, kind: 'saving-outside', household: 'a', share: '-5.00', pot: '10.00' },
    ])
    expect(faultsWith(share('21', '1'))).toEqual([
      { path, kind: 'saving-outside', household: 'b', share: '-5.00', pot: '10.00' },
    ])
  })

  test('refused by half a cent still names an amount below nothing', () => {
    const sections = [sectionOf('0.01', { principle: 'saving', aloneA: '0', aloneB: '0.02' })]
    const [fault] = faultsWith({ sections })
    expect(fault).toMatchObject({ kind: 'saving-outside', household: 'a' })
    expect(fault && 'share' in fault && fault.share).toMatch(/^-/)
  })
})

describe('a pot of nothing', () => {
  test.each([
    ['by length of nothing', { principle: 'length', a: '0 ft', b: '0 ft' }],
    ['by benefit of nothing', { principle: 'benefit', a: '0', b: '0' }],
    ['share the saving of nothing', { principle: 'saving', aloneA: '0', aloneB: '5' }],
    ['agreed parts', { principle: 'percent', a: '100', b: '0' }],
  ])('is shared as nothing and nothing: %s', (_, materials) => {
    expect(sharesOf('0', materials)).toEqual([0n, 0n])
  })
})
