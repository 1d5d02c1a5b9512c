import { describe, expect, test } from 'vitest'
import { celsiusRange, heatMovement, slipJointsNeeded } from '../../../lib/core/takeoff/heatMovement.ts'

describe('a welded rail', () => {
  test('of 30 m moves 18 mm over 50 °C', () => {
    expect(heatMovement(30_000, 50)).toBeCloseTo(18, 9)
    expect(celsiusRange(90)).toBe(50)
  })

  test('needs as many slip joints as its movement asks for beyond what its ends take', () => {
    expect(slipJointsNeeded(18, 20, 10)).toBe(0)
    expect(slipJointsNeeded(18, 18, 10)).toBe(0)
    expect(slipJointsNeeded(18, 17, 10)).toBe(1)
    expect(slipJointsNeeded(37, 7, 10)).toBe(3)
    expect(slipJointsNeeded(37.01, 7, 10)).toBe(4)
  })

  test('needs no joint more for a hair of floating point', () => {
    expect(slipJointsNeeded(0.1 + 0.2, 0, 0.1)).toBe(3)
  })
})
