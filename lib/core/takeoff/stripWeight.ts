import type { Millimetres } from '../amounts/length.ts'
import type { InfillLayer } from './buildUp.ts'
import { asNumber } from './exact.ts'
import { densityOf } from './memberMass.ts'
import { lengthOrNothing } from './neededLength.ts'

/**
 * Kilograms of a length of flat strip: width × thickness × length × density of its material. Undefined for other layers,
 * and where one of these is not said or is nothing.
 */
export function stripKilograms(layer: InfillLayer, length: Millimetres): number | undefined {
  if (layer.kind !== 'strip') return undefined
  const density = densityOf({ density: '', material: layer.material })
  const [width, thickness] = [layer.width, layer.thickness].map((typed) => asNumber(lengthOrNothing(typed)))
  return density && width && thickness ? (width * thickness * asNumber(length) * density) / 1e9 : undefined
}
