import type { Notebook } from '../agreement/notebook.ts'
import { lengthOf } from '../amounts/length.ts'
import { multiplyRatios } from '../amounts/ratio.ts'
import { type CutNeed, fittingInventory } from './cutJobs.ts'
import { asNumber, larger, lowestTerms, nothing, one, sumOf } from './exact.ts'
import { capQuantities, tieQuantities } from './fastenings.ts'
import type { Found } from './finding.ts'
import { finishQuantities, surfaceOf } from './finishQuantities.ts'
import { footingQuantities } from './footingQuantities.ts'
import { counted, freeLineQuantities } from './freeLineQuantities.ts'
import { type InfillArea, layerArea, layerHeight } from './infillArea.ts'
import { infillQuantities } from './infillQuantities.ts'
import { memberMass } from './memberMass.ts'
import { aboveZero } from './neededLength.ts'
import { postQuantities } from './postQuantities.ts'
import { areaIn, lengthIn, type Quantity } from './quantity.ts'
import { railPieces } from './railPieces.ts'
import { railQuantities } from './railQuantities.ts'
import type { BuiltPost, SectionParts } from './sectionParts.ts'
import { type AlongTheLine, type ShopWork, shopWork } from './shopWork.ts'

export type SectionTakeOff = {
  readonly parts: SectionParts
  readonly quantities: readonly Quantity[]
  readonly work: ShopWork
  readonly needs: readonly CutNeed[]
}

/** Everything that one section with a build-up needs, in the order in which it is built. */
export function sectionTakeOff(
  notebook: Notebook,
  parts: SectionParts,
  along: Pick<AlongTheLine, 'posts' | 'mitres'>,
  found: Found,
): SectionTakeOff {
  const { item, path, buildUp, posts, bays } = parts
  const { units } = notebook
  const stock = aboveZero(buildUp.rails.stock, `${path}.rails.stock`, found)
  const atHand = fittingInventory(buildUp.rails, notebook.inventory).map(({ length }) => length)
  const longest = stock && atHand.reduce(larger, stock)
  const rails = railPieces(notebook, item.index, bays, longest, found)
  const area = sectionArea(notebook, parts)
  const caps = capQuantities(item, posts)
  const railMass =
    buildUp.rails.outside === '' ? undefined : memberMass(buildUp.rails, `${path}.rails`, found)
  const railLength = rails.pieces.reduce((sum, { length, count }) => sum + asNumber(length) * count, 0)
  const members = surfaceOf([...aboveGround(posts), { around: railMass?.around ?? 0, length: railLength }])
  const infill = Math.max(
    0,
    ...buildUp.infill.map((layer, index) =>
      asNumber(layerArea(area, layer.kind, layerHeight(area, layer, index, found))),
    ),
  )
  const squareMillimetres = area.height ? multiplyRatios(parts.length, area.height) : nothing
  return {
    parts,
    quantities: [
      ...postQuantities(item, posts, parts.runs, notebook, found),
      ...railQuantities(parts, rails, units, found),
      ...infillQuantities(area, units, found),
      ...tieQuantities(parts, rails),
      ...caps,
      ...footingQuantities(item, posts, units, found),
      ...finishQuantities(item, buildUp.finishes, { members, infill, length: asNumber(parts.length) }, found),
      ...freeLineQuantities(
        item,
        buildUp.lines,
        {
          post: counted(posts.length),
          bay: counted(bays.length),
          ft: lengthIn('ft', parts.length),
          m: lengthIn('m', parts.length),
          'sq ft': areaIn('sq ft', squareMillimetres),
          'sq m': areaIn('sq m', squareMillimetres),
          gate: counted(parts.gates),
          once: one,
        },
        found,
      ),
    ],
    work: shopWork(
      parts,
      rails,
      members,
      caps.reduce((sum, { quantity }) => sum + Number(quantity), 0),
      { ...along, longest },
      found,
    ),
    needs: [{ member: buildUp.rails, item, part: 'rails', pieces: rails.pieces }],
  }
}

function sectionArea(notebook: Notebook, parts: SectionParts): InfillArea {
  const agreed = notebook.sections[parts.item.index]?.height.agreed ?? ''
  return {
    item: parts.item,
    path: parts.path,
    layers: parts.buildUp.infill,
    runs: parts.runLengths,
    flatRuns: parts.flatLengths,
    bays: parts.bays.map((bay) => ({ length: bay.length, rise: bay.rise })),
    total: sumOf(parts.runLengths),
    raked: parts.buildUp.slope !== 'stepped',
    height: agreed === '' ? undefined : aboveZeroOrUndefined(agreed),
  }
}

function aboveZeroOrUndefined(agreed: string) {
  const height = lowestTerms(lengthOf(agreed))
  return height.over > 0n ? height : undefined
}

/** What of the posts stands above the ground, for the finish; in millimetres. */
export function aboveGround(posts: readonly BuiltPost[]): readonly { around: number; length: number }[] {
  return posts.map(({ piece, mass }) => ({
    around: mass.around,
    length: piece.length === undefined ? 0 : Math.max(0, asNumber(piece.length) - asNumber(piece.depth)),
  }))
}
