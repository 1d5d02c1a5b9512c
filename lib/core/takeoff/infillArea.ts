import type { Millimetres } from '../amounts/length.ts'
import { multiplyRatios, type Ratio } from '../amounts/ratio.ts'
import type { InfillLayer } from './buildUp.ts'
import { lowestTerms, subtractRatios } from './exact.ts'
import type { Found } from './finding.ts'
import { aboveZero, lengthOrNothing } from './neededLength.ts'
import type { ItemAt } from './postLayout.ts'

/** Where infill goes: the runs of a section, or the leaves of a gate. */
export type InfillArea = {
  readonly item: ItemAt
  /** Of the build-up. */
  readonly path: string
  readonly layers: readonly InfillLayer[]
  /** Along the fence's top, for what follows it. */
  readonly runs: readonly Millimetres[]
  /** Horizontal, for what stands plumb. */
  readonly flatRuns: readonly Millimetres[]
  readonly bays: readonly { readonly length: Millimetres; readonly rise: Millimetres }[]
  readonly total: Millimetres
  readonly raked: boolean
  /** Agreed height of the fence, or height of the leaf. */
  readonly height: Millimetres | undefined
}

/** Height of a layer: its own, or the fence's less what is left open under it. */
export function layerHeight(
  area: InfillArea,
  layer: InfillLayer,
  index: number,
  found: Found,
): Millimetres | undefined {
  const path = `${area.path}.infill[${index}]`
  if (layer.height !== '') return aboveZero(layer.height, `${path}.height`, found)
  if (area.height === undefined) return undefined
  const ground = lengthOrNothing(layer.ground)
  const height = lowestTerms(subtractRatios(area.height, ground))
  if (height.over > 0n) return height
  found(`${path}.ground`, { kind: 'layer-without-height', agreed: area.height, ground })
  return undefined
}

/** Area of one layer in mm², exact where the fence is level; nothing while its height is not known. */
export function layerArea(area: InfillArea, height: Millimetres | undefined): Ratio {
  return height === undefined ? { over: 0n, under: 1n } : lowestTerms(multiplyRatios(area.total, height))
}
