import { describe, expect, test } from 'vitest'
import { Fraction, sum } from './fraction.ts'
import { chargesFor, gameOf, isInCore, savingsOf } from './game.ts'
import { completed } from './largestRemainder.ts'
import { nucleolus } from './nucleolus.ts'
import { equalChargeOfTheRest, separableCosts, separableCostsRemainingBenefits } from './separableCosts.ts'
import { shapleyValue } from './shapley.ts'

// The methods of this folder are general; here they are held against games of three and four parties that have been
// published, so that they may then judge the two-party rules of the program.

const texts = (fractions: readonly Fraction[]) => fractions.map(String)

/**
 * From memory of the Tennessee Valley Authority's costs (J. S. Ransmeier, 1942; P. D. Straffin & J. P. Heaney, Int. J.
 * Game Theory 10, 1981; H. P. Young, Handbook of Game Theory vol. 2, 1994), thousand dollars: 1 navigation, 2 flood
 * control, 3 power. The figures agree with one another and with the solutions below, which were recomputed.
 */
const valley = gameOf(3, {
  1: 163520,
  2: 140826,
  3: 250096,
  12: 301607,
  13: 378821,
  23: 367370,
  123: 412584,
})

describe('the valley authority, from memory of the papers named above, recomputed', () => {
  test('separable costs', () => {
    expect(texts(separableCosts(valley))).toEqual(['45214', '33763', '110977'])
  })

  test('Shapley value', () => {
    expect(texts(shapleyValue(valley))).toEqual(['117829', '201513/2', '387997/2'])
  })

  test('nucleolus: every purpose saves 47286', () => {
    const savings = nucleolus(savingsOf(valley))
    expect(texts(savings)).toEqual(['47286', '47286', '47286'])
    expect(texts(chargesFor(valley, savings))).toEqual(['116234', '93540', '202810'])
  })

  test('separable costs, remaining benefits, to whole thousands', () => {
    const exact = separableCostsRemainingBenefits(valley)
    expect(String(sum(exact))).toBe('412584')
    expect(completed(412584n, exact)).toEqual([117476n, 99157n, 195951n])
  })

  test('equal charge of the rest', () => {
    expect(texts(equalChargeOfTheRest(valley))).toEqual(['119424', '107973', '185187'])
  })

  test('all of them, and even equal thirds, leave no group better off alone', () => {
    const third = new Fraction(412584, 3)
    const rules = [
      shapleyValue(valley),
      separableCostsRemainingBenefits(valley),
      chargesFor(valley, nucleolus(savingsOf(valley))),
      [third, third, third],
    ]
    for (const charges of rules) expect(isInCore(valley, charges)).toBe(true)
    expect(isInCore(valley, [new Fraction(412584), new Fraction(0), new Fraction(0)])).toBe(false)
  })

  test('rounded by itself each charge would be one over; the largest remainder is not', () => {
    const roundedAlone = shapleyValue(valley).map((charge) => charge.plus(new Fraction(1, 2)).floor)
    expect(roundedAlone.reduce((total, charge) => total + charge, 0n)).toBe(412585n)
    expect(completed(412584n, shapleyValue(valley)).reduce((total, charge) => total + charge, 0n)).toBe(
      412584n,
    )
  })
})

describe('games that are printed in public documents', () => {
  test('four players, documentation of the R package CoopGame: nucleolus found in a public text, Shapley recomputed', () => {
    const game = gameOf(4, {
      1: 0,
      2: 0,
      3: 0,
      4: 0,
      12: 5,
      13: 5,
      14: 8,
      23: 9,
      24: 10,
      34: 8,
      123: 13,
      124: 15,
      134: 16,
      234: 17,
      1234: 21,
    })
    expect(texts(nucleolus(game))).toEqual(['7/2', '9/2', '11/2', '15/2'])
    expect(texts(shapleyValue(game))).toEqual(['47/12', '21/4', '21/4', '79/12'])
  })

  test('three producers, documentation of the R package coopProductGame: nucleolus found in a public text, Shapley recomputed', () => {
    const game = gameOf(3, { 1: 68, 2: 102, 3: 0, 12: 170, 13: 710, 23: 762, 123: 992 })
    expect(texts(nucleolus(game))).toEqual(['149', '192', '651'])
    expect(texts(shapleyValue(game))).toEqual(['229', '272', '491'])
  })

  test('three insurers, J. Lemaire, ASTIN Bulletin 21 (1991): figures found in a public text, solutions from memory, recomputed', () => {
    const game = gameOf(3, {
      1: 46125,
      2: 17437.5,
      3: 5812.5,
      12: 69187.5,
      13: 53812.5,
      23: 30750,
      123: 90000,
    })
    expect(texts(shapleyValue(game))).toEqual(['51750', '25875', '12375'])
    expect(nucleolus(game).map((part) => String(part))).toEqual(
      ['52687.5', '24468.75', '12843.75'].map((printed) => String(Fraction.of(printed))),
    )
  })

  test('three creditors, documentation of the R package CoopGame, found in a public text: 300 for claims of 100, 200, 300', () => {
    const game = gameOf(3, { 1: 0, 2: 0, 3: 0, 12: 0, 13: 100, 23: 200, 123: 300 })
    expect(texts(nucleolus(game))).toEqual(['50', '100', '150'])
  })
})
