import { type Ratio, ratio } from '../amounts/ratio.ts'
import type { FreeLine } from './buildUp.ts'
import { asNumber, ceilingOf, divideRatios, multiplied, numberOf, one, withPercent } from './exact.ts'
import type { Found } from './finding.ts'
import { numberOr } from './neededLength.ts'
import type { ItemAt } from './postLayout.ts'
import { measuredQuantity, type Quantity } from './quantity.ts'
import { squareMetresPerSquareFoot } from './unitFactors.ts'
import { kilogramsOf } from './weighed.ts'

/** How much of each basis one item has, exact. */
export type Bases = Readonly<Record<FreeLine['basis'], Ratio>>

export function counted(count: number): Ratio {
  return ratio(BigInt(count), 1n)
}

/** A free line is factor × its basis, more for waste; in whole packs where a pack is said. */
export function freeLineQuantities(
  item: ItemAt,
  lines: readonly FreeLine[],
  bases: Bases,
  found: Found,
): readonly Quantity[] {
  return lines.flatMap((line, index): Quantity[] => {
    const path = `${item.list}[${item.index}].buildUp.lines[${index}]`
    const amount = bases[line.basis]
    const needed = multiplied(amount, numberOr(line.factor, one), withPercent(line.waste))
    if (needed.over === 0n) return []
    const pack = line.pack === '' ? undefined : numberOf(line.pack)
    if (pack?.over === 0n) {
      found(`${path}.pack`, { kind: 'zero', typed: line.pack })
      return []
    }
    const packs = pack ? ceilingOf(divideRatios(needed, pack)) : 0
    return [
      {
        item,
        part: `line ${index + 1}`,
        name: { kind: 'line', what: line.what, basis: line.basis },
        quantity: pack ? String(packs) : measuredQuantity(needed),
        unit: (pack ? line.packUnit : line.unit) || 'each',
        kilograms: lineKilograms(line, pack ? packs : asNumber(needed), asNumber(needed)),
        reclaimed: line.reclaimed,
        workings: [
          { step: 'basis', basis: line.basis, amount, factor: line.factor || '1' },
          ...(line.waste === '' ? [] : [{ step: 'waste' as const, percent: line.waste }]),
          ...(pack ? [{ step: 'packs' as const, amount: needed, pack: line.pack, packs }] : []),
        ],
      },
    ]
  })
}

/** A weight by length or area goes with the amount that the line measures: by its own unit, else by its basis. */
function lineKilograms(line: FreeLine, bought: number, amount: number): number | undefined {
  const measure = [line.unit, line.basis].find((unit) => unit in metresIn || unit in squareMetresIn) ?? ''
  return kilogramsOf(line.weight, {
    pieces: bought,
    metres: amount * (metresIn[measure] ?? 0),
    squareMetres: amount * (squareMetresIn[measure] ?? 0),
  })
}

const metresIn: Readonly<Record<string, number>> = { ft: 0.3048, m: 1 }
const squareMetresIn: Readonly<Record<string, number>> = { 'sq ft': squareMetresPerSquareFoot, 'sq m': 1 }
