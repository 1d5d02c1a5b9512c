import type { Millimetres } from '../amounts/length.ts'
import { asNumber, fromMillimetres, larger, lowestTerms, nothing, numberOf, subtractRatios } from './exact.ts'
import type { Found } from './finding.ts'
import {
  aluminiumExpansion,
  celsiusRange,
  heatMovement,
  slipJointsNeeded,
  steelExpansion,
} from './heatMovement.ts'
import { memberMass } from './memberMass.ts'
import { aboveZero } from './neededLength.ts'
import type { RailPieces } from './railPieces.ts'
import type { SectionParts } from './sectionParts.ts'

/** Sawing, welding and finishing of one section; lengths exact or of whole nanometres, areas in mm². */
export type ShopWork = {
  readonly item: SectionParts['item']
  /** Ends of rails that are joined to posts. */
  readonly joints: number
  /** Ends of posts that are cut to a saddle. */
  readonly saddles: number
  readonly splices: number
  /** Once around each rail end and each splice; nothing where the rails are not welded. */
  readonly weldLength: Millimetres
  readonly paintedArea: number
  readonly caps: number
  /** One for each hollow post and each hollow piece of rail: a closed tube is vented before it is heated. */
  readonly weepHoles: number
  readonly heat: HeatMovement | undefined
}

/** What the longest welded run does between the coldest and the hottest day. */
export type HeatMovement = {
  readonly run: Millimetres
  readonly fahrenheitRange: string
  readonly movement: Millimetres
  /** What one slip joint takes, and how many the run asks for; undefined where it is not said. */
  readonly slip: Millimetres | undefined
  readonly slipJoints: number | undefined
}

/** Common practice, no source: the range that is taken where none is said. */
const usualRange = '100'

export function shopWork(
  parts: SectionParts,
  rails: RailPieces,
  paintedArea: number,
  caps: number,
  found: Found,
): ShopWork {
  const { buildUp, path, posts } = parts
  const ofRail = buildUp.rails.outside === '' ? undefined : memberMass(buildUp.rails, `${path}.rails`, found)
  const joints = 2 * (rails.rails + rails.braceRails)
  const welded = buildUp.rails.welded ? joints + rails.splices : 0
  const pieces = rails.pieces.reduce((sum, { count }) => sum + count, 0)
  const hollowPosts = posts.filter(({ mass }) => mass.hollow)
  return {
    item: parts.item,
    joints,
    saddles: posts.filter(({ size }) => size.top === 'saddle' && size.rail.over > 0n).length,
    splices: rails.splices,
    weldLength: fromMillimetres(welded * (ofRail?.around ?? 0)),
    paintedArea,
    caps,
    weepHoles: hollowPosts.length + (ofRail?.hollow ? pieces : 0),
    heat: buildUp.rails.welded && rails.perBay > 0 ? heatOf(parts, found) : undefined,
  }
}

function heatOf({ buildUp, path, runs }: SectionParts, found: Found): HeatMovement | undefined {
  const longest = runs.map(({ from, to }) => lowestTerms(subtractRatios(to, from))).reduce(larger, nothing)
  if (longest.over === 0n) return undefined
  const { temperatureRange, material } = buildUp.rails
  const fahrenheitRange = temperatureRange || usualRange
  const movement = heatMovement(
    asNumber(longest),
    celsiusRange(asNumber(numberOf(fahrenheitRange))),
    material === 'aluminium' ? aluminiumExpansion : steelExpansion,
  )
  const slip = aboveZero(buildUp.rails.slip, `${path}.rails.slip`, found)
  return {
    run: longest,
    fahrenheitRange,
    movement: fromMillimetres(movement),
    slip,
    slipJoints: slip ? slipJointsNeeded(movement, 0, asNumber(slip)) : undefined,
  }
}
