import type { Notebook } from '../agreement/notebook.ts'
import { asNumber, fromMillimetres } from './exact.ts'
import { type Embedment, nonConstrainedEmbedment } from './postEmbedment.ts'
import type { SectionParts } from './sectionParts.ts'
import type { SiteFigures } from './siteFigures.ts'
import { type SolidShare, solidShare } from './solidShare.ts'
import type { LookedAtPosts, TypicalBay } from './typicalBay.ts'
import { millimetresPerFoot } from './unitFactors.ts'
import {
  allowableStressFactor,
  leastPressurePsf,
  rigidGustFactor,
  velocityPressure,
  type WindForce,
  wallDirectionality,
  windOnFence,
} from './windPressure.ts'
import type { WindStep } from './windStep.ts'

/** A bay whose size is known. */
export type SizedBay = TypicalBay & { readonly height: NonNullable<TypicalBay['height']> }

/** The wind on one bay, at strength level, with how it came about. */
export type WindLoad = {
  readonly force: WindForce
  readonly velocityPsf: number
  readonly steps: readonly WindStep[]
}

/** Level ground is taken: no hill or ridge makes the wind faster. */
const levelGround = 1

/** Undefined where the wind of the place is not said. */
export function windLoad(
  { line }: Notebook,
  { milesPerHour, exposureCoefficient }: SiteFigures,
  { buildUp }: SectionParts,
  bay: SizedBay,
  solid: SolidShare,
): WindLoad | undefined {
  if (milesPerHour === undefined || exposureCoefficient === undefined) return undefined
  const velocityPsf = velocityPressure({
    windMilesPerHour: milesPerHour,
    exposureCoefficient,
    topographicFactor: levelGround,
    directionalityFactor: wallDirectionality,
  })
  const force = forceOn(bay, solid, velocityPsf)
  return {
    force,
    velocityPsf,
    steps: [
      {
        step: 'pressure',
        wind: line.site.wind,
        milesPerHour,
        exposureCoefficient,
        directionality: wallDirectionality,
        psf: velocityPsf,
      },
      ...solid.layers.flatMap(({ index, share, typed }): WindStep[] => {
        const layer = buildUp.infill[index]
        return layer ? [{ step: 'layer', kind: layer.kind, what: layer.what, share, typed }] : []
      }),
      {
        step: 'solid',
        infill: solid.infill,
        rails: solid.rails,
        posts: solid.posts,
        whole: solid.whole,
      },
      {
        step: 'force',
        reckonedAs: force.reckonedAs,
        coefficient: force.forceCoefficient,
        gust: rigidGustFactor,
        psf: force.pressurePsf,
        least: force.pressurePsf === leastPressurePsf,
        squareFeet: force.areaSquareFeet,
        pounds: force.forcePounds,
      },
      {
        step: 'moment',
        actsAt: fromMillimetres(force.actsAtFeet * millimetresPerFoot),
        poundFeet: force.momentAtGradePoundFeet,
      },
    ],
  }
}

function forceOn(bay: SizedBay, solid: SolidShare, velocityPsf: number): WindForce {
  return windOnFence(velocityPsf, {
    heightFeet: asNumber(bay.height) / millimetresPerFoot,
    lengthFeet: asNumber(bay.bay) / millimetresPerFoot,
    fenceLengthFeet: asNumber(bay.run) / millimetresPerFoot,
    solidShare: solid.whole,
    members: solid.members,
  })
}

/** How many times the force is what it would be without the layers of a kind; undefined where that can't be told. */
export function timesWithout(
  kind: 'board' | 'strip',
  { buildUp, path }: SectionParts,
  bay: SizedBay,
  postWidth: number,
  { force, velocityPsf }: WindLoad,
): number | undefined {
  const infill = buildUp.infill.filter((layer) => layer.kind !== kind)
  const outline = { bay: asNumber(bay.bay), height: asNumber(bay.height), post: postWidth }
  const solid = solidShare({ ...buildUp, infill }, outline, path)
  if (!('whole' in solid)) return undefined
  const without = forceOn(bay, solid, velocityPsf).forcePounds
  return without > 0 ? force.forcePounds / without : undefined
}

/** The depth that the pole equation asks for, with how it came about; undefined where soil or post are not said. */
export function neededDepth(
  { line }: Notebook,
  { psfPerFoot }: SiteFigures,
  { bearing }: LookedAtPosts,
  { actsAtFeet, forcePounds }: WindForce,
): { readonly embedment: Embedment; readonly steps: readonly WindStep[] } | undefined {
  if (psfPerFoot === undefined || bearing === undefined) return undefined
  const allowable = forcePounds * allowableStressFactor
  const widthFeet = asNumber(bearing.width) / millimetresPerFoot
  const embedment = nonConstrainedEmbedment({
    forcePounds: allowable,
    heightFeet: actsAtFeet,
    widthFeet,
    lateralPsfPerFoot: psfPerFoot,
  })
  return {
    embedment,
    steps: [
      { step: 'allowable', factor: allowableStressFactor, pounds: allowable },
      { step: 'soil', soil: line.site.soil, psfPerFoot },
      { step: 'width', ...bearing },
      {
        step: 'depth',
        a: embedment.lateralPsf > 0 ? (2.34 * allowable) / (embedment.lateralPsf * widthFeet) : 0,
        lateralPsf: embedment.lateralPsf,
        depth: fromMillimetres(embedment.depthFeet * millimetresPerFoot),
      },
    ],
  }
}
