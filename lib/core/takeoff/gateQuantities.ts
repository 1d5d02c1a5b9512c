import type { Notebook } from '../agreement/notebook.ts'
import type { Millimetres } from '../amounts/length.ts'
import { multiplyRatios } from '../amounts/ratio.ts'
import type { GateBuildUp } from './buildUp.ts'
import type { CutNeed } from './cutJobs.ts'
import { asNumber, lowestTerms, multiplied, nothing, one, times, withPercent } from './exact.ts'
import { capQuantities } from './fastenings.ts'
import type { Found } from './finding.ts'
import { finishQuantities, surfaceOf } from './finishQuantities.ts'
import { footingQuantities } from './footingQuantities.ts'
import { counted, freeLineQuantities } from './freeLineQuantities.ts'
import { type GateFrame, gateFrame, hingesPerLeaf } from './gateFrame.ts'
import type { GateLeaf } from './gateLeaf.ts'
import { type InfillArea, layerArea, layerHeight } from './infillArea.ts'
import { infillQuantities } from './infillQuantities.ts'
import { memberMass } from './memberMass.ts'
import type { ItemAt } from './postLayout.ts'
import { postQuantities } from './postQuantities.ts'
import { areaIn, lengthIn, measuredQuantity, type Quantity, quantityUnits } from './quantity.ts'
import type { BuiltPost } from './sectionParts.ts'
import { aboveGround } from './sectionQuantities.ts'

export type GateTakeOff = {
  readonly item: ItemAt
  readonly leaf: GateLeaf
  readonly frame: GateFrame | undefined
  readonly quantities: readonly Quantity[]
  readonly needs: readonly CutNeed[]
}

/** Everything that one gate with a build-up needs. */
export function gateTakeOff(
  notebook: Notebook,
  leaf: GateLeaf,
  buildUp: GateBuildUp,
  posts: readonly BuiltPost[],
  found: Found,
): GateTakeOff {
  const { units } = notebook
  const item: ItemAt = { list: 'gates', index: leaf.gate }
  const path = `gates[${leaf.gate}].buildUp`
  const area = leafArea(item, path, leaf, buildUp)
  const frame = gateFrame(leaf, buildUp, area, found)
  const unit = quantityUnits(units).length
  const header = leaf.header
  const headerMass =
    buildUp.header && header ? memberMass(buildUp.header, `${path}.header`, found) : undefined
  const caps = capQuantities(item, header ? [] : posts)
  const leafSurface = frame ? frame.mass.around * asNumber(frame.total) : 0
  const headerSurface = headerMass && header ? headerMass.around * asNumber(header.length) : 0
  const squareMillimetres = leaf.height ? multiplyRatios(area.total, leaf.height) : nothing
  return {
    item,
    leaf,
    frame,
    quantities: [
      ...postQuantities(item, posts, [], notebook, found),
      ...(frame ? [frameQuantity(item, leaf, buildUp, frame, unit)] : []),
      ...infillQuantities(area, units, found),
      ...(buildUp.header && header
        ? [
            {
              item,
              part: 'header',
              name: { kind: 'header' as const, member: buildUp.header },
              quantity: measuredQuantity(
                lengthIn(unit, multiplied(header.length, withPercent(buildUp.header.waste))),
              ),
              unit,
              kilograms: byLength(headerMass?.kilogramsPerMetre, header.length),
              reclaimed: buildUp.header.reclaimed,
              workings: [{ step: 'header' as const, clear: header.clear, length: header.length }],
            },
          ]
        : []),
      ...hardware(item, leaf, buildUp),
      ...caps,
      ...footingQuantities(item, posts, units, found),
      ...finishQuantities(
        item,
        buildUp.finishes,
        {
          members: leafSurface + headerSurface + surfaceOf(aboveGround(posts)),
          infill: Math.max(
            0,
            ...buildUp.infill.map((layer, index) =>
              asNumber(layerArea(area, layer.kind, layerHeight(area, layer, index, found))),
            ),
          ),
          length: asNumber(leaf.opening),
        },
        found,
      ),
      ...freeLineQuantities(
        item,
        buildUp.lines,
        {
          post: counted(posts.length),
          bay: counted(leaf.leaves),
          ft: lengthIn('ft', area.total),
          m: lengthIn('m', area.total),
          'sq ft': areaIn('sq ft', squareMillimetres),
          'sq m': areaIn('sq m', squareMillimetres),
          gate: one,
          once: one,
        },
        found,
      ),
    ],
    needs: [
      ...(frame ? [{ member: buildUp.frame, item, part: 'frame' as const, pieces: frame.pieces }] : []),
      ...(buildUp.header && header
        ? [
            {
              member: buildUp.header,
              item,
              part: 'header' as const,
              pieces: [{ length: header.length, count: 1 }],
            },
          ]
        : []),
    ],
  }
}

function byLength(kilogramsPerMetre: number | undefined, length: Millimetres): number | undefined {
  return kilogramsPerMetre === undefined ? undefined : (kilogramsPerMetre * asNumber(length)) / 1000
}

function leafArea(item: ItemAt, path: string, leaf: GateLeaf, buildUp: GateBuildUp): InfillArea {
  const widths =
    leaf.width === undefined ? [] : Array.from({ length: leaf.leaves }, () => leaf.width as Millimetres)
  return {
    item,
    path,
    layers: buildUp.infill,
    runs: widths,
    flatRuns: widths,
    bays: widths.map((length) => ({ length, rise: nothing })),
    total: leaf.width === undefined ? nothing : lowestTerms(times(leaf.width, leaf.leaves)),
    raked: false,
    height: leaf.height,
  }
}

function frameQuantity(
  item: ItemAt,
  leaf: GateLeaf,
  { frame: member }: GateBuildUp,
  frame: GateFrame,
  unit: 'ft' | 'm',
): Quantity {
  return {
    item,
    part: 'frame',
    name: { kind: 'frame', member },
    quantity: measuredQuantity(lengthIn(unit, multiplied(frame.total, withPercent(member.waste)))),
    unit,
    kilograms: byLength(frame.mass.kilogramsPerMetre, frame.total),
    reclaimed: member.reclaimed,
    workings: [
      {
        step: 'leaf',
        opening: leaf.opening,
        leaves: leaf.leaves,
        width: leaf.width ?? nothing,
        height: leaf.height ?? nothing,
      },
      {
        step: 'frame',
        perimeter: frame.perimeter,
        brace: frame.brace?.length,
        leaves: leaf.leaves,
        total: frame.total,
      },
      ...(member.waste === '' ? [] : [{ step: 'waste' as const, percent: member.waste }]),
    ],
  }
}

function hardware(item: ItemAt, { leaves }: GateLeaf, buildUp: GateBuildUp): readonly Quantity[] {
  const each = hingesPerLeaf(buildUp)
  const common = { item, unit: 'each', kilograms: undefined, reclaimed: false }
  return [
    ...(each === 0
      ? []
      : [
          {
            ...common,
            part: 'hinges',
            name: { kind: 'hinges' as const, what: buildUp.hinges.what },
            quantity: String(each * leaves),
            workings: [{ step: 'per leaf' as const, leaves, each }],
          },
        ]),
    ...(buildUp.latch === ''
      ? []
      : [
          {
            ...common,
            part: 'latch',
            name: { kind: 'latch' as const, what: buildUp.latch },
            quantity: '1',
            workings: [],
          },
        ]),
  ]
}
