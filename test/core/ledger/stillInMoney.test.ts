import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { stillInMoney } from '../../../lib/core/ledger/stillInMoney.ts'
import { statementOf } from '../../../lib/core/shares/statement.ts'
import { randomNotebook, readMade } from '../randomNotebook.ts'
import { cash, digging, markedBy, notebookOf, on, pipe, scrap, wire } from './madeBooks.ts'

// Halves of 250.00: 125.00 each. a is to give the pipe (60.00) and 4 h of digging (100.00), so it brings −35.00 in money.
const still = (contributions: readonly object[] = [], books: object = {}) => {
  const notebook = notebookOf(contributions, books)
  const statement = statementOf(notebook)
  if (!statement.ok) throw new Error(JSON.stringify(statement.faults))
  return stillInMoney(notebook, statement.value)
}
const hours = (given: string, task = 'dig') => ({
  household: 'a',
  kind: 'hours',
  hours: given,
  rate: '25.00',
  date: on,
  for: 's1',
  task,
})
const goods = (amount: string, ...lines: readonly object[]) => ({
  household: 'a',
  kind: 'material',
  amount,
  date: on,
  for: 's1',
  lines,
})

describe('what each household is still to bring in money', () => {
  test('is what the plan asks of it in money, before anything is given', () => {
    expect(still()).toEqual({ a: -3500n, b: 12500n })
  })

  test('is not moved by giving what was promised in kind and in hours', () => {
    expect(still([hours('4')]).a).toBe(-3500n)
    expect(still([hours('1'), goods('60.00', { ...pipe, amount: '60.00' })]).a).toBe(-3500n)
    // Hours and goods that are on no line are taken for what was promised.
    expect(still([hours('4', ''), goods('60.00')]).a).toBe(-3500n)
  })

  test('is less by what was given beyond that, and by what was paid', () => {
    expect(still([hours('5')]).a).toBe(-6000n)
    expect(still([cash('b', '40.00', { ...wire, amount: '40.00' })]).b).toBe(8500n)
  })

  test('is more once both mark that less was worked than was promised', () => {
    const worked = { ...digging, amount: '50.00', marks: markedBy('a', 'b') }
    // 200.00 in all, 100.00 each: 100.00 − 60.00 for the pipe − 50.00 worked.
    expect(still([hours('2')], { bought: [worked] }).a).toBe(-1000n)
  })

  test('takes hours that are given in money instead', () => {
    const turned = {
      household: 'a',
      to: 'money',
      item: 's1',
      hours: '2',
      rate: '25.00',
      on,
      marks: markedBy('a', 'b'),
    }
    expect(still([], { conversions: [turned] }).a).toBe(1500n)
  })

  test('counts salvage money that a supplier takes off the bill for nobody', () => {
    expect(still([{ ...cash('b', '10.00', { ...scrap, amount: '10.00' }), kind: 'refund' }]).b).toBe(13500n)
  })

  test('of any plan is what the plan asks in money, while nothing is given', () => {
    fc.assert(
      fc.property(randomNotebook, (document) => {
        const notebook = readMade({ ...document, contributions: [], books: {} })
        const statement = statementOf(notebook)
        if (statement.ok) expect(stillInMoney(notebook, statement.value)).toEqual(statement.value.inMoney)
      }),
    )
  })
})
