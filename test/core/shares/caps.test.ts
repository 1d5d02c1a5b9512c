import { describe, expect, test } from 'vitest'
import { applyCaps } from '../../../lib/core/shares/caps.ts'

const capped = (a: bigint, b: bigint, caps: { a?: string; b?: string }) => applyCaps({ a, b }, caps, 2)

describe('a cap', () => {
  test('that is not reached changes nothing', () => {
    expect(capped(100n, 200n, { a: '1.00', b: '2.00' })).toEqual({ ok: true, value: { a: 100n, b: 200n } })
    expect(capped(100n, 200n, {})).toEqual({ ok: true, value: { a: 100n, b: 200n } })
  })

  test('moves what is above it to the other household', () => {
    expect(capped(150n, 200n, { a: '1.00' })).toEqual({
      ok: true,
      value: { a: 100n, b: 250n, moved: { from: 'a', amount: 50n } },
    })
    expect(capped(150n, 200n, { b: '0' })).toEqual({
      ok: true,
      value: { a: 350n, b: 0n, moved: { from: 'b', amount: 200n } },
    })
  })

  test('on both that just suffices asks each for its cap', () => {
    expect(capped(0n, 300n, { a: '1.00', b: '2.00' })).toMatchObject({ value: { a: 100n, b: 200n } })
  })

  test('on both that falls short by a cent is refused, and the cent is named', () => {
    expect(capped(0n, 301n, { a: '1.00', b: '2.00' })).toEqual({
      ok: false,
      faults: [{ path: 'caps', kind: 'caps-short', a: '1.00', b: '2.00', total: '3.01', short: '0.01' }],
    })
  })
})
