import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { contestedGarment } from './contestedGarment.ts'
import { Fraction, largerOf, smallerOf, sum, zero } from './fraction.ts'
import type { Game } from './game.ts'
import { holds } from './game.ts'
import { nucleolus } from './nucleolus.ts'

/** What a group of creditors is left when all others have been paid in full. */
function claimsGame(estate: Fraction, claims: readonly Fraction[]): Game {
  const worth = (group: number) => {
    const others = sum(claims.filter((_, player) => !holds(group, player)))
    return largerOf(zero, estate.minus(others))
  }
  return { players: claims.length, worth }
}

/** The Talmud rule of R. J. Aumann & M. Maschler: up to half of all claims by equal gains on half claims, then by equal losses. */
function talmud(estate: Fraction, claims: readonly Fraction[]): Fraction[] {
  const halves = claims.map((claim) => claim.dividedBy(new Fraction(2)))
  const half = sum(halves)
  if (estate.compare(half) <= 0) return equalGains(estate, halves)
  const losses = equalGains(sum(claims).minus(estate), halves)
  return claims.map((claim, place) => claim.minus(losses[place] ?? zero))
}

/** Everybody the same, but nobody above its claim. */
function equalGains(estate: Fraction, claims: readonly Fraction[]): Fraction[] {
  const order = claims
    .map((_, place) => place)
    .sort((one, other) => (claims[one] ?? zero).compare(claims[other] ?? zero))
  const given = claims.map(() => zero)
  let rest = estate
  order.forEach((place, index) => {
    const equal = rest.dividedBy(new Fraction(claims.length - index))
    given[place] = smallerOf(claims[place] ?? zero, equal)
    rest = rest.minus(given[place] ?? zero)
  })
  return given
}

const whole = (...figures: number[]) => figures.map((figure) => new Fraction(figure))

describe('the contested garment, Aumann & Maschler, J. Econ. Theory 36 (1985)', () => {
  test('from memory of the paper, recomputed: of one garment, claims of all and of half get ¾ and ¼', () => {
    expect(contestedGarment(new Fraction(1), [new Fraction(1), new Fraction(1, 2)]).map(String)).toEqual([
      '3/4',
      '1/4',
    ])
  })

  test.each([
    [200, [100, 200], ['50', '150']],
    [125, [100, 300], ['50', '75']],
  ] as const)('recomputed: of %i, claims of %j', (estate, [first, second], parts) => {
    const claims: [Fraction, Fraction] = [new Fraction(first), new Fraction(second)]
    expect(contestedGarment(new Fraction(estate), claims).map(String)).toEqual(parts)
  })
})

describe('the Talmud rule is the nucleolus of the claims game', () => {
  test.each([
    ['found in a public text', 100, ['100/3', '100/3', '100/3']],
    ['found in a public text', 200, ['50', '75', '75']],
    ['found in a public text', 300, ['50', '100', '150']],
    ['found in a public text', 400, ['50', '125', '225']],
    ['found in a public text', 450, ['50', '150', '250']],
    ['found in a public text', 500, ['200/3', '500/3', '800/3']],
    ['found in a public text', 550, ['250/3', '550/3', '850/3']],
    ['found in a public text', 600, ['100', '200', '300']],
  ])(
    '%s (table of “Ketubot 93a”; documentation of the R package ClaimsProblems): claims 100, 200, 300 on %i',
    (_, estate, parts) => {
      const claims = whole(100, 200, 300)
      expect(talmud(new Fraction(estate), claims).map(String)).toEqual(parts)
      expect(nucleolus(claimsGame(new Fraction(estate), claims)).map(String)).toEqual(parts)
    },
  )
})

test('for two claims all three are one rule', () => {
  const claim = fc.integer({ min: 1, max: 1000 })
  fc.assert(
    fc.property(claim, claim, fc.nat(1000), (first, second, part) => {
      const claims: [Fraction, Fraction] = [new Fraction(first), new Fraction(second)]
      const estate = sum(claims).times(new Fraction(part, 1000))
      const expected = contestedGarment(estate, claims).map(String)
      expect(talmud(estate, claims).map(String)).toEqual(expected)
      expect(nucleolus(claimsGame(estate, claims)).map(String)).toEqual(expected)
    }),
  )
})
