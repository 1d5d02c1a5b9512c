import type { Millimetres } from '../amounts/length.ts'
import type { BuildUp } from './buildUp.ts'
import { asNumber, fromMillimetres, larger, lowestTerms, nothing, numberOf, subtractRatios } from './exact.ts'
import type { Found } from './finding.ts'
import {
  aluminiumExpansion,
  celsiusRange,
  heatMovement,
  slipJointsNeeded,
  steelExpansion,
} from './heatMovement.ts'
import { type JointPlaces, type SlipPlaces, slipPlaces, splicePlaces } from './jointPlaces.ts'
import { memberMass } from './memberMass.ts'
import type { MitreCut } from './mitreCuts.ts'
import { aboveZero } from './neededLength.ts'
import type { LaidRun, Post } from './postLayout.ts'
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
  /** Where slip joints, splices and mitres fall. */
  readonly places: JointPlaces
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

/** What the joints' places hang on besides the section itself. */
export type AlongTheLine = {
  /** Of the whole layout. */
  readonly posts: readonly Post[]
  /** The longest length that rails can be cut from; undefined where any can be had. */
  readonly longest: Millimetres | undefined
  readonly mitres: readonly MitreCut[]
}

export function shopWork(
  parts: SectionParts,
  rails: RailPieces,
  paintedArea: number,
  caps: number,
  along: AlongTheLine,
  found: Found,
): ShopWork {
  const { buildUp, path, posts } = parts
  const ofRail = buildUp.rails.outside === '' ? undefined : memberMass(buildUp.rails, `${path}.rails`, found)
  const joints = 2 * (rails.rails + rails.braceRails)
  const heated = buildUp.rails.welded && rails.perBay > 0
  const welded = buildUp.rails.welded ? joints + rails.splices : 0
  const pieces = rails.pieces.reduce((sum, { count }) => sum + count, 0)
  const hollowPosts = posts.filter(({ mass }) => mass.hollow)
  const slip = heated ? aboveZero(buildUp.rails.slip, `${path}.rails.slip`, found) : undefined
  const spliced = rails.splices > 0 && along.longest !== undefined
  return {
    item: parts.item,
    joints,
    saddles: posts.filter(({ size }) => size.top === 'saddle' && size.rail.over > 0n).length,
    splices: rails.splices,
    weldLength: fromMillimetres(welded * (ofRail?.around ?? 0)),
    paintedArea,
    caps,
    weepHoles: hollowPosts.length + (ofRail?.hollow ? pieces : 0),
    heat: heated ? heatOf(parts, slip) : undefined,
    places: {
      slips: slip ? slipsOf(parts, slip, along.posts) : [],
      splices: spliced ? splicePlaces(parts.bays, along.posts, rails.perBay, along.longest) : [],
      mitres: along.mitres,
    },
  }
}

function heatOf({ buildUp, runs }: SectionParts, slip: Millimetres | undefined): HeatMovement | undefined {
  const longest = runs.map(lengthOfRun).reduce(larger, nothing)
  if (longest.over === 0n) return undefined
  const movement = movementOf(longest, buildUp)
  return {
    run: longest,
    fahrenheitRange: buildUp.rails.temperatureRange || usualRange,
    movement: fromMillimetres(movement),
    slip,
    slipJoints: slip ? slipJointsNeeded(movement, 0, asNumber(slip)) : undefined,
  }
}

/** In millimetres, of one welded run. */
function movementOf(run: Millimetres, { rails }: BuildUp): number {
  return heatMovement(
    asNumber(run),
    celsiusRange(asNumber(numberOf(rails.temperatureRange || usualRange))),
    rails.material === 'aluminium' ? aluminiumExpansion : steelExpansion,
  )
}

/** Of each run that needs any: a shorter run moves less than the longest. */
function slipsOf(
  { runs, buildUp }: SectionParts,
  slip: Millimetres,
  posts: readonly Post[],
): readonly SlipPlaces[] {
  return runs.flatMap((run) => {
    const joints = slipJointsNeeded(movementOf(lengthOfRun(run), buildUp), 0, asNumber(slip))
    return joints > 0 ? [slipPlaces(run, posts, joints)] : []
  })
}

function lengthOfRun({ from, to }: LaidRun): Millimetres {
  return lowestTerms(subtractRatios(to, from))
}
