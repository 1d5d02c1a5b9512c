import { describe, expect, test } from 'vitest'
import { readyBuildUps } from '../../../lib/core/takeoff/readyBuildUps.ts'
import { kilogramsPerPound } from '../../../lib/core/takeoff/unitFactors.ts'
import { fence, gateAt, quantityOf, steelBuildUp, takeOffOf } from './madeFence.ts'

type Data = Record<string, unknown>

const strip = {
  kind: 'strip',
  ground: '2 in',
  opening: '4 in',
  width: '3 in',
  thickness: '0.03 in',
  material: 'steel',
  takeUp: '1.02',
}

function weightOf(layer: Data): number | undefined {
  const buildUp = { ...steelBuildUp, infill: [{ ...strip, ...layer }] }
  return quantityOf(takeOffOf([fence('0 ft', '100 ft', { buildUp })]), 'infill 1').kilograms
}

describe('the weight of woven strip', () => {
  // 17 rows of 100 ft times 1.02 are 1734 ft; 3 by 0.03 in are 0.000625 sq ft.
  const cubicFeet = 1734 * 0.000625

  test('of steel: 490 lb for each cubic foot, as ASME B36.10M and AISC reckon', () => {
    expect((weightOf({}) ?? 0) / kilogramsPerPound / cubicFeet).toBeCloseTo(490, 0)
  })

  test('of steel and of aluminium by their densities', () => {
    const cubicMetres = cubicFeet * 0.028316846592
    expect(weightOf({})).toBeCloseTo(cubicMetres * 7850, 6)
    expect(weightOf({ material: 'aluminium' })).toBeCloseTo(cubicMetres * 2700, 6)
  })

  test('what is typed goes before it', () => {
    expect(weightOf({ weight: { figure: '1', per: 'kg/m' } })).toBeCloseTo(1734 * 0.3048, 6)
  })

  test.each([
    { thickness: '' },
    { thickness: '0 in' },
    { width: '' },
    { material: '' },
    { material: 'wood' },
  ])('is not guessed with %o', (lack) => {
    expect(weightOf(lack)).toBeUndefined()
  })
})

test('the ready build-ups know the weight of all infill, and how much of it stops the wind', () => {
  for (const { key, section, gate } of readyBuildUps) {
    const site = {
      wind: { speed: '90', unit: 'mph', exposure: 'B' },
      soil: { lateral: '150', unit: 'psf/ft' },
    }
    const found = takeOffOf([fence('0 ft', '100 ft', { buildUp: section })], {
      gates: [gateAt('50 ft', '4 ft', { buildUp: gate })],
      line: { site },
    })
    for (const { part, kilograms } of found.quantities.filter(({ part }) => part.startsWith('infill')))
      expect(kilograms, `${key} ${part}`).toBeGreaterThan(0)
    expect(found.wind[0]?.lacks, key).toEqual([])
  }
})
