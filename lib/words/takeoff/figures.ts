import type { Units } from '../../core/agreement/notebook.ts'
import type { Ratio } from '../../core/amounts/ratio.ts'
import { asNumber, thousandthsText } from '../../core/takeoff/exact.ts'
import { areaIn, fromNumber, quantityUnits, volumeIn } from '../../core/takeoff/quantity.ts'
import { kilogramsPerPound } from '../../core/takeoff/unitFactors.ts'

/** Kilograms for a reader in the notebook's units, to a thousandth: "79.6 lb". */
export function weightWords(kilograms: number, units: Units): string {
  return units === 'metric'
    ? `${thousandthsText(fromNumber(kilograms))} kg`
    : `${thousandthsText(fromNumber(kilograms / kilogramsPerPound))} lb`
}

/** Square millimetres, exact or not. */
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
    : `${thousandthsText(fromNumber(newtons / newtonsPerPound))} lb`
}

const newtonsPerPound = 4.4482216152605
const newtonMetresPerPoundFoot = newtonsPerPound * 0.3048

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
