import { describe, expect, test } from 'vitest'
import { moneyText } from '../../lib/core/amounts/money.ts'
import { sectionOf, statementWith } from '../core/madeNotebook.ts'

// Statutes illustrate a principle: what they say about sharing comes out of the program's principle of that kind. This
// is an illustration, not advice; they were found in public texts, may have changed, and hold only where they hold.

function asked(price: string, materials: unknown): [string, string] {
  const { asked } = statementWith({ sections: [sectionOf(price, materials)] })
  return [moneyText(asked.a, 2), moneyText(asked.b, 2)]
}

const equal = { principle: 'equal' }

describe('an illustration, not advice', () => {
  test('equal shares: California Civil Code §841 presumes that owners of adjoining land benefit equally', () => {
    expect(asked('4800', equal)).toEqual(['2400.00', '2400.00'])
  })

  test('sufficient fence and the excess: NSW Dividing Fences Act 1991 s 7 halves a sufficient fence, and who wants more bears the rest', () => {
    const share = { principle: 'difference', basic: '3000', basicShare: equal }
    const wantsMore = { principle: 'one', household: 'b' }
    expect(asked('4200', { ...share, upgradeShare: wantsMore })).toEqual(['1500.00', '2700.00'])
    // Nobody wants more: both bear half.
    expect(asked('3000', { ...share, upgradeShare: wantsMore })).toEqual(['1500.00', '1500.00'])
  })

  test('by length: Indiana Code 32-26-9-3 asks each owner in proportion to the rods it owns along the line', () => {
    // 40 rods against 20: a rod is 16½ ft.
    expect(asked('900', { principle: 'length', a: '660 ft', b: '330 ft' })).toEqual(['600.00', '300.00'])
  })
})
