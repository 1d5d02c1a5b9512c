import { describe, expect, test } from 'vitest'
import { applyCaps, capsInForce, waitingCaps } from '../../../lib/core/shares/caps.ts'

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

describe('a cap takes effect only with the mark of the household that the excess moves to', () => {
  const caps = { a: '50.00', b: '10.00' }
  const before = { a: 4_000n, b: 3_000n }

  test('whoever set it can mark it alone as long as it likes: it moves nothing', () => {
    expect(capsInForce(caps, { a: false, b: true })).toEqual({ a: '50.00' })
    expect(capsInForce(caps, { a: true, b: false })).toEqual({ b: '10.00' })
    expect(capsInForce(caps, { a: false, b: false })).toEqual({})
  })

  test('with both marks both caps are in force', () => {
    expect(capsInForce(caps, { a: true, b: true })).toEqual(caps)
  })

  test('a cap that waits says what it would move, and one that would move nothing is not named', () => {
    expect(waitingCaps(before, caps, { a: false, b: true }, 2)).toEqual([
      { household: 'b', cap: 1_000n, amount: 2_000n },
    ])
    expect(waitingCaps(before, caps, { a: true, b: true }, 2)).toEqual([])
    expect(waitingCaps(before, { a: '40.00' }, { a: false, b: false }, 2)).toEqual([])
  })
})
