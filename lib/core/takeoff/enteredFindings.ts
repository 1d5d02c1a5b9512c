import type { Notebook } from '../agreement/notebook.ts'
import type { Found } from './finding.ts'
import { neededLength } from './neededLength.ts'
import type { HalfOfSite } from './siteFigures.ts'

/**
 * What is entered by halves, and so is left out without a word elsewhere: pieces at hand that no cut can be planned from,
 * and wind or soil that lacks what makes a figure of it. Nothing at all said of them is no finding.
 */
export function enteredFindings({ inventory, line }: Notebook, found: Found): void {
  for (const [index, { length, outside }] of inventory.entries()) {
    neededLength(length, `inventory[${index}].length`, found)
    neededLength(outside, `inventory[${index}].outside`, found)
  }
  const { wind, soil } = line.site
  const half = (field: string, lacks: HalfOfSite, typed: string) =>
    found(`line.site.${field}`, { kind: 'half-said', lacks, said: typed })
  if (wind.speed === '' && wind.exposure !== '') half('wind.speed', 'wind speed', wind.exposure)
  if (wind.speed !== '' && wind.unit === '') half('wind.unit', 'wind unit', wind.speed)
  if (wind.speed !== '' && wind.exposure === '')
    half('wind.exposure', 'exposure', `${wind.speed} ${wind.unit}`.trim())
  if (soil.lateral !== '' && soil.unit === '') half('soil.unit', 'soil unit', soil.lateral)
}
