import type { Millimetres } from '../amounts/length.ts'
import { addRatios } from '../amounts/ratio.ts'
import type { GateBuildUp } from './buildUp.ts'
import { asNumber, fromMillimetres, lowestTerms, sumOf, times } from './exact.ts'
import type { Found } from './finding.ts'
import type { GateLeaf } from './gateLeaf.ts'
import type { InfillArea } from './infillArea.ts'
import { layerArea, layerHeight } from './infillArea.ts'
import { type MemberMass, memberMass } from './memberMass.ts'
import { aboveZero, countOr, lengthOrNothing } from './neededLength.ts'
import { kilogramsOf } from './weighed.ts'

/** The leaf of a gate as it is made and hung. */
export type GateFrame = {
  readonly mass: MemberMass
  /** Of all leaves together. */
  readonly pieces: readonly { readonly length: Millimetres; readonly count: number }[]
  readonly perimeter: Millimetres
  readonly total: Millimetres
  readonly brace: GateBrace | undefined
  /** Of one leaf, frame, brace and infill; undefined where a part's weight is not known. */
  readonly kilograms: number | undefined
  readonly pull: HingePull | undefined
}

/** A compression brace stands on the lower hinge and carries the latch side; a tension brace hangs from the upper hinge. */
export type GateBrace = {
  readonly kind: 'compression' | 'tension'
  readonly length: Millimetres
}

/** What the leaf's weight does at its hinges: weight × half its width, as a moment; and that over the hinges' distance. */
export type HingePull = {
  readonly newtonMetres: number
  /** Sideways at each of the upper and the lower hinge; undefined while their distance is not said. */
  readonly newtonsAtHinge: number | undefined
}

const standardGravity = 9.80665

/** Perimeter and brace of each leaf, and the weight that hangs from the hinges. */
export function gateFrame(
  leaf: GateLeaf,
  buildUp: GateBuildUp,
  area: InfillArea,
  found: Found,
): GateFrame | undefined {
  const { width, height } = leaf
  if (width === undefined || height === undefined) return undefined
  const path = `gates[${leaf.gate}].buildUp`
  const mass = memberMass(buildUp.frame, `${path}.frame`, found)
  const perimeter = lowestTerms(times(addRatios(width, height), 2))
  const brace = braceOf(buildUp, width, height)
  const perLeaf = brace ? addRatios(perimeter, brace.length) : perimeter
  const pieces = [
    { length: width, count: 2 * leaf.leaves },
    { length: height, count: 2 * leaf.leaves },
    ...(brace ? [{ length: brace.length, count: leaf.leaves }] : []),
  ]
  const infill = buildUp.infill.map((layer, index) => {
    const tall = layerHeight(area, layer, index, found)
    return kilogramsOf(layer.weight, {
      pieces: 1,
      metres: asNumber(width) / 1000,
      squareMetres: asNumber(layerArea(area, layer.kind, tall)) / 1e6 / leaf.leaves,
    })
  })
  const known = mass.kilogramsPerMetre !== undefined && infill.every((kilograms) => kilograms !== undefined)
  const kilograms = known
    ? (asNumber(perLeaf) / 1000) * (mass.kilogramsPerMetre ?? 0) +
      infill.reduce<number>((sum, one) => sum + (one ?? 0), 0)
    : undefined
  return {
    mass,
    pieces,
    perimeter,
    total: sumOf(pieces.map(({ length, count }) => times(length, count))),
    brace,
    kilograms,
    pull: kilograms === undefined ? undefined : hingePull(kilograms, width, buildUp, path, found),
  }
}

/** From corner to corner inside the frame. */
function braceOf(
  { brace, frame }: GateBuildUp,
  width: Millimetres,
  height: Millimetres,
): GateBrace | undefined {
  if (brace !== 'compression' && brace !== 'tension') return undefined
  const tubes = 2 * asNumber(lengthOrNothing(frame.outside))
  const [across, up] = [asNumber(width) - tubes, asNumber(height) - tubes]
  if (across <= 0 || up <= 0) return undefined
  return { kind: brace, length: fromMillimetres(Math.hypot(across, up)) }
}

function hingePull(
  kilograms: number,
  width: Millimetres,
  { hinges }: GateBuildUp,
  path: string,
  found: Found,
): HingePull {
  const newtonMetres = (kilograms * standardGravity * asNumber(width)) / 2000
  const apart = aboveZero(hinges.apart, `${path}.hinges.apart`, found)
  return { newtonMetres, newtonsAtHinge: apart ? (newtonMetres * 1000) / asNumber(apart) : undefined }
}

export function hingesPerLeaf({ hinges }: GateBuildUp): number {
  return countOr(hinges.perLeaf, 2)
}
