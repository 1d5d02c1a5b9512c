import type { Units } from '../agreement/notebook.ts'
import { multiplyRatios, type Ratio, ratio } from '../amounts/ratio.ts'
import { divideRatios, numberOf, thousandthsText } from './exact.ts'
import { quantityUnits } from './quantity.ts'

type Measured = { readonly quantity: string; readonly unit: string }

const footInMetres = ratio(3048n, 10_000n)
const inMetric: Readonly<Record<'length' | 'area' | 'volume', Ratio>> = {
  length: footInMetres,
  area: multiplyRatios(footInMetres, footInMetres),
  /** A cubic foot in litres. */
  volume: multiplyRatios(
    ratio(1000n, 1n),
    multiplyRatios(footInMetres, multiplyRatios(footInMetres, footInMetres)),
  ),
}

/**
 * A quantity of a cost line as it reads where other units are shown: 80.5 ft is 24.536 m, rounded half up to three digits.
 * Undefined where its unit is one of those already, or none that the take-off measures in.
 */
export function inUnitsOf(units: Units, { quantity, unit }: Measured): Measured | undefined {
  const written = quantityUnits(units === 'metric' ? 'ft-in' : 'metric')
  const shown = quantityUnits(units)
  for (const kind of ['length', 'area', 'volume'] as const) {
    if (unit.trim() !== written[kind]) continue
    const by = units === 'metric' ? multiplyRatios : divideRatios
    return { quantity: thousandthsText(by(numberOf(quantity), inMetric[kind])), unit: shown[kind] }
  }
  return undefined
}
