import type { CostLine, LabourLine } from '../agreement/notebook.ts'
import { multiplyRatios, type Ratio } from '../amounts/ratio.ts'
import { fromTakeOff } from '../takeoff/offeredLines.ts'
import { movedNumber } from './movedNumber.ts'

const areaUnits = new Set(['sq ft', 'sq m', 'ft2', 'm2'])

/** Whether anything on an item's lines moves with its height. */
export function followsHeight(lines: readonly CostLine[]): boolean {
  return lines.some((line) => fromTakeOff(line) || areaUnits.has(line.unit.trim()))
}

/** How far a section's or a gate's dimensions are moved: its length, and its height. */
export type MovedBy = { readonly length: Ratio; readonly height: Ratio }

/**
 * Cost lines that were typed by hand, moved with the dimensions: those by area with length and height, the others with
 * the length. What came from the take-off follows the take-off. A rule of proportion to try with, and said to be one.
 *
 * @param kept whether the quantity at this place was typed anew and stays
 */
export function moveByHandTyped(
  lines: readonly CostLine[],
  { length, height }: MovedBy,
  kept: (index: number) => boolean,
): readonly CostLine[] {
  return lines.map((line, index) => {
    if (kept(index) || fromTakeOff(line)) return line
    const factor = areaUnits.has(line.unit.trim()) ? multiplyRatios(length, height) : length
    return { ...line, quantity: movedNumber(line.quantity, factor) }
  })
}

/** Hours of tasks move with the length. */
export function moveHours(
  lines: readonly LabourLine[],
  { length }: MovedBy,
  kept: (index: number) => boolean,
): readonly LabourLine[] {
  return lines.map((line, index) =>
    kept(index) ? line : { ...line, hours: movedNumber(line.hours, length) },
  )
}
