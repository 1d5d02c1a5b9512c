import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest'
import { heldUnder, holdBriefly } from '../../lib/files/heldBriefly.ts'

beforeEach(() => {
  vi.useFakeTimers()
})
afterEach(() => {
  vi.runAllTimers()
  vi.useRealTimers()
})

describe('what is held briefly', () => {
  test('is found by its owner under its token, as often as it is asked for', () => {
    const token = holdBriefly('record pack', 'n a', ['a pack'])
    expect(token).toMatch(/^[0-9a-f]{64}$/)
    expect(heldUnder('record pack', 'n a', token)).toEqual(['a pack'])
    expect(heldUnder('record pack', 'n a', token)).toEqual(['a pack'])
  })

  test('is found by nobody else, as nothing else, and under no made-up token', () => {
    const token = holdBriefly('record pack', 'n a', 'a pack')
    expect(heldUnder('record pack', 'n b', token)).toBeUndefined()
    expect(heldUnder('import', 'n a', token)).toBeUndefined()
    for (const other of [undefined, null, '', '__proto__', 7, token?.slice(1), `${token} `])
      expect(heldUnder('record pack', 'n a', other)).toBeUndefined()
  })

  test('is gone after two minutes, whether or not anybody asks', () => {
    const token = holdBriefly('import', 'o', 'a file')
    vi.advanceTimersByTime(119_000)
    expect(heldUnder('import', 'o', token)).toBe('a file')
    vi.advanceTimersByTime(1_000)
    expect(heldUnder('import', 'o', token)).toBeUndefined()
  })

  test('is never more than a few of one owner: its oldest leaves first, and other kinds and owners stay', () => {
    const file = holdBriefly('import', 'o', 'a file')
    const others = holdBriefly('record pack', 'p', 'a pack')
    const tokens = [1, 2, 3, 4].map((number) => holdBriefly('record pack', 'o', number))
    expect(tokens.map((token) => heldUnder('record pack', 'o', token))).toEqual([undefined, undefined, 3, 4])
    expect(heldUnder('import', 'o', file)).toBe('a file')
    expect(heldUnder('record pack', 'p', others)).toBe('a pack')
  })

  test('is never pushed out by what others send: the newest is not held, until there is room again', () => {
    const token = holdBriefly('import', 'anybody', 'the first')
    const more = Array.from({ length: 30 }, (_, number) => holdBriefly('import', 'anybody', number))
    expect(heldUnder('import', 'anybody', token)).toBe('the first')
    expect(more.filter((one) => one !== undefined)).toHaveLength(19)
    expect(more.at(-1)).toBeUndefined()
    vi.advanceTimersByTime(120_000)
    expect(heldUnder('import', 'anybody', holdBriefly('import', 'anybody', 'later'))).toBe('later')
  })
})
