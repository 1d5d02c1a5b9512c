import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { moneyText } from '../../../lib/core/amounts/money.ts'
import { type Statement, statementOf } from '../../../lib/core/shares/statement.ts'
import type { NotebookDocument } from '../../../lib/forms/readNotebook.ts'
import { randomNotebook, readMade } from '../randomNotebook.ts'

function statementFor(document: NotebookDocument): Statement {
  const statement = statementOf(readMade(document))
  if (!statement.ok) throw new Error(`a made notebook is refused: ${JSON.stringify(statement.faults)}`)
  return statement.value
}

const potsOf = ({ pots }: Statement['items'][number]) =>
  pots.form === 'together' ? [pots.together] : [pots.materials, pots.labour]

const householdsBoth = ['a', 'b'] as const

describe('under every principle', () => {
  test('the shares of each pot add to it exactly, and so do its parts', () => {
    fc.assert(
      fc.property(randomNotebook, (document) => {
        for (const pot of statementFor(document).items.flatMap(potsOf)) {
          expect(pot.a + pot.b).toBe(pot.total)
          expect(pot.parts.reduce((sum, part) => sum + part.pot, 0n)).toBe(pot.total)
          for (const part of pot.parts) expect(part.a + part.b).toBe(part.pot)
        }
      }),
      { numRuns: 300 },
    )
  })

  test('nobody is asked for less than nothing or more than the pot', () => {
    fc.assert(
      fc.property(randomNotebook, (document) => {
        for (const part of statementFor(document)
          .items.flatMap(potsOf)
          .flatMap(({ parts }) => parts)) {
          expect(part.a >= 0n && part.b >= 0n && part.a <= part.pot && part.b <= part.pot).toBe(true)
        }
      }),
      { numRuns: 300 },
    )
  })

  test('no share is a whole unit or more off its exact share', () => {
    fc.assert(
      fc.property(randomNotebook, (document) => {
        for (const part of statementFor(document)
          .items.flatMap(potsOf)
          .flatMap(({ parts }) => parts)) {
          const off = part.a * part.exactA.under - part.exactA.over
          expect(off < part.exactA.under && -off < part.exactA.under).toBe(true)
        }
      }),
      { numRuns: 300 },
    )
  })

  test('hours add to the hours of the item', () => {
    fc.assert(
      fc.property(randomNotebook, (document) => {
        for (const { hours } of statementFor(document).items) {
          expect(hours.a + hours.b).toBe(hours.hours)
          expect(hours.a >= 0n && hours.b >= 0n).toBe(true)
        }
      }),
      { numRuns: 300 },
    )
  })
})

describe('the totals', () => {
  test('are the items, before caps and after them', () => {
    fc.assert(
      fc.property(randomNotebook, (document) => {
        const { items, total, beforeCaps, asked } = statementFor(document)
        expect(items.reduce((sum, item) => sum + item.total, 0n)).toBe(total)
        for (const household of householdsBoth)
          expect(items.reduce((sum, item) => sum + item[household], 0n)).toBe(beforeCaps[household])
        expect(asked.a + asked.b).toBe(total)
      }),
      { numRuns: 300 },
    )
  })

  test('never ask a household for more than its cap, nor move more than is needed', () => {
    fc.assert(
      fc.property(randomNotebook, (document) => {
        const notebook = readMade(document)
        const { asked, beforeCaps, digits } = statementFor(document)
        for (const household of householdsBoth) {
          const cap = notebook.caps[household]
          if (cap === undefined) continue
          const most = BigInt(cap.replace('.', '')) * (cap.includes('.') ? 1n : 10n ** BigInt(digits))
          expect(asked[household] <= most).toBe(true)
          if (asked.moved?.from === household) expect(asked[household]).toBe(most)
        }
        if (!asked.moved) expect([asked.a, asked.b]).toEqual([beforeCaps.a, beforeCaps.b])
      }),
      { numRuns: 300 },
    )
  })

  test('the balances add to what nobody has met yet', () => {
    fc.assert(
      fc.property(randomNotebook, (document) => {
        const { balance, outstanding, asked, contributed } = statementFor(document)
        expect(balance.a + balance.b).toBe(outstanding)
        for (const household of householdsBoth)
          expect(balance[household]).toBe(asked[household] - contributed[household])
      }),
      { numRuns: 300 },
    )
  })

  test('what is brought in money and what is promised are together what is asked', () => {
    fc.assert(
      fc.property(randomNotebook, (document) => {
        const { inMoney, promised, asked } = statementFor(document)
        for (const household of householdsBoth)
          expect(inMoney[household] + promised[household]).toBe(asked[household])
      }),
    )
  })
})

const withEntry = (document: NotebookDocument, entry: Record<string, unknown>): NotebookDocument => ({
  ...document,
  contributions: [...(document.contributions as unknown[]), { date: '2027-04-01', ...entry }],
})

describe('the book', () => {
  test('the one payment evens the two as far as it can: after it none is left to make', () => {
    fc.assert(
      fc.property(randomNotebook, (document) => {
        const before = statementFor(document)
        const { transfer, digits } = before
        if (transfer === undefined) {
          expect(before.balance.a <= 0n || before.balance.b >= 0n).toBe(true)
          expect(before.balance.b <= 0n || before.balance.a >= 0n).toBe(true)
          return
        }
        const amount = moneyText(transfer.amount, digits)
        const after = statementFor(
          withEntry(document, { household: transfer.from, kind: 'transfer', amount }),
        )
        expect(transfer.amount > 0n).toBe(true)
        expect(after.transfer).toBeUndefined()
        expect(after.balance.a === 0n || after.balance.b === 0n).toBe(true)
        expect(after.outstanding).toBe(before.outstanding)
      }),
      { numRuns: 300 },
    )
  })

  test.each([
    ['cash', 1n, 0n],
    ['material', 1n, 0n],
    ['refund', -1n, 0n],
    ['transfer', 1n, -1n],
  ] as const)(
    'one more entry of this kind counts for the household and for the other: %s',
    (kind, own, others) => {
      fc.assert(
        fc.property(
          randomNotebook,
          fc.constantFrom(...householdsBoth),
          fc.bigInt({ min: 0n, max: 10n ** 9n }),
          (document, household, amount) => {
            const before = statementFor(document)
            const entry = { household, kind, amount: moneyText(amount, before.digits) }
            const after = statementFor(withEntry(document, entry))
            const other = household === 'a' ? 'b' : 'a'
            expect(after.contributed[household] - before.contributed[household]).toBe(own * amount)
            expect(after.contributed[other] - before.contributed[other]).toBe(others * amount)
            expect(after.asked).toEqual(before.asked)
          },
        ),
      )
    },
  )

  test('a credit lowers the whole by just as much as a cost of the same line raises it', () => {
    fc.assert(
      fc.property(randomNotebook, fc.bigInt({ min: 0n, max: 10n ** 9n }), (document, minor) => {
        const { digits, total } = statementFor(document)
        const line = { quantity: '1', unitPrice: moneyText(minor, digits), suppliedBy: 'bought' }
        const share = { materials: { principle: 'equal' }, labour: { principle: 'equal' } }
        const withLines = (materials: unknown[]): NotebookDocument => {
          const { caps: _caps, ...rest } = document
          return {
            ...rest,
            common: [...(document.common as unknown[]), { id: 'last', materials, share }],
          }
        }
        expect(statementFor(withLines([line])).total).toBe(total + minor)
        expect(statementFor(withLines([line, { ...line, credit: true }])).total).toBe(total)
      }),
    )
  })
})
