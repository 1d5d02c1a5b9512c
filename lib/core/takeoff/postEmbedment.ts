import { assert } from '../assert.ts'

/**
 * Depth of a post by the pole equations of IBC 1807.3.2 (2012 edition's wording). An orientation, never an approval: a
 * licensed engineer designs what must stand.
 */
export type PoleLoad = {
  /** Horizontal force on the post, in pounds, at allowable stress level (strength level × 0.6 for wind). */
  readonly forcePounds: number
  /** How high above the ground the force acts, in feet. */
  readonly heightFeet: number
  /** Diameter of the round footing or post, or diagonal of a square one, in feet. */
  readonly widthFeet: number
  /** What the soil bears sideways per foot of depth, in psf/ft (IBC table 1806.2), after any doubling by 1806.3.4. */
  readonly lateralPsfPerFoot: number
}

export type Embedment = {
  readonly depthFeet: number
  /** The lateral pressure S1 (at a third of the depth) or S3 (at the depth) that the depth goes with, in psf. */
  readonly lateralPsf: number
}

/** IBC 1807.3.2.1: beyond this depth the lateral pressure is not reckoned any higher. */
const deepestForPressureFeet = 12

function assertLoad(load: PoleLoad): void {
  const { forcePounds, heightFeet, widthFeet, lateralPsfPerFoot } = load
  const finite = [forcePounds, heightFeet, widthFeet, lateralPsfPerFoot].every(Number.isFinite)
  assert(
    finite && forcePounds >= 0 && heightFeet >= 0 && widthFeet > 0 && lateralPsfPerFoot > 0,
    'a force, a height, a width and a soil',
  )
}

/**
 * The non-constrained depth of IBC 1807.3.2.1: d = 0.5A(1 + √(1 + 4.36h/A)), A = 2.34P/(S1·b), S1 the pressure at d/3.
 * As S1 hangs on d, that is d³ − k·d − 1.09·h·k = 0 with k = 7.02P/(s·b), solved here; below 12 ft S1 stays as it is at
 * 12 ft, and the equation gives d outright. Throws on negative sizes or no soil.
 */
export function nonConstrainedEmbedment(load: PoleLoad): Embedment {
  assertLoad(load)
  const { forcePounds, heightFeet, widthFeet, lateralPsfPerFoot } = load
  const depthFeet = cubicRoot((7.02 * forcePounds) / (lateralPsfPerFoot * widthFeet), heightFeet)
  if (depthFeet <= deepestForPressureFeet) {
    return { depthFeet, lateralPsf: (lateralPsfPerFoot * depthFeet) / 3 }
  }
  const lateralPsf = (lateralPsfPerFoot * deepestForPressureFeet) / 3
  return { depthFeet: depthAtPressure(load, lateralPsf), lateralPsf }
}

/** The same equation where the pressure S1 is given outright, in psf; in feet. */
export function depthAtPressure(load: Omit<PoleLoad, 'lateralPsfPerFoot'>, lateralPsf: number): number {
  const a = (2.34 * load.forcePounds) / (lateralPsf * load.widthFeet)
  // 0.5A(1 + √(1 + 4.36h/A)) without dividing by A, which is nothing where there is no force.
  return 0.5 * (a + Math.sqrt(a * a + 4.36 * load.heightFeet * a))
}

/**
 * The one root above zero of d³ − k·d − 1.09·h·k. To the right of √k the cubic rises and bends upward, so Newton's
 * steps from above come down to the root without passing it.
 */
function cubicRoot(k: number, heightFeet: number): number {
  if (k === 0) return 0
  const rest = 1.09 * heightFeet * k
  // Above the root: each of d³ ≥ 2kd and d³ ≥ 2·rest holds here.
  let depth = Math.max(Math.sqrt(2 * k), Math.cbrt(2 * rest))
  for (let step = 0; step < 100; step += 1) {
    const next = depth - (depth ** 3 - k * depth - rest) / (3 * depth * depth - k)
    if (!(next < depth)) break
    depth = next
  }
  return depth
}

/**
 * The depth of IBC 1807.3.2.2 for a post held at the ground by a rigid surface: d² = 4.25·P·h/(S3·b), S3 the pressure at
 * depth d (at most at 12 ft). Throws like `nonConstrainedEmbedment`.
 */
export function constrainedEmbedment(load: PoleLoad): Embedment {
  assertLoad(load)
  const { forcePounds, heightFeet, widthFeet, lateralPsfPerFoot } = load
  const perPressure = (4.25 * forcePounds * heightFeet) / widthFeet
  const depthFeet = Math.cbrt(perPressure / lateralPsfPerFoot)
  if (depthFeet <= deepestForPressureFeet) return { depthFeet, lateralPsf: lateralPsfPerFoot * depthFeet }
  const lateralPsf = lateralPsfPerFoot * deepestForPressureFeet
  return { depthFeet: Math.sqrt(perPressure / lateralPsf), lateralPsf }
}

/** Lateral bearing of IBC table 1806.2 (2012 edition), in psf per foot of depth; the user's own value goes before it. */
export const lateralBearing: readonly { readonly soil: string; readonly psfPerFoot: number }[] = [
  { soil: 'crystalline bedrock', psfPerFoot: 1200 },
  { soil: 'sedimentary and foliated rock', psfPerFoot: 400 },
  { soil: 'sandy gravel and gravel', psfPerFoot: 200 },
  { soil: 'sand, silty sand, clayey sand, silty gravel and clayey gravel', psfPerFoot: 150 },
  { soil: 'clay, sandy clay, silty clay, clayey silt, silt and sandy silt', psfPerFoot: 100 },
]

/** IBC 1806.3.4 (from memory): lateral bearing doubles for poles that half an inch of motion at the ground does not harm. */
export const doublingForPoles = 2

/** A depth or a width that people use without reckoning wind and soil, and where it comes from. All in feet. */
export type RuleOfThumb = { readonly feet: number; readonly rule: string }

/** ASTM F567-07 section 5: 24 in, and 3 in for each foot of height above 4 ft. */
export function chainLinkDepth(heightFeet: number): RuleOfThumb {
  return {
    feet: (24 + 3 * Math.max(0, heightFeet - 4)) / 12,
    rule: 'ASTM F567, for line posts of chain-link fence',
  }
}

/** ASTM F567-07 section 5: four times the post's width up to 4 in, three times above. */
export function chainLinkHoleDiameter(postWidthFeet: number): RuleOfThumb {
  const feet = postWidthFeet * (postWidthFeet <= 4 / 12 ? 4 : 3)
  return { feet, rule: 'ASTM F567, for posts of chain-link fence' }
}

/** A third of the height above ground, which is a quarter of the post's length. Common practice, no source. */
export function thirdOfHeight(heightFeet: number): RuleOfThumb {
  return { feet: heightFeet / 3, rule: 'common practice: a third of the height above ground' }
}

/** At least 2 ft for a fence of up to 6 ft. Common practice, no source; undefined above 6 ft, where it says nothing. */
export function twoFeetForSix(heightFeet: number): RuleOfThumb | undefined {
  if (heightFeet > 6) return undefined
  return { feet: 2, rule: 'common practice: at least 2 ft for a fence of up to 6 ft' }
}
