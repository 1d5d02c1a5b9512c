import fc from 'fast-check'
import { moneyText } from '../../lib/core/amounts/money.ts'
import { house, type Json, typedNumber } from './randomLines.ts'

const weight = fc.oneof(fc.constantFrom('0', '1', '2', '3', '0.5'), typedNumber(1000, 6))
const length = fc.oneof(
  fc.constantFrom('0 ft', '10 ft', '10 ft', '3 m', '1¾ in', '6\' 2-1/2"'),
  typedNumber(300, 3).map((figure) => `${figure} ft`),
  typedNumber(300, 3).map((figure) => `${figure} m`),
)
const percent = fc.oneof(fc.constant(500_000), fc.nat(1_000_000)).map((tenThousandths) => ({
  a: percentText(tenThousandths),
  b: percentText(1_000_000 - tenThousandths),
}))

function percentText(tenThousandths: number): string {
  return `${Math.floor(tenThousandths / 10_000)}.${String(tenThousandths % 10_000).padStart(4, '0')}`
}

const isNothing = (typed: string) => !/[1-9¼½¾]/.test(typed)

/** A principle that holds for a pot of so many minor units. */
export function simplePrinciple(pot: bigint, digits: number, uses: Json | undefined): fc.Arbitrary<Json> {
  const everywhere = [
    fc.constant({ principle: 'equal' }),
    percent.map((pair) => ({ principle: 'percent', ...pair })),
    house.map((household) => ({ principle: 'one', household })),
    fc.record({ a: length, b: length }).map(({ a, b }) => ({
      principle: 'length',
      a: isNothing(a) && isNothing(b) ? '1 ft' : a,
      b,
    })),
    fc.record({ a: weight, b: weight }).map(({ a, b }) => ({
      principle: 'benefit',
      a: isNothing(a) && isNothing(b) ? '1' : a,
      b,
    })),
    // Any share of a and any saving from nothing up: building alone costs the share and half of the saving more.
    fc
      .record({
        ofPot: fc.bigInt({ min: 0n, max: pot }),
        halfSaving: fc.bigInt({ min: 0n, max: 1000n }),
        odd: fc.boolean(),
      })
      .map(({ ofPot, halfSaving, odd }) => ({
        principle: 'saving',
        aloneA: moneyText(ofPot + halfSaving, digits),
        aloneB: moneyText(pot - ofPot + halfSaving + (odd && ofPot > 0n ? 1n : 0n), digits),
      })),
  ]
  return fc.oneof(...everywhere, ...(uses ? [fc.constant({ principle: 'use' })] : []))
}

export function principle(pot: bigint, digits: number, uses: Json | undefined): fc.Arbitrary<Json> {
  const difference = fc.bigInt({ min: 0n, max: pot + pot / 2n + 1n }).chain((basic) => {
    const basicPot = basic < pot ? basic : pot
    return upgradesOf(pot - basicPot).chain((upgrades) => {
      const named = upgrades.reduce((sum, { amount }) => sum + amount, 0n)
      const above = pot - basicPot
      return fc.record({
        principle: fc.constant('difference'),
        basic: fc.constant(moneyText(basic, digits)),
        basicShare: simplePrinciple(basicPot, digits, uses),
        upgradeShare: simplePrinciple(named < above ? above - named : 0n, digits, uses),
        ...(upgrades.length === 0
          ? {}
          : {
              upgrades: fc.constant(
                upgrades.map((one) => ({ ...one, amount: moneyText(one.amount, digits) })),
              ),
            }),
      })
    })
  })
  return fc.oneof(
    { weight: 3, arbitrary: simplePrinciple(pot, digits, uses) },
    { weight: 1, arbitrary: difference },
  )
}

/** Upgrades that households want for themselves: none, or some that may come to less or to more than there is. */
function upgradesOf(above: bigint): fc.Arbitrary<{ what: string; amount: bigint; household: string }[]> {
  return fc.array(
    fc.record({
      what: fc.constantFrom('', 'one foot more height', 'strips'),
      amount: fc.bigInt({ min: 0n, max: above / 2n + 1n }),
      household: house,
    }),
    { maxLength: 3 },
  )
}

/** Two pots, or one of both. */
export function randomShare(
  materials: bigint,
  labour: bigint,
  digits: number,
  uses: Json | undefined,
): fc.Arbitrary<Json> {
  return fc.oneof(
    {
      weight: 3,
      arbitrary: fc.record({
        materials: principle(materials, digits, uses),
        labour: principle(labour, digits, uses),
      }),
    },
    { weight: 1, arbitrary: fc.record({ together: principle(materials + labour, digits, uses) }) },
  )
}
