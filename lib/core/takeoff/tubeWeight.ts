import { assert } from '../assert.ts'

/** kg/m³, the customary density of structural steel (490 lb/ft³, as ASME B36.10M and AISC reckon; EN 1993-1-1, from memory). */
export const steelDensity = 7850

/** kg/m³, of pure aluminium, rounded (alloys 2660 to 2800; EN 1999-1-1, from memory). */
export const aluminiumDensity = 2700

/** The cross-section of a tube, a bar or a board; every size in millimetres. */
export type CrossSection =
  | { readonly kind: 'round tube'; readonly outside: number; readonly wall: number }
  /**
   * `rolled` corners have an outside radius of twice the wall and an inside radius of the wall, as cold-formed steel
   * tube is reckoned; `sharp` ones none, as extruded aluminium.
   */
  | {
      readonly kind: 'square tube'
      readonly outside: number
      readonly wall: number
      readonly corners: 'rolled' | 'sharp'
    }
  | { readonly kind: 'round bar'; readonly outside: number }
  | { readonly kind: 'square bar'; readonly outside: number }
  | { readonly kind: 'board'; readonly width: number; readonly thickness: number }

/** Whether metal can have this shape: sizes above zero, walls that leave room for each other and for rolled corners. */
export function isPossibleSection(section: CrossSection): boolean {
  const sizes = Object.values(section).filter((value) => typeof value === 'number')
  if (!sizes.every((size) => Number.isFinite(size) && size > 0)) return false
  if (section.kind === 'round tube') return section.wall <= section.outside / 2
  if (section.kind !== 'square tube') return true
  return section.wall <= section.outside / (section.corners === 'rolled' ? 4 : 2)
}

/** The area of solid material in mm². Throws on a section that `isPossibleSection` refuses. */
export function sectionArea(section: CrossSection): number {
  assert(isPossibleSection(section), 'a section of a possible shape')
  switch (section.kind) {
    case 'round tube':
      return Math.PI * (section.outside - section.wall) * section.wall
    case 'square tube': {
      const { outside, wall } = section
      const sharp = 4 * wall * (outside - wall)
      // Of each corner's square a quarter circle stays: 2t outside, t inside.
      return section.corners === 'sharp' ? sharp : sharp - (4 - Math.PI) * (4 - 1) * wall * wall
    }
    case 'round bar':
      return (Math.PI * section.outside * section.outside) / 4
    case 'square bar':
      return section.outside * section.outside
    case 'board':
      return section.width * section.thickness
  }
}

/**
 * Mass per length in kg/m of a section of a material of `density` kg/m³. Plain ends and nominal sizes: the nominal
 * weights of oilfield tubing include couplings and upsets and lie 4 to 6 % higher. Throws like `sectionArea`.
 */
export function massPerMetre(section: CrossSection, density: number): number {
  return (sectionArea(section) * density) / 1e6
}
