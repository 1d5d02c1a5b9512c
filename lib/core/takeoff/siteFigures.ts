import type { Notebook } from '../agreement/notebook.ts'
import type { Millimetres } from '../amounts/length.ts'
import type { Site } from './buildUp.ts'
import { asNumber, numberOf } from './exact.ts'
import { lengthOrNothing } from './neededLength.ts'
import { doublingForPoles } from './postEmbedment.ts'
import { metresPerSecondPerMileAnHour, pascalsPerPoundPerSquareFoot } from './unitFactors.ts'
import { exposureCoefficients } from './windPressure.ts'

/** What the look at wind and posts can do nothing without; worded in `lib/words/takeoff/windText.ts`. */
export type WindLack = SiteLack | 'bays' | 'height' | 'solid share' | 'post width' | 'hole depth'
export type SiteLack = 'wind speed' | 'wind unit' | 'exposure' | 'soil value' | 'soil unit'
/** Of these the other half can have been said already. */
export type HalfOfSite = Exclude<SiteLack, 'soil value'>
export type Lack = { readonly path: string; readonly what: WindLack }

/** The place in the units of the equations; a figure that is not said, or is zero, is undefined. */
export type SiteFigures = {
  readonly milesPerHour: number | undefined
  readonly exposureCoefficient: number | undefined
  /** After any doubling. */
  readonly psfPerFoot: number | undefined
  /** Undefined where it is not said, or is nothing. */
  readonly frost: Millimetres | undefined
  readonly lacks: readonly Lack[]
}

const path = 'line.site'

/** Reads what the notebook says of the place, and what of it is still to be said. */
export function siteFigures({ line }: Notebook): SiteFigures {
  const { wind, soil, frost } = line.site
  const [speed, lateral] = [aboveNothing(wind.speed), aboveNothing(soil.lateral)]
  const deep = lengthOrNothing(frost.depth)
  const lacks: readonly (Lack | false)[] = [
    speed === undefined && { path: `${path}.wind.speed`, what: 'wind speed' },
    wind.unit === '' && { path: `${path}.wind.unit`, what: 'wind unit' },
    wind.exposure === '' && { path: `${path}.wind.exposure`, what: 'exposure' },
    lateral === undefined && { path: `${path}.soil.lateral`, what: 'soil value' },
    soil.unit === '' && { path: `${path}.soil.unit`, what: 'soil unit' },
  ]
  return {
    milesPerHour: speed === undefined || wind.unit === '' ? undefined : speed / perMileAnHour[wind.unit],
    exposureCoefficient: wind.exposure === '' ? undefined : exposureCoefficients[wind.exposure],
    psfPerFoot:
      lateral === undefined || soil.unit === ''
        ? undefined
        : (lateral / perPsfPerFoot[soil.unit]) * (soil.doubled ? doublingForPoles : 1),
    frost: deep.over > 0n ? deep : undefined,
    lacks: lacks.filter((lack) => lack !== false),
  }
}

/** Whether anything at all is said of wind, soil or frost. */
export function anythingOfSite({ line }: Notebook): boolean {
  const { wind, soil, frost } = line.site
  return [wind.speed, soil.lateral, frost.depth].some((typed) => typed !== '')
}

function aboveNothing(typed: string): number | undefined {
  const figure = typed === '' ? 0 : asNumber(numberOf(typed))
  return figure > 0 ? figure : undefined
}

const perMileAnHour: Readonly<Record<Exclude<Site['wind']['unit'], ''>, number>> = {
  mph: 1,
  'm/s': metresPerSecondPerMileAnHour,
  'km/h': metresPerSecondPerMileAnHour * 3.6,
}

/** One psf for each foot of depth, in kilopascals for each metre. */
const kilopascalsPerMetre = pascalsPerPoundPerSquareFoot / 1000 / 0.3048

const perPsfPerFoot: Readonly<Record<Exclude<Site['soil']['unit'], ''>, number>> = {
  'psf/ft': 1,
  'kPa/m': kilopascalsPerMetre,
}
