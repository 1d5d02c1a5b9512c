import { describe, expect, test } from 'vitest'
import { windOnFence } from '../../../lib/core/takeoff/windPressure.ts'

const area = {
  heightFeet: 6,
  lengthFeet: 8,
  fenceLengthFeet: 96,
  solidShare: 0.7,
  members: { kind: 'flat' } as const,
}

describe('wind on a fence', () => {
  test('takes it as a wall from seven tenths solid, else as open', () => {
    expect(windOnFence(25, area).reckonedAs).toBe('wall')
    expect(windOnFence(25, { ...area, solidShare: 0.699 }).reckonedAs).toBe('open')
  })

  test('strips in a mesh make the force several times larger', () => {
    const mesh = windOnFence(25, { ...area, solidShare: 0.1, members: { kind: 'round', diameterFeet: 0.01 } })
    const strips = windOnFence(25, { ...area, solidShare: 0.9 })
    expect(strips.forcePounds / mesh.forcePounds).toBeGreaterThan(5)
  })

  test('the moment at grade is the force times where it acts: 0.55 of a wall, half of an open fence', () => {
    const wall = windOnFence(25, area)
    expect(wall.momentAtGradePoundFeet).toBeCloseTo(wall.forcePounds * 3.3, 9)
    const open = windOnFence(25, { ...area, solidShare: 0.3 })
    expect(open.momentAtGradePoundFeet).toBeCloseTo(open.forcePounds * 3, 9)
  })

  test('a fence that is nothing takes nothing', () => {
    expect(windOnFence(25, { ...area, solidShare: 0 }).forcePounds).toBe(0)
  })

  test('a short piece takes no less than the end of the table', () => {
    const force = windOnFence(25, { ...area, fenceLengthFeet: 0.1, solidShare: 1 })
    expect(force.forceCoefficient).toBe(1.8)
  })

  test.each([
    ['without a height', { heightFeet: 0 }],
    ['without a length', { lengthFeet: 0 }],
    ['more than solid', { solidShare: 1.1 }],
    ['less than open', { solidShare: -0.1 }],
    ['of no number', { solidShare: Number.NaN }],
  ])('throws on a fence %s', (_name, wrong) => {
    expect(() => windOnFence(25, { ...area, ...wrong })).toThrow(/broken promise/)
  })
})
