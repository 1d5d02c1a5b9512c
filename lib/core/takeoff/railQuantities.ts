import type { Units } from '../agreement/notebook.ts'
import { asNumber, multiplied, sumOf, times, withPercent } from './exact.ts'
import type { Found } from './finding.ts'
import { memberMass } from './memberMass.ts'
import { lengthOrNothing } from './neededLength.ts'
import { lengthIn, measuredQuantity, type Quantity, quantityUnits } from './quantity.ts'
import type { RailPieces } from './railPieces.ts'
import { specialName } from './runEdges.ts'
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

function braceWire({ item, buildUp, bays, runs }: SectionParts, unit: 'ft' | 'm'): readonly Quantity[] {
  const assemblies = bays.filter(({ brace }) => brace).length
  // One kind of wire does for all: the longest that any of the special posts asks for.
  const wires = Object.values(specialName).flatMap((name) => {
    const wire = buildUp[name]?.brace?.wire ?? ''
    return wire === '' ? [] : [lengthOrNothing(wire)]
  })
  const each = wires.reduce(
    (best, next) => (asNumber(next) > asNumber(best) ? next : best),
    lengthOrNothing(''),
  )
  if (assemblies === 0 || runs.length === 0 || each.over === 0n) return []
  return [
    {
      item,
      part: 'brace wire',
      name: { kind: 'brace wire' },
      quantity: measuredQuantity(lengthIn(unit, times(each, assemblies))),
      unit,
      kilograms: undefined,
      reclaimed: false,
      workings: [{ step: 'brace wire', assemblies, each }],
    },
  ]
}
