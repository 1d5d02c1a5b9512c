import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { type Statement, statementOf } from '../../../lib/core/shares/statement.ts'
import type { NotebookDocument } from '../../../lib/forms/readNotebook.ts'
import { randomNotebook, readMade } from '../randomNotebook.ts'
import { withHouseholdsSwapped } from '../swappedHouseholds.ts'

function statementFor(document: NotebookDocument): Statement {
  const statement = statementOf(readMade(document))
  if (!statement.ok) throw new Error(`a made notebook is refused: ${JSON.stringify(statement.faults)}`)
  return statement.value
}

const partsOf = ({ items }: Statement) =>
  items
    .flatMap(({ pots }) => (pots.form === 'together' ? [pots.together] : [pots.materials, pots.labour]))
    .flatMap(({ parts }) => parts)

const fullTies = (statement: Statement) =>
  partsOf(statement).filter(({ odd }) => odd?.because === 'first on a full tie').length
const anyTies = (statement: Statement) =>
  partsOf(statement).filter(({ odd }) => odd !== undefined && odd.because !== 'larger remainder').length

const turned = ({ a, b }: { a: bigint; b: bigint }) => ({ a: b, b: a })
const plain = ({ a, b }: { a: bigint; b: bigint }) => ({ a, b })
const size = (amount: bigint) => (amount < 0n ? -amount : amount)

describe('swapping the households', () => {
  test('swaps the exact shares before rounding, always', () => {
    fc.assert(
      fc.property(randomNotebook, (document) => {
        const parts = partsOf(statementFor(document))
        const others = partsOf(statementFor(withHouseholdsSwapped(document)))
        expect(others).toHaveLength(parts.length)
        parts.forEach((part, index) => {
          const other = others[index]
          if (other === undefined) throw new Error('as many parts as before')
          // exactA/under + otherExactA/otherUnder = pot
          expect(part.exactA.over * other.exactA.under + other.exactA.over * part.exactA.under).toBe(
            part.pot * part.exactA.under * other.exactA.under,
          )
        })
      }),
      { numRuns: 300 },
    )
  })

  test('swaps every amount exactly where no odd unit fell on a full tie', () => {
    let without = 0
    fc.assert(
      fc.property(randomNotebook, (document) => {
        const one = statementFor(document)
        if (fullTies(one) > 0) return
        without += 1
        const other = statementFor(withHouseholdsSwapped(document))
        for (const amounts of [
          'beforeCaps',
          'asked',
          'promised',
          'inMoney',
          'contributed',
          'balance',
        ] as const)
          expect(plain(other[amounts])).toEqual(turned(one[amounts]))
        expect(other.outstanding).toBe(one.outstanding)
        const back = one.transfer && { ...one.transfer, from: one.transfer.to, to: one.transfer.from }
        expect(other.transfer).toEqual(back)
      }),
      { numRuns: 400 },
    )
    expect(without).toBeGreaterThan(100)
  })

  test('moves what a household is asked for by at most one unit for each tie', () => {
    fc.assert(
      fc.property(randomNotebook, (document) => {
        const one = statementFor(document)
        const other = statementFor(withHouseholdsSwapped(document))
        const ties = BigInt(anyTies(one))
        expect(size(other.beforeCaps.b - one.beforeCaps.a) <= ties).toBe(true)
        expect(size(other.asked.b - one.asked.a) <= ties).toBe(true)
      }),
      { numRuns: 400 },
    )
  })

  test('moves the hours asked of a household by at most a hundredth for each item', () => {
    fc.assert(
      fc.property(randomNotebook, (document) => {
        const other = statementFor(withHouseholdsSwapped(document)).items
        statementFor(document).items.forEach(({ hours }, index) => {
          const swappedHours = other[index]?.hours
          if (swappedHours === undefined) throw new Error('as many items as before')
          expect(size(swappedHours.b - hours.a) <= 1n).toBe(true)
          expect(plain(swappedHours.gifts)).toEqual(turned(hours.gifts))
        })
      }),
      { numRuns: 300 },
    )
  })

  test('twice is the notebook as it was', () => {
    fc.assert(
      fc.property(randomNotebook, (document) => {
        expect(withHouseholdsSwapped(withHouseholdsSwapped(document))).toEqual(document)
      }),
    )
  })
})
