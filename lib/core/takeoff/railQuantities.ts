import type { Units } from '../agreement/notebook.ts'
import type { Millimetres } from '../amounts/length.ts'
import { asNumber, multiplied, sumOf, times, withPercent } from './exact.ts'
import type { Found } from './finding.ts'
import { memberMass } from './memberMass.ts'
import { lengthIn, measuredQuantity, type Quantity, quantityUnits } from './quantity.ts'
import type { RailPieces } from './railPieces.ts'
import { placeKey } from './runEdges.ts'
import type { SectionParts } from './sectionParts.ts'

/** Rails by the length of their pieces, and the wire of brace assemblies. */
export function railQuantities(
  parts: SectionParts,
  rails: RailPieces,
  units: Units,
  found: Found,
): readonly Quantity[] {
  const { member, total, count } = {
    member: parts.buildUp.rails,
    total: sumOf(rails.pieces.map(({ length, count: alike }) => times(length, alike))),
    count: rails.pieces.reduce((sum, piece) => sum + piece.count, 0),
  }
  if (count === 0) return []
  const unit = quantityUnits(units).length
  const { kilogramsPerMetre } = memberMass(member, `${parts.path}.rails`, found)
  const needed = multiplied(total, withPercent(member.waste))
  return [
    {
      item: parts.item,
      part: 'rails',
      name: { kind: 'rails', member },
      quantity: measuredQuantity(lengthIn(unit, needed)),
      unit,
      kilograms: kilogramsPerMetre === undefined ? undefined : (asNumber(total) / 1000) * kilogramsPerMetre,
      reclaimed: member.reclaimed,
      workings: [
        {
          step: 'rails',
          bays: parts.bays.length,
          perBay: rails.perBay,
          rails: rails.rails,
          splices: rails.splices,
        },
        ...(rails.braceRails === 0 ? [] : [{ step: 'brace rails' as const, rails: rails.braceRails }]),
        { step: 'pieces', pieces: count, total },
        ...(member.waste === '' ? [] : [{ step: 'waste' as const, percent: member.waste }]),
      ],
    },
    ...braceWire(parts, unit),
  ]
}

/** The wire of each assembly that the runs have; those alike together. */
function braceWire({ item, runs }: SectionParts, unit: 'ft' | 'm'): readonly Quantity[] {
  const alike = new Map<string, { each: Millimetres; assemblies: number }>()
  for (const { before, after, wireBefore, wireAfter } of runs.map(({ braces }) => braces)) {
    for (const [assemblies, each] of [[before, wireBefore] as const, [after, wireAfter] as const]) {
      if (assemblies === 0 || each.over === 0n) continue
      const known = alike.get(placeKey(each)) ?? { each, assemblies: 0 }
      alike.set(placeKey(each), { each, assemblies: known.assemblies + assemblies })
    }
  }
  const wires = [...alike.values()]
  if (wires.length === 0) return []
  return [
    {
      item,
      part: 'brace wire',
      name: { kind: 'brace wire' },
      quantity: measuredQuantity(
        lengthIn(unit, sumOf(wires.map(({ each, assemblies }) => times(each, assemblies)))),
      ),
      unit,
      kilograms: undefined,
      reclaimed: false,
      workings: wires.map(({ each, assemblies }) => ({ step: 'brace wire', assemblies, each })),
    },
  ]
}
