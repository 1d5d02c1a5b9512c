import type { Millimetres } from '../amounts/length.ts'
import { multiplyRatios, type Ratio } from '../amounts/ratio.ts'
import type { InfillLayer } from './buildUp.ts'
import { lowestTerms, nothing, subtractRatios, sumOf } from './exact.ts'
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

/** How long one layer is: rolls and strips along the slope, boards and panels, standing plumb, along the level. */
export function layerLength({ total, flatRuns }: InfillArea, kind: InfillLayer['kind']): Millimetres {
  return kind === 'roll' || kind === 'strip' ? total : sumOf(flatRuns)
}

/** Area of one layer in mm², exact where the fence is level; nothing while its height is not known. */
export function layerArea(
  area: InfillArea,
  kind: InfillLayer['kind'],
  height: Millimetres | undefined,
): Ratio {
  return height === undefined ? nothing : lowestTerms(multiplyRatios(layerLength(area, kind), height))
}
