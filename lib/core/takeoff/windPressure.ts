import { assert } from '../assert.ts'

/**
 * Wind on a fence after ASCE 7-16, an orientation and never an approval. Forces are at strength level; for a depth by
 * allowable stress multiply by `allowableStressFactor`.
 */
export type WindSite = {
  /** Basic wind speed (3 s gust) in mph; the user looks it up for the place. */
  readonly windMilesPerHour: number
  /** Velocity pressure exposure coefficient Kz. */
  readonly exposureCoefficient: number
  /** Topographic factor Kzt; 1 on level ground. */
  readonly topographicFactor: number
  /** Directionality factor Kd; 0.85 for walls and open signs. */
  readonly directionalityFactor: number
}

/** Kz up to 15 ft above ground by exposure category, recomputed from the exponents of ASCE 7-16. */
export const exposureCoefficients = { B: 0.57, C: 0.85, D: 1.03 } as const

/** Freestanding walls and open signs; ASCE 7-16 table 26.6-1, from memory. */
export const wallDirectionality = 0.85

/** Rigid structures; ASCE 7-16 26.11, from memory. */
export const rigidGustFactor = 0.85

/** Wind at strength level times this in combinations for allowable stress; ASCE 7-16 2.4.1, from memory. */
export const allowableStressFactor = 0.6

/** No less than this on the area, in psf; ASCE 7-16, quoted in a published permit calculation. */
export const leastPressurePsf = 16

/** Velocity pressure in psf: 0.00256·Kz·Kzt·Kd·V² (ASCE 7-16 equation 26.10-1). */
export function velocityPressure(site: WindSite): number {
  const { exposureCoefficient, topographicFactor, directionalityFactor, windMilesPerHour } = site
  return 0.00256 * exposureCoefficient * topographicFactor * directionalityFactor * windMilesPerHour ** 2
}

/** What the wind takes hold of. */
export type WindArea = {
  readonly heightFeet: number
  /** Length of the part whose force is asked for: a bay for a line post. */
  readonly lengthFeet: number
  /** Length of the whole straight fence, which decides how the air flows around it. */
  readonly fenceLengthFeet: number
  /** Solid area over the area of the outline, 0 to 1: mesh of thin wire a few hundredths, boards without gaps 1. */
  readonly solidShare: number
  /** What an open fence is made of; it does not count where seven tenths or more are solid. */
  readonly members: { readonly kind: 'flat' } | { readonly kind: 'round'; readonly diameterFeet: number }
}

export type WindForce = {
  /** `wall` where less than 30 % of the area is open (ASCE 7-16 29.3, from memory), else `open`. */
  readonly reckonedAs: 'wall' | 'open'
  readonly forceCoefficient: number
  /** Pressure on `areaSquareFeet`, in psf, no less than `leastPressurePsf`. */
  readonly pressurePsf: number
  /** The outline for a wall, the solid part of it for an open fence. */
  readonly areaSquareFeet: number
  readonly forcePounds: number
  /** Where the force acts, above the ground. */
  readonly actsAtFeet: number
  readonly momentAtGradePoundFeet: number
}

/**
 * Force and moment at the ground on a part of a fence that stands on the ground: q·G·Cf·A. Throws on sizes that are not
 * above zero or a solid share outside 0 to 1.
 *
 * @param velocityPressurePsf from `velocityPressure`
 */
export function windOnFence(
  velocityPressurePsf: number,
  area: WindArea,
  gustFactor = rigidGustFactor,
): WindForce {
  const { heightFeet, lengthFeet, fenceLengthFeet, solidShare } = area
  assert(heightFeet > 0 && lengthFeet > 0 && fenceLengthFeet > 0, 'a fence that has a size')
  assert(solidShare >= 0 && solidShare <= 1, 'a solid share from 0 to 1')
  const wall = solidShare >= 0.7
  const forceCoefficient = wall
    ? wallCoefficient(fenceLengthFeet / heightFeet) * openingsReduction(solidShare)
    : openCoefficient(solidShare, area.members, velocityPressurePsf)
  const pressurePsf = Math.max(leastPressurePsf, velocityPressurePsf * gustFactor * forceCoefficient)
  const areaSquareFeet = heightFeet * lengthFeet * (wall ? 1 : solidShare)
  const forcePounds = pressurePsf * areaSquareFeet
  // From memory of ASCE 7-16 figure 29.3-1: a wall's resultant lies at 0.55 of its height; an open one's at mid-height.
  const actsAtFeet = heightFeet * (wall ? 0.55 : 0.5)
  return {
    reckonedAs: wall ? 'wall' : 'open',
    forceCoefficient,
    pressurePsf,
    areaSquareFeet,
    forcePounds,
    actsAtFeet,
    momentAtGradePoundFeet: forcePounds * actsAtFeet,
  }
}

/** Cf of a wall on the ground by length over height, from memory of ASCE 7-16 figure 29.3-1 (s/h = 1, cases A and B). */
const wallCoefficients: readonly (readonly [number, number])[] = [
  [0.05, 1.8],
  [0.1, 1.7],
  [0.2, 1.65],
  [0.5, 1.55],
  [1, 1.45],
  [2, 1.4],
  [4, 1.35],
  [5, 1.35],
  [10, 1.3],
]

function wallCoefficient(lengthOverHeight: number): number {
  let [before, coefficient] = wallCoefficients[0] ?? [0, 0]
  for (const [next, nextCoefficient] of wallCoefficients) {
    if (lengthOverHeight < next) {
      if (lengthOverHeight <= before) return coefficient
      const part = (lengthOverHeight - before) / (next - before)
      return coefficient + part * (nextCoefficient - coefficient)
    }
    before = next
    coefficient = nextCoefficient
  }
  return coefficient
}

/** What openings below 30 % take off, from memory of the note to ASCE 7-16 figure 29.3-1: 1 − (1 − ε)^1.5. */
export function openingsReduction(solidShare: number): number {
  return 1 - (1 - solidShare) ** 1.5
}

/**
 * Cf of open signs and lattice by solid share (ASCE 7-16 figure 29.4-1, quoted in a published permit calculation): flat
 * members; round ones by D√q up to 2.5 and above.
 */
function openCoefficient(
  solidShare: number,
  members: WindArea['members'],
  velocityPressurePsf: number,
): number {
  const row = solidShare < 0.1 ? 0 : solidShare < 0.3 ? 1 : 2
  if (members.kind === 'flat') return [2.0, 1.8, 1.6][row] ?? 2.0
  const small = members.diameterFeet * Math.sqrt(velocityPressurePsf) <= 2.5
  return (small ? [1.2, 1.3, 1.5] : [0.8, 0.9, 1.1])[row] ?? 1.5
}
