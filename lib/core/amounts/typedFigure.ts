import { exactFraction, vulgarFractionCharacters } from './typedFraction.ts'
import { isNumber } from './typedNumber.ts'

/** As many digits after the point as any number of the file may have. */
const mostDigits = 6

/**
 * A figure as a file writes it, from what somebody typed who groups by commas, whose keys have no point, or who counts in
 * fractions: "1250,50" is "1250.50", "1,250.50" too; "12 1/2" is "12.5", ".5" is "0.5". What can be read in two ways, such
 * as "1,200", what comes to no exact figure, such as "1/3", and all else stays as it is.
 */
export function withPoint(typed: string): string {
  const decimal = /^\s*([0-9]+),([0-9]{1,2})\s*$/.exec(typed) ?? /^\s*(0),([0-9]+)\s*$/.exec(typed)
  if (decimal !== null) return `${decimal[1]}.${decimal[2]}`
  const part = /^\s*[.,]([0-9]+)\s*$/.exec(typed)
  if (part !== null) return `0.${part[1]}`
  if (/^\s*[1-9][0-9]{0,2}(,[0-9]{3})+\.[0-9]+\s*$/.test(typed)) return typed.trim().replaceAll(',', '')
  return exactFraction(typed, mostDigits) ?? typed
}

/** The same in a field that names its `unit`, which need not be typed: "30 days" is "30" where days are asked for. */
export function figureTyped(typed: string, unit: string): string {
  const end = typed.trimEnd()
  if (unit !== '' && end.toLowerCase().endsWith(unit.toLowerCase())) {
    const figure = withPoint(end.slice(0, -unit.length).trim())
    if (isNumber(figure, mostDigits)) return figure
  }
  return withPoint(typed)
}

const ink = `0-9.,${vulgarFractionCharacters}`
const around = new RegExp(`^[^${ink}-]+|[^${ink}]+$`, 'gu')

/** How else a figure could be written that can't be read: without the sign of a currency, with a point, without groups. */
export function figuresMeant(typed: string): readonly string[] {
  const bare = typed.replace(around, '')
  const known = withPoint(bare)
  if (isNumber(known, mostDigits)) return known === typed ? [] : [known]
  if (/^[1-9][0-9]{0,2},[0-9]{3}$/.test(bare)) return [bare.replace(',', ''), bare.replace(',', '.')]
  const meant = withoutGroups(bare) ?? withoutIdleFigures(bare)
  return meant !== undefined && isNumber(meant, mostDigits) ? [meant] : []
}

/** "1.412,50", "1 412,50", "1’412.50" and "1,412,000": in threes by one sign, then perhaps a part after another. */
function withoutGroups(bare: string): string | undefined {
  const groups = /^([1-9][0-9]{0,2}([.,\s'’])[0-9]{3}(?:\2[0-9]{3})*)(?:(?!\2)[.,]([0-9]+))?$/.exec(bare)
  if (groups === null) return undefined
  const whole = (groups[1] ?? '').replaceAll(/[^0-9]/g, '')
  return groups[3] === undefined ? whole : `${whole}.${groups[3]}`
}

/** "007" and "5." without what says nothing. */
function withoutIdleFigures(bare: string): string | undefined {
  const figure = /^0*([0-9]+(?:\.[0-9]+)?)\.?$/.exec(bare)
  return figure?.[1]
}
