import type { Units } from '../../core/agreement/notebook.ts'
import { compareLengths, type Millimetres } from '../../core/amounts/length.ts'
import { type Ratio, ratio } from '../../core/amounts/ratio.ts'
import { asNumber, ceilingOf, divideRatios, thousandthsText, times } from '../../core/takeoff/exact.ts'
import { areaIn, fromNumber, quantityUnits, volumeIn } from '../../core/takeoff/quantity.ts'
import {
  kilogramsPerPound,
  newtonsPerPoundForce,
  pascalsPerPoundPerSquareFoot,
  squareMetresPerSquareFoot,
} from '../../core/takeoff/unitFactors.ts'
import { lengthWords } from '../length.ts'

/** Kilograms in the notebook's units, to a thousandth, for whoever reckons on with them: "79.612 lb". */
export function weightWords(kilograms: number, units: Units): string {
  return units === 'metric'
    ? `${thousandthsText(fromNumber(kilograms))} kg`
    : `${thousandthsText(fromNumber(kilograms / kilogramsPerPound))} lb`
}

/** Kilograms for screen and paper, which are no weighbridge ticket: "79.6 lb", "3648 lb". */
export function roughWeightWords(kilograms: number, units: Units): string {
  return units === 'metric'
    ? `${roughFigure(kilograms)} kg`
    : `${roughFigure(kilograms / kilogramsPerPound)} lb`
}

/** Square millimetres for a reader who measures with a tape: "15.7 sq ft". */
export function roughAreaWords(squareMillimetres: Ratio, units: Units): string {
  const { area } = quantityUnits(units)
  return `${roughFigure(asNumber(areaIn(area, squareMillimetres)))} ${area}`
}

/** Square millimetres, exact or not, to a thousandth. */
export function areaWords(squareMillimetres: Ratio | number, units: Units): string {
  const { area } = quantityUnits(units)
  const exact = typeof squareMillimetres === 'number' ? fromNumber(squareMillimetres) : squareMillimetres
  return `${thousandthsText(areaIn(area, exact))} ${area}`
}

export function volumeWords(litres: number, units: Units): string {
  const { volume } = quantityUnits(units)
  return `${thousandthsText(volumeIn(volume, litres))} ${volume}`
}

/** A plain number, to a thousandth. */
export function numberWords(value: Ratio): string {
  return thousandthsText(value)
}

/** A moment in the notebook's units: "120.5 lb ft" or "163.4 N m". */
export function momentWords(newtonMetres: number, units: Units): string {
  return units === 'metric'
    ? `${thousandthsText(fromNumber(newtonMetres))} N m`
    : `${thousandthsText(fromNumber(newtonMetres / newtonMetresPerPoundFoot))} lb ft`
}

export function forceWords(newtons: number, units: Units): string {
  return units === 'metric'
    ? `${thousandthsText(fromNumber(newtons))} N`
    : `${thousandthsText(fromNumber(newtons / newtonsPerPoundForce))} lb`
}

const newtonMetresPerPoundFoot = newtonsPerPoundForce * 0.3048

/** Of zero or more, rounded to so many digits after the point, without noughts at the end. */
export function plainFigure(value: number, digits: 0 | 1 | 2 | 3): string {
  const scale = 10 ** digits
  return thousandthsText(fromNumber(Math.round(value * scale) / scale))
}

/** Three digits that count, as good as what it was reckoned from: "3648", "79.6", "2.25", and no noughts for what is small. */
function roughFigure(value: number): string {
  return plainFigure(value, value >= 100 ? 0 : value >= 10 ? 1 : value >= 1 ? 2 : 3)
}

// The look at wind is rough: its figures are shown no finer than they deserve.

export function pressureWords(psf: number, units: Units): string {
  return units === 'metric'
    ? `${plainFigure(psf * pascalsPerPoundPerSquareFoot, 0)} Pa`
    : `${plainFigure(psf, 1)} lb/sq ft`
}

export function poundForceWords(pounds: number, units: Units): string {
  return units === 'metric'
    ? `${plainFigure(pounds * newtonsPerPoundForce, 0)} N`
    : `${plainFigure(pounds, 0)} lb`
}

export function poundFootWords(poundFeet: number, units: Units): string {
  return units === 'metric'
    ? `${plainFigure(poundFeet * newtonMetresPerPoundFoot, 0)} N m`
    : `${plainFigure(poundFeet, 0)} lb ft`
}

/**
 * A depth that the look asks for, up to the next whole inch or centimetre; to the sixteenth only where the hole itself lies
 * within that last inch, so that what falls short never reads as reached, or the other way round.
 */
export function askedDepthWords(needed: Millimetres, depth: Millimetres, units: Units): string {
  const step = units === 'metric' ? ratio(10n, 1n) : ratio(254n, 10n)
  const asked = times(step, ceilingOf(divideRatios(needed, step)))
  const within = compareLengths(depth, asked) < 0 && compareLengths(needed, depth) <= 0
  return lengthWords(within ? needed : asked, units)
}

export function squareFeetWords(squareFeet: number, units: Units): string {
  return units === 'metric'
    ? `${plainFigure(squareFeet * squareMetresPerSquareFoot, 1)} sq m`
    : `${plainFigure(squareFeet, 1)} sq ft`
}

/** "1 post", "2 posts". */
export function many(count: number, one: string, several = `${one}s`): string {
  return `${count} ${count === 1 ? one : several}`
}

/** A share from 0 to 1 in whole percent and a tenth. */
export function percentWords(share: number): string {
  return `${thousandthsText(fromNumber(Math.round(share * 1000) / 10))} %`
}

export function millimetresFigure(length: Ratio): number {
  return Math.round(asNumber(length) * 1e6) / 1e6
}
