import { describe, expect, test } from 'vitest'
import { contributed } from '../../../lib/core/ledger/contributed.ts'
import { notebookWith } from '../madeNotebook.ts'

const date = '2027-03-02'
const given = (...contributions: Record<string, unknown>[]) =>
  contributed(
    notebookWith({ contributions: contributions.map((entry) => ({ date, ...entry })) }).contributions,
    2,
  )

describe('what has been given', () => {
  test('is nothing in an empty book', () => {
    expect(given()).toEqual({ a: 0n, b: 0n })
  })

  test('counts money paid, material and hours', () => {
    const entries = [
      { household: 'a', kind: 'cash', amount: '10.00' },
      { household: 'a', kind: 'material', amount: '5.5' },
      { household: 'b', kind: 'hours', hours: '1.5', rate: '20' },
    ]
    expect(given(...entries)).toEqual({ a: 1550n, b: 3000n })
  })

  test('counts money between the households up for one and down for the other', () => {
    expect(given({ household: 'b', kind: 'transfer', amount: '100' })).toEqual({ a: -10000n, b: 10000n })
  })

  test('is lowered by money received back, below nothing if need be', () => {
    expect(given({ household: 'a', kind: 'refund', amount: '7' })).toEqual({ a: -700n, b: 0n })
  })

  test('counts hours without a rate as nothing', () => {
    expect(given({ household: 'a', kind: 'hours', hours: '8' })).toEqual({ a: 0n, b: 0n })
  })

  test('rounds hours entry by entry', () => {
    const entry = { household: 'a', kind: 'hours', hours: '0.5', rate: '0.01' }
    expect(given(entry, entry)).toEqual({ a: 2n, b: 0n })
  })

  test.each(['cash', 'transfer', 'refund'])('counts an entry that was taken back as nothing: %s', (kind) => {
    const struck = { on: date, by: 'a', why: 'entered twice' }
    expect(given({ household: 'a', kind, amount: '7', struck })).toEqual({ a: 0n, b: 0n })
  })
})
