import type { Millimetres } from '../amounts/length.ts'
import type { Ratio } from '../amounts/ratio.ts'
import type { FreeLine } from './buildUp.ts'

/** One step of how a quantity came about; worded in `lib/words/takeoff/stepText.ts`. Lengths in millimetres, areas in mm². */
export type Step =
  // posts and bays
  | {
      readonly step: 'equal bays'
      readonly run: Millimetres
      readonly spacing: Millimetres
      readonly bays: number
      readonly bay: Millimetres
      readonly braces: number
    }
  | {
      readonly step: 'stock bays'
      readonly run: Millimetres
      readonly bay: Millimetres
      readonly bays: number
      readonly remainder: Millimetres | undefined
      readonly braces: number
    }
  | {
      readonly step: 'posts'
      readonly bays: number
      readonly runs: number
      readonly posts: number
      readonly elsewhere: number
    }
  | { readonly step: 'of these'; readonly posts: number }
  | {
      readonly step: 'post piece'
      readonly least: Millimetres
      readonly most: Millimetres
      readonly total: Millimetres
    }
  // lengths
  | { readonly step: 'pieces'; readonly pieces: number; readonly total: Millimetres }
  | {
      readonly step: 'rails'
      readonly bays: number
      readonly perBay: number
      readonly rails: number
      readonly splices: number
    }
  | { readonly step: 'brace rails'; readonly rails: number }
  | { readonly step: 'waste'; readonly percent: string }
  | { readonly step: 'brace wire'; readonly assemblies: number; readonly each: Millimetres }
  // infill
  | {
      readonly step: 'fence length'
      readonly runs: number
      readonly total: Millimetres
      readonly sloped: boolean
    }
  | { readonly step: 'wraps'; readonly runs: number; readonly wrap: Millimetres; readonly total: Millimetres }
  | { readonly step: 'laps'; readonly laps: number; readonly lap: Millimetres; readonly total: Millimetres }
  | {
      readonly step: 'rolls'
      readonly length: Millimetres
      readonly roll: Millimetres
      readonly rolls: number
    }
  | {
      readonly step: 'panels'
      readonly bays: number
      readonly width: Millimetres | undefined
      readonly panels: number
    }
  | {
      readonly step: 'boards'
      readonly width: Millimetres
      readonly gap: Millimetres
      readonly boards: number
    }
  | {
      readonly step: 'rows'
      readonly height: Millimetres
      readonly opening: Millimetres
      readonly rows: number
    }
  | {
      readonly step: 'strip'
      readonly rows: number
      readonly length: Millimetres
      readonly takeUp: string
      readonly total: Millimetres
    }
  | {
      readonly step: 'slit'
      readonly coil: Millimetres
      readonly strip: Millimetres
      readonly strips: number
      readonly total: Millimetres
    }
  | { readonly step: 'coils'; readonly coil: Millimetres; readonly coils: number }
  // ground
  | {
      readonly step: 'holes'
      readonly holes: number
      readonly hole: Millimetres
      readonly post: Millimetres
      /** Depth of all of them together. */
      readonly depth: Millimetres
      readonly gravel: Millimetres
      readonly overbreak: string
      readonly litres: number
    }
  | {
      readonly step: 'gravel beds'
      readonly holes: number
      readonly hole: Millimetres
      readonly gravel: Millimetres
      readonly overbreak: string
      readonly litres: number
    }
  | { readonly step: 'bags'; readonly litres: number; readonly bagLitres: number; readonly bags: number }
  // counts
  | {
      readonly step: 'ties'
      readonly posts: number
      readonly perPost: string
      readonly rails: number
      readonly perRail: string
    }
  | { readonly step: 'caps'; readonly posts: number }
  | { readonly step: 'surface'; readonly squareMillimetres: number; readonly of: 'members' | 'infill' }
  | { readonly step: 'length finished'; readonly total: Millimetres }
  | {
      readonly step: 'coats'
      readonly coats: number
      readonly coverage: string
      readonly coverageUnit: string
      readonly amount: Ratio
    }
  | {
      readonly step: 'basis'
      readonly basis: FreeLine['basis']
      readonly amount: Ratio
      readonly factor: string
    }
  | { readonly step: 'packs'; readonly amount: Ratio; readonly pack: string; readonly packs: number }
  // gates
  | {
      readonly step: 'leaf'
      readonly opening: Millimetres
      readonly leaves: number
      readonly width: Millimetres
      readonly height: Millimetres
    }
  | {
      readonly step: 'frame'
      readonly perimeter: Millimetres
      readonly brace: Millimetres | undefined
      readonly leaves: number
      readonly total: Millimetres
    }
  | { readonly step: 'header'; readonly clear: Millimetres; readonly length: Millimetres }
  | { readonly step: 'per leaf'; readonly leaves: number; readonly each: number }
