import type { Millimetres } from '../amounts/length.ts'
import type { InfillLayer, Site } from './buildUp.ts'
import type { SolidShare } from './solidShare.ts'

/**
 * One step of the look at wind and posts, in its order; worded in `lib/words/takeoff/windText.ts`. Pressures in psf, forces
 * in pounds, as the equations have them; shares from 0 to 1.
 */
export type WindStep =
  | {
      readonly step: 'bay'
      readonly bay: Millimetres
      readonly height: Millimetres
      /** The straight stretch of fence that the bay is part of. */
      readonly run: Millimetres
    }
  | {
      readonly step: 'pressure'
      readonly wind: Site['wind']
      readonly milesPerHour: number
      readonly exposureCoefficient: number
      readonly directionality: number
      readonly psf: number
    }
  | {
      readonly step: 'layer'
      readonly kind: InfillLayer['kind']
      readonly what: string
      readonly share: number
      readonly typed: boolean
    }
  | ({ readonly step: 'solid' } & Pick<SolidShare, 'infill' | 'rails' | 'posts' | 'whole'>)
  | {
      readonly step: 'force'
      readonly reckonedAs: 'wall' | 'open'
      readonly coefficient: number
      readonly gust: number
      readonly psf: number
      /** The least pressure that is reckoned with was taken. */
      readonly least: boolean
      readonly squareFeet: number
      readonly pounds: number
    }
  | { readonly step: 'moment'; readonly actsAt: Millimetres; readonly poundFeet: number }
  | { readonly step: 'allowable'; readonly factor: number; readonly pounds: number }
  | { readonly step: 'soil'; readonly soil: Site['soil']; readonly psfPerFoot: number }
  | { readonly step: 'width'; readonly of: 'concrete' | 'post'; readonly width: Millimetres }
  | {
      readonly step: 'depth'
      /** A of the pole equation, in feet, and the pressure of the soil S1 that goes with the depth. */
      readonly a: number
      readonly lateralPsf: number
      readonly depth: Millimetres
    }
  | { readonly step: 'compare'; readonly depth: Millimetres; readonly needed: Millimetres }
