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
