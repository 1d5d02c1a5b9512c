import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { minorUnits, moneyText } from '../../lib/core/amounts/money.ts'
import { exactShare } from '../../lib/core/shares/exactShare.ts'
import { faultText } from '../../lib/words/faultText.ts'
import { faultsWith, sectionOf, statementWith } from '../core/madeNotebook.ts'
import { contestedGarment } from './contestedGarment.ts'
import { Fraction } from './fraction.ts'
import { chargesFor, gameOf, savingsOf } from './game.ts'
import { nucleolus } from './nucleolus.ts'
import { equalChargeOfTheRest, separableCostsRemainingBenefits } from './separableCosts.ts'
import { shapleyValue } from './shapley.ts'

const costs = (aloneA: string, aloneB: string, together: string) =>
  gameOf(2, { 1: aloneA, 2: aloneB, 12: together })

/** What the program asks for, in money. */
function shareTheSaving(aloneA: string, aloneB: string, together: string): string[] {
  const { asked } = statementWith({
    sections: [sectionOf(together, { principle: 'saving', aloneA, aloneB })],
  })
  return [moneyText(asked.a, 2), moneyText(asked.b, 2)]
}

/** The program's exact share of a, before any rounding, in whole units of money. */
function exactShareOfA(aloneA: string, aloneB: string, together: string): Fraction {
  const principle = { principle: 'saving', aloneA, aloneB, sourceA: '', sourceB: '' } as const
  const share = exactShare(principle, minorUnits(together, 2), { path: '', digits: 2, uses: undefined })
  if (!share.ok) throw new Error(JSON.stringify(share.faults))
  return new Fraction(share.value.over, share.value.under * 100n)
}

describe('“share the saving” of two households, a derivation that was recomputed', () => {
  test.each([
    ['900', '1500', '1800', '600.00', '1200.00'],
    // The costs of hiring a car alone and together were found in a public text (V. Fragnelli, lecture, 2002).
    ['70', '40', '90', '60.00', '30.00'],
    ['2400', '1600', '3000', '1900.00', '1100.00'],
  ])('alone %s and %s, together %s: %s and %s', (aloneA, aloneB, together, a, b) => {
    expect(shareTheSaving(aloneA, aloneB, together)).toEqual([a, b])
    const exact = [a, b].map((share) => String(Fraction.of(share)))
    const game = costs(aloneA, aloneB, together)
    expect(shapleyValue(game).map(String)).toEqual(exact)
    expect(chargesFor(game, nucleolus(savingsOf(game))).map(String)).toEqual(exact)
    expect(separableCostsRemainingBenefits(game).map(String)).toEqual(exact)
  })

  test('it is neither halves nor in proportion to what each would pay alone', () => {
    // 900 and 1500 alone, 1800 together: in proportion 675 and 1125, in halves 900 and 900.
    expect(shareTheSaving('900', '1500', '1800')).not.toEqual(['675.00', '1125.00'])
    expect(shareTheSaving('900', '1500', '1800')).not.toEqual(['900.00', '900.00'])
  })

  const cents = fc.nat(500_000)
  const games = fc.tuple(cents, cents, cents).map(([one, other, saved]) => {
    // Together at least the dearer of the two and at most both: then no share falls outside of the pot.
    const dearer = Math.max(one, other)
    const together = one + other - (saved % (one + other - dearer + 1))
    return [one, other, together].map((amount) => moneyText(BigInt(amount), 2)) as [string, string, string]
  })

  test('for any two households it is the Shapley value, to the last fraction of a cent', () => {
    fc.assert(
      fc.property(games, (game) => {
        expect(String(exactShareOfA(...game))).toBe(
          BigInt(minorUnits(game[2], 2)) === 0n ? '0' : String(shapleyValue(costs(...game))[0]),
        )
      }),
    )
  })

  test('it is the nucleolus', () => {
    fc.assert(
      fc.property(games, (game) => {
        const savings = nucleolus(savingsOf(costs(...game)))
        expect(String(exactShareOfA(...game))).toBe(String(chargesFor(costs(...game), savings)[0]))
      }),
    )
  })

  test('it is separable costs with remaining benefits, and an equal charge of the rest', () => {
    fc.assert(
      fc.property(games, (game) => {
        const share = String(exactShareOfA(...game))
        expect(share).toBe(String(separableCostsRemainingBenefits(costs(...game))[0]))
        expect(share).toBe(String(equalChargeOfTheRest(costs(...game))[0]))
      }),
    )
  })

  test('it is the contested garment, with the cost together for the garment and the costs alone for the claims', () => {
    fc.assert(
      fc.property(games, ([aloneA, aloneB, together]) => {
        const claims: [Fraction, Fraction] = [Fraction.of(aloneA), Fraction.of(aloneB)]
        const [share] = contestedGarment(Fraction.of(together), claims)
        expect(String(exactShareOfA(aloneA, aloneB, together))).toBe(String(share))
      }),
    )
  })

  test('it never asks a household for more than it would have paid alone', () => {
    fc.assert(
      fc.property(games, (game) => {
        expect(exactShareOfA(...game).compare(Fraction.of(game[0]))).toBeLessThanOrEqual(0)
      }),
    )
  })

  test('10 and 10 alone, 24 together is refused: building apart is cheaper', () => {
    // The formula would ask both for 12, more than alone.
    expect(shapleyValue(costs('10', '10', '24')).map(String)).toEqual(['12', '12'])
    const sections = [sectionOf('24', { principle: 'saving', aloneA: '10', aloneB: '10' })]
    const [fault] = faultsWith({ sections })
    expect(fault?.kind).toBe('saving-dearer')
    expect(fault && faultText(fault)).toContain('costs 4.00 more than building alone')
  })
})
