import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { sectionOf, statementWith } from '../core/madeNotebook.ts'
import { airportCharges, airportGame } from './airport.ts'
import { Fraction } from './fraction.ts'
import { chargesFor, savingsOf } from './game.ts'
import { nucleolus } from './nucleolus.ts'
import { shapleyValue } from './shapley.ts'

const whole = (costs: readonly number[]) => costs.map((cost) => new Fraction(cost))

describe('the airport game of Littlechild & Owen, Management Science 20 (1973)', () => {
  test.each([
    ['found in a public text, recomputed', [8, 11, 13, 18], ['2', '3', '4', '9']],
    ['found in a public text', [1500, 2200, 3000], ['500', '850', '1650']],
    ['found in a public text', [1500, 2200, 3500], ['500', '850', '2150']],
    [
      'found in a public text, recomputed',
      [40, 50, 60, 70, 80, 90],
      ['20/3', '26/3', '67/6', '29/2', '39/2', '59/2'],
    ],
  ])('%s: %j', (_, costs, charges) => {
    expect(airportCharges(whole(costs)).map(String)).toEqual(charges)
    expect(shapleyValue(airportGame(whole(costs))).map(String)).toEqual(charges)
  })

  test('recomputed: its nucleolus is another rule from four parties on', () => {
    const game = airportGame(whole([8, 11, 13, 18]))
    expect(chargesFor(game, nucleolus(savingsOf(game))).map(String)).toEqual(['13/4', '13/4', '13/4', '33/4'])
  })
})

/** What the program asks for where a wants no more than the basic fence and b pays what is above it. */
function payTheDifference(
  basic: string,
  dearer: string,
  above: object = { upgradeShare: { principle: 'one', household: 'b' } },
): [bigint, bigint] {
  const principle = 'difference'
  const { asked } = statementWith({
    sections: [sectionOf(dearer, { principle, basic, basicShare: { principle: 'equal' }, ...above })],
  })
  return [asked.a, asked.b]
}

describe('“pay the difference” is the airport game of two, a derivation', () => {
  test('a basic fence at 2400 and a dearer one at 3600 ask for 1200 and 2400', () => {
    expect(payTheDifference('2400', '3600')).toEqual([120_000n, 240_000n])
    expect(shapleyValue(airportGame(whole([2400, 3600]))).map(String)).toEqual(['1200', '2400'])
  })

  test('6 and 8 ask for 3 and 5', () => {
    expect(payTheDifference('6', '8')).toEqual([300n, 500n])
  })

  test('for any two whole costs whose halves are whole', () => {
    fc.assert(
      fc.property(fc.nat(100_000), fc.nat(100_000), (basic, more) => {
        const [a, b] = payTheDifference(`${basic * 2}`, `${basic * 2 + more}`)
        const charges = shapleyValue(airportGame(whole([basic * 2, basic * 2 + more])))
        expect([`${a / 100n}`, `${b / 100n}`]).toEqual(charges.map(String))
      }),
    )
  })

  test('a named upgrade of one household is the second stage of the runway, whoever of the two wants it', () => {
    fc.assert(
      fc.property(
        fc.nat(100_000),
        fc.nat(100_000),
        fc.constantFrom('a' as const, 'b' as const),
        (half, more, household) => {
          const [basic, dearer] = [half * 2, half * 2 + more]
          const upgrades = [{ what: 'one foot more', amount: `${more}`, household }]
          const asked = payTheDifference(`${basic}`, `${dearer}`, {
            upgradeShare: { principle: 'equal' },
            upgrades,
          })
          const needs = household === 'a' ? [dearer, basic] : [basic, dearer]
          const charges = shapleyValue(airportGame(whole(needs)))
          expect(asked.map((minor) => `${minor / 100n}`)).toEqual(charges.map(String))
        },
      ),
    )
  })
})
