import type { Notebook } from '../agreement/notebook.ts'
import { compareLengths, lengthOf, type Millimetres } from '../amounts/length.ts'
import { addRatios } from '../amounts/ratio.ts'
import { type Household, otherHousehold } from '../people/household.ts'
import type { GateBuildUp } from './buildUp.ts'
import { halved, larger, lowestTerms, sizeOf, subtractRatios, times } from './exact.ts'
import type { Found } from './finding.ts'
import type { Ground } from './ground.ts'
import { aboveZero, countOr, lengthOrNothing, neededLength } from './neededLength.ts'
import type { Jambs } from './runs.ts'

/** A gate's opening filled: leaves, clearances, header, swing. Lengths exact. */
export type GateLeaf = {
  readonly gate: number
  readonly opening: Millimetres
  readonly leaves: number
  /** Undefined where the clearances leave nothing, or no height is known. */
  readonly width: Millimetres | undefined
  readonly height: Millimetres | undefined
  /** Open under the leaf. */
  readonly ground: Millimetres
  readonly header: GateHeader | undefined
  readonly swings: readonly Swing[]
}

/** Level over the two posts, from the outer side of one to the outer side of the other. */
export type GateHeader = {
  readonly clear: Millimetres
  readonly outside: Millimetres
  readonly length: Millimetres
  /** Elevation of its upper side, where the ground is known. */
  readonly top: Millimetres
}

export type Swing = {
  readonly toward: Household
  /** By how much the ground rises from under the fence to that side; above zero is uphill. */
  readonly rise: Millimetres
  /** Over whose land the leaf swings where the setbacks say it. */
  readonly over: Household | 'both' | undefined
}

/** The leaves of a gate with a build-up: (opening − clearances) ÷ leaves wide, as high as said or as the fence less the gap below. */
export function gateLeaf(
  notebook: Notebook,
  jambs: Jambs,
  buildUp: GateBuildUp,
  ground: Ground,
  found: Found,
): GateLeaf {
  const { gate, section } = jambs
  const path = `gates[${gate.index}].buildUp`
  const opening = lowestTerms(subtractRatios(gate.to, gate.from))
  const leaves = Math.max(1, countOr(buildUp.leaves, 1))
  const { clearances } = buildUp
  const outer =
    leaves === 1
      ? addRatios(lengthOrNothing(clearances.hinge), lengthOrNothing(clearances.latch))
      : addRatios(
          times(lengthOrNothing(clearances.hinge), 2),
          times(lengthOrNothing(clearances.middle), leaves - 1),
        )
  const filled = subtractRatios(opening, outer)
  if (filled.over <= 0n)
    found(`${path}.clearances`, { kind: 'leaf-nothing-left', opening, clearances: lowestTerms(outer) })
  const under = lengthOrNothing(clearances.ground)
  const height = leafHeight(notebook, section, buildUp, under, path, found)
  const header = headerOf(jambs, buildUp, ground, found)
  const leafTop = height && addRatios(height, under)
  if (header && leafTop && compareLengths(header.clear, leafTop) < 0)
    found(`${path}.header.clear`, {
      kind: 'header-below-leaf',
      clear: header.clear,
      leaf: lowestTerms(leafTop),
    })
  const width =
    filled.over > 0n ? lowestTerms({ over: filled.over, under: filled.under * BigInt(leaves) }) : undefined
  return {
    gate: gate.index,
    opening,
    leaves,
    width,
    height,
    ground: under,
    header,
    swings: swingsOf(jambs, width, ground, under, found),
  }
}

function leafHeight(
  notebook: Notebook,
  section: number | undefined,
  buildUp: GateBuildUp,
  under: Millimetres,
  path: string,
  found: Found,
): Millimetres | undefined {
  if (buildUp.leafHeight !== '') return aboveZero(buildUp.leafHeight, `${path}.leafHeight`, found)
  const agreed = section === undefined ? '' : (notebook.sections[section]?.height.agreed ?? '')
  if (agreed === '') {
    found(`${path}.leafHeight`, { kind: 'missing' })
    return undefined
  }
  const height = lowestTerms(subtractRatios(lengthOf(agreed), under))
  if (height.over > 0n) return height
  found(`${path}.clearances.ground`, {
    kind: 'layer-without-height',
    agreed: lengthOf(agreed),
    ground: under,
  })
  return undefined
}

function headerOf(
  { gate, left, right }: Jambs,
  { header }: GateBuildUp,
  ground: Ground,
  found: Found,
): GateHeader | undefined {
  if (header === undefined) return undefined
  const path = `gates[${gate.index}].buildUp.header`
  const clear = neededLength(header.clear, `${path}.clear`, found)
  const outside = neededLength(header.outside, `${path}.outside`, found)
  if (clear === undefined || outside === undefined) return undefined
  const higher = larger(ground.fence(left), ground.fence(right))
  // Half a post lies between a post's centre and the opening, and as much outside of it.
  const post = subtractRatios(gate.from, left)
  return {
    clear,
    outside,
    length: lowestTerms(addRatios(subtractRatios(right, left), times(post, 2))),
    top: lowestTerms(addRatios(higher, addRatios(clear, outside))),
  }
}

function swingsOf(
  { gate }: Jambs,
  width: Millimetres | undefined,
  ground: Ground,
  clearance: Millimetres,
  found: Found,
): readonly Swing[] {
  const middle = lowestTerms(halved(addRatios(gate.from, gate.to)))
  const setback = ground.setback(middle)
  return gate.toward.map((toward) => {
    const rise = lowestTerms(subtractRatios(ground.of(toward, middle), ground.fence(middle)))
    if (compareLengths(rise, clearance) > 0)
      found(`gates[${gate.index}].opens`, { kind: 'swings-uphill', household: toward, rise, clearance })
    return { toward, rise, over: landUnder(toward, setback, width) }
  })
}

/** The leaf starts on whose land the fence stands and reaches its own width toward one side. */
function landUnder(
  toward: Household,
  setback: Millimetres | undefined,
  width: Millimetres | undefined,
): Swing['over'] {
  if (setback === undefined || width === undefined) return undefined
  if (setback.over === 0n) return toward
  const standsOn: Household = setback.over > 0n ? 'a' : 'b'
  if (standsOn === toward) return toward
  return compareLengths(width, sizeOf(setback)) > 0 ? 'both' : otherHousehold(toward)
}
