import type { Weighed } from './buildUp.ts'
import { asNumber, nothing } from './exact.ts'
import { numberOr } from './neededLength.ts'
import {
  kilogramsPerMetrePerPoundPerFoot,
  kilogramsPerPound,
  squareMetresPerSquareFoot,
} from './unitFactors.ts'

/** How much of something there is, for a weight that is given each, by length or by area. */
export type Extent = { readonly pieces: number; readonly metres: number; readonly squareMetres: number }

/** Kilograms; undefined where no weight is said. */
export function kilogramsOf(weight: Weighed | undefined, extent: Extent): number | undefined {
  if (weight === undefined || weight.figure === '' || weight.per === '') return undefined
  const figure = asNumber(numberOr(weight.figure, nothing))
  switch (weight.per) {
    case 'lb each':
      return figure * kilogramsPerPound * extent.pieces
    case 'kg each':
      return figure * extent.pieces
    case 'lb/ft':
      return figure * kilogramsPerMetrePerPoundPerFoot * extent.metres
    case 'kg/m':
      return figure * extent.metres
    case 'lb/sq ft':
      return (figure * kilogramsPerPound * extent.squareMetres) / squareMetresPerSquareFoot
    case 'kg/sq m':
      return figure * extent.squareMetres
  }
}
