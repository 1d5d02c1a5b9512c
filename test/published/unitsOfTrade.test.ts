import { expect, test } from 'vitest'
import * as factors from '../../lib/core/takeoff/unitFactors.ts'

// NIST Special Publication 811, from memory, recomputed by products.
test.each([
  ['inch', factors.millimetresPerInch, 25.4],
  ['foot', factors.millimetresPerFoot, 304.8],
  ['yard', factors.millimetresPerYard, 914.4],
  ['pound', factors.kilogramsPerPound, 0.45359237],
  ['pound-force', factors.newtonsPerPoundForce, 4.4482216152605],
  ['US gallon', factors.litresPerUsGallon, 3.785411784],
  ['cubic foot', factors.litresPerCubicFoot, 28.316846592],
  ['cubic yard', factors.litresPerCubicYard, 764.554857984],
  ['square foot', factors.squareMetresPerSquareFoot, 0.09290304],
  ['mile an hour', factors.metresPerSecondPerMileAnHour, 0.44704],
  ['acre', factors.squareMetresPerAcre, 4046.8564224],
])('a %s', (_name, factor, published) => {
  expect(factor).toBe(published)
})

test.each([
  ['lb/ft', factors.kilogramsPerMetrePerPoundPerFoot, 1.48816394, 8],
  ['lb/ft³', factors.kilogramsPerCubicMetrePerPoundPerCubicFoot, 16.01846337, 8],
  ['psf', factors.pascalsPerPoundPerSquareFoot, 47.88025898, 8],
] as const)('%s', (_name, factor, published, digits) => {
  expect(factor).toBeCloseTo(published, digits)
})

test('they agree with each other: a cubic yard is 27 cubic feet, an acre 43,560 square feet, a gallon 231 in³', () => {
  expect(factors.litresPerCubicYard).toBeCloseTo(27 * factors.litresPerCubicFoot, 9)
  expect(factors.squareMetresPerAcre).toBeCloseTo(43_560 * factors.squareMetresPerSquareFoot, 9)
  expect(factors.litresPerUsGallon).toBeCloseTo((231 * factors.millimetresPerInch ** 3) / 1e6, 9)
  expect(factors.newtonsPerPoundForce).toBeCloseTo(factors.kilogramsPerPound * 9.80665, 12)
})
