import { compareLengths, type Millimetres } from '../amounts/length.ts'
import type { InfillLayer } from './buildUp.ts'
import {
  ceilingOf,
  divideRatios,
  floorOf,
  lowestTerms,
  multiplied,
  one,
  times,
  withPercent,
} from './exact.ts'
import type { Found } from './finding.ts'
import { type Amount, lengthStep } from './infillAmount.ts'
import type { InfillArea } from './infillArea.ts'
import { aboveZero, neededLength, numberOr } from './neededLength.ts'
import { lengthIn } from './quantity.ts'
import type { Step } from './step.ts'

/** ⌊height ÷ opening⌋ rows of strip, each as long as the fence times its take-up, slit from coil of a given width. */
export function stripAmount(
  area: InfillArea,
  layer: Extract<InfillLayer, { kind: 'strip' }>,
  height: Millimetres | undefined,
  path: string,
  unit: 'ft' | 'm',
  found: Found,
): Amount | undefined {
  const opening = neededLength(layer.opening, `${path}.opening`, found)
  if (opening === undefined || height === undefined) return undefined
  const rows = floorOf(divideRatios(height, opening))
  const takeUp = numberOr(layer.takeUp, one)
  const strip = lowestTerms(multiplied(times(area.total, rows), takeUp))
  const workings: Step[] = [
    lengthStep(area, area.total),
    { step: 'rows', height, opening, rows },
    { step: 'strip', rows, length: area.total, takeUp: layer.takeUp || '1', total: strip },
  ]
  const coilWidth = aboveZero(layer.coilWidth, `${path}.coilWidth`, found)
  const width = coilWidth ? neededLength(layer.width, `${path}.width`, found) : undefined
  if (coilWidth && width && compareLengths(width, coilWidth) > 0) {
    found(`${path}.width`, { kind: 'strip-wider-than-coil', strip: width, coil: coilWidth })
    return undefined
  }
  const strips = coilWidth && width ? floorOf(divideRatios(coilWidth, width)) : 1
  const coilLength = lowestTerms({ over: strip.over, under: strip.under * BigInt(strips) })
  if (coilWidth && width)
    workings.push({ step: 'slit', coil: coilWidth, strip: width, strips, total: coilLength })
  const coil = aboveZero(layer.coil, `${path}.coil`, found)
  const common = { length: strip, size: width }
  if (coil === undefined)
    return { ...common, amount: lengthIn(unit, coilLength), unit, whole: false, pieces: 0, workings }
  const needed = divideRatios(coilLength, coil)
  const coils = ceilingOf(multiplied(needed, withPercent(layer.waste)))
  workings.push({ step: 'coils', coil, coils })
  return { ...common, amount: needed, unit: 'coil', whole: true, pieces: coils, workings }
}
