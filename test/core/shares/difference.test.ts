import { describe, expect, test } from 'vitest'
import { compareRatios, ratio } from '../../../lib/core/amounts/ratio.ts'
import { faultsWith, sectionOf, statementWith } from '../madeNotebook.ts'

const equal = { principle: 'equal' }
const payDifference = (basic: string, basicShare: unknown, upgradeShare: unknown) => ({
  principle: 'difference',
  basic,
  basicShare,
  upgradeShare,
})

function potOf(price: string, materials: unknown) {
  const item = statementWith({ sections: [sectionOf(price, materials)] }).items[0]
  if (item?.pots.form !== 'two pots') throw new Error('two pots were asked for')
  return item.pots.materials
}

describe('pay the difference', () => {
  test('shares the basic fence one way and what is above it another', () => {
    const pot = potOf('1312.35', payDifference('900', equal, { principle: 'one', household: 'a' }))
    expect([pot.a, pot.b]).toEqual([86235n, 45000n])
    expect(pot.parts.map(({ part, pot: size, a, b }) => ({ part, size, a, b }))).toEqual([
      { part: 'basic', size: 90000n, a: 45000n, b: 45000n },
      { part: 'upgrade', size: 41235n, a: 41235n, b: 0n },
    ])
  })

  test('has no upgrade where the fence costs less than the basic one', () => {
    const pot = potOf('500', payDifference('900', equal, { principle: 'benefit', a: '0', b: '0' }))
    expect(pot.parts.map(({ pot: size }) => size)).toEqual([50000n, 0n])
    expect([pot.a, pot.b]).toEqual([25000n, 25000n])
  })

  test('is all upgrade where the basic amount is nothing', () => {
    const pot = potOf('500', payDifference('0', equal, { principle: 'one', household: 'b' }))
    expect([pot.a, pot.b]).toEqual([0n, 50000n])
  })

  test('rounds each of the two by itself, the second knowing the first', () => {
    // Two odd cents of two halves: the first goes to a, the second to b.
    const pot = potOf('0.02', payDifference('0.01', equal, equal))
    expect(pot.parts.map(({ odd }) => odd)).toEqual([
      { to: 'a', because: 'first on a full tie' },
      { to: 'b', because: 'asked for less so far' },
    ])
    expect([pot.a, pot.b]).toEqual([1n, 1n])
  })

  test('keeps the exact fraction of both parts for the hours', () => {
    const pot = potOf('3', payDifference('1', equal, { principle: 'percent', a: '25', b: '75' }))
    // (0.50 + 0.50) / 3
    expect(compareRatios(pot.fractionA, ratio(1n, 3n))).toBe(0)
  })

  test('names the part at fault', () => {
    const nobody = { principle: 'benefit', a: '0', b: '0' }
    const sections = [sectionOf('3', payDifference('1', nobody, nobody))]
    expect(faultsWith({ sections })).toEqual([
      { path: 'sections[0].share.materials.basicShare', kind: 'weights-zero', principle: 'benefit' },
      { path: 'sections[0].share.materials.upgradeShare', kind: 'weights-zero', principle: 'benefit' },
    ])
  })

  test('inside another is refused', () => {
    const inner = payDifference('1', equal, equal)
    expect(faultsWith({ sections: [sectionOf('3', payDifference('1', inner, equal))] })).toEqual([
      { path: 'sections[0].share.materials.basicShare.principle', kind: 'difference-nested' },
    ])
  })
})

/** A share that pays the difference above halves of 900, with these upgrades and the rest asked of both. */
const withUpgrades = (...upgrades: readonly (readonly [string, string, 'a' | 'b'])[]) => ({
  ...payDifference('900', equal, equal),
  upgrades: upgrades.map(([what, amount, household]) => ({ what, amount, household })),
})

describe('several upgrades on one section', () => {
  test('each is asked of its own household, in order, and what is left goes by the share above', () => {
    const pot = potOf('1312.35', withUpgrades(['one foot more', '200', 'a'], ['strips', '150', 'b']))
    expect(pot.parts.map(({ part, pot: size, a, b }) => ({ part, size, a, b }))).toEqual([
      { part: 'basic', size: 90000n, a: 45000n, b: 45000n },
      { part: 'named upgrade', size: 20000n, a: 20000n, b: 0n },
      { part: 'named upgrade', size: 15000n, a: 0n, b: 15000n },
      // 412.35 − 350.00 = 62.35; the odd cent to b, who was asked for 600.00 against 650.00.
      { part: 'upgrade', size: 6235n, a: 3117n, b: 3118n },
    ])
    expect([pot.a, pot.b]).toEqual([68117n, 63118n])
  })

  test('a later one takes no more than earlier ones left, and the last may find nothing', () => {
    const pot = potOf(
      '1100',
      withUpgrades(['height', '150', 'a'], ['strips', '150', 'b'], ['caps', '10', 'a']),
    )
    expect(pot.parts.map(({ pot: size }) => size)).toEqual([90000n, 15000n, 5000n, 0n, 0n])
    expect(pot.parts[2]).toMatchObject({ what: 'strips', amount: 15000n })
    expect([pot.a, pot.b]).toEqual([60000n, 50000n])
  })

  test('their order decides who is asked where the fence comes cheaper than planned', () => {
    const height = ['height', '150', 'a'] as const
    const strips = ['strips', '150', 'b'] as const
    const asked = (...upgrades: readonly (readonly [string, string, 'a' | 'b'])[]) => {
      const pot = potOf('1100', withUpgrades(...upgrades))
      return [pot.a, pot.b]
    }
    expect(asked(height, strips)).toEqual([60000n, 50000n])
    expect(asked(strips, height)).toEqual([50000n, 60000n])
  })

  test('one without a household or an amount is named', () => {
    const upgrades = [{ what: 'height', amount: '', household: '' }]
    const materials = { ...payDifference('900', equal, equal), upgrades }
    expect(faultsWith({ sections: [sectionOf('3', materials)] }).map(({ path }) => path)).toEqual([
      'sections[0].share.materials.upgrades[0].amount',
      'sections[0].share.materials.upgrades[0].household',
    ])
  })
})
