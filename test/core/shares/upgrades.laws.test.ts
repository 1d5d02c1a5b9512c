import fc from 'fast-check'
import { expect, test } from 'vitest'
import type { PotShare } from '../../../lib/core/shares/potShare.ts'
import { sectionOf, statementWith } from '../madeNotebook.ts'

type Upgrade = { what: string; cents: number; household: 'a' | 'b' }
const money = (cents: number) => `${Math.floor(cents / 100)}.${String(cents % 100).padStart(2, '0')}`

/** A pot that pays the difference above halves, the rest in halves too. */
function potOf(cents: number, basic: number, upgrades?: readonly Upgrade[]): PotShare {
  const equal = { principle: 'equal' }
  const item = statementWith({
    sections: [
      sectionOf(money(cents), {
        principle: 'difference',
        basic: money(basic),
        basicShare: equal,
        upgradeShare: equal,
        ...(upgrades && {
          upgrades: upgrades.map(({ what, cents: amount, household }) => ({
            what,
            amount: money(amount),
            household,
          })),
        }),
      }),
    ],
  }).items[0]
  if (item?.pots.form !== 'two pots') throw new Error('two pots were asked for')
  return item.pots.materials
}

const cents = fc.nat(100_000)
const upgrades = fc.array(
  fc.record({ what: fc.constant('more'), cents, household: fc.constantFrom('a' as const, 'b' as const) }),
  { maxLength: 5 },
)

test('parts add to the pot, each upgrade to no more than it was put at, asked of its own household alone', () => {
  fc.assert(
    fc.property(cents, cents, upgrades, (total, basic, wanted) => {
      const pot = potOf(total, basic, wanted)
      expect(pot.parts.reduce((sum, part) => sum + part.pot, 0n)).toBe(BigInt(total))
      expect(pot.a + pot.b).toBe(BigInt(total))
      for (const [at, one] of wanted.entries()) {
        const part = pot.parts[at + 1]
        expect(part?.pot).toBeLessThanOrEqual(BigInt(one.cents))
        expect(part?.[one.household]).toBe(part?.pot)
      }
    }),
  )
})

test('an upgrade is asked for whole before the next is asked for anything', () => {
  fc.assert(
    fc.property(cents, cents, upgrades, (total, basic, wanted) => {
      const { parts } = potOf(total, basic, wanted)
      const short = wanted.findIndex((one, at) => (parts[at + 1]?.pot ?? 0n) < BigInt(one.cents))
      if (short < 0) return
      expect(parts.slice(short + 2).map(({ pot }) => pot)).toEqual(parts.slice(short + 2).map(() => 0n))
    }),
  )
})

test('without upgrades, or with upgrades of nothing, all is as it was before there were any', () => {
  fc.assert(
    fc.property(cents, cents, (total, basic) => {
      const plain = potOf(total, basic)
      expect(potOf(total, basic, [])).toEqual(plain)
      const { a, b } = potOf(total, basic, [{ what: 'nothing', cents: 0, household: 'a' }])
      expect({ a, b }).toEqual({ a: plain.a, b: plain.b })
    }),
  )
})

test('two upgrades of one household, one after the other, ask for what one of both amounts asks', () => {
  fc.assert(
    fc.property(cents, cents, cents, cents, (total, basic, first, second) => {
      const apart = potOf(total, basic, [
        { what: 'height', cents: first, household: 'b' },
        { what: 'strips', cents: second, household: 'b' },
      ])
      const joined = potOf(total, basic, [{ what: 'both', cents: first + second, household: 'b' }])
      expect([apart.a, apart.b]).toEqual([joined.a, joined.b])
    }),
  )
})
