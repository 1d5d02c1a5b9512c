import type { Units } from '../core/agreement/notebook.ts'

/** A page in points (1/72 in). Everything is laid out between the margins. */
export type PageSize = {
  readonly width: number
  readonly height: number
  readonly left: number
  readonly right: number
  readonly top: number
  readonly bottom: number
}

/** Letter where lengths are in feet and inches, A4 (ISO 216) where they are metric. */
export function pageSize(units: Units): PageSize {
  const [width, height] = units === 'metric' ? [595.28, 841.89] : [612, 792]
  return { width, height, left: 54, right: width - 54, top: 62, bottom: height - 54 }
}

export function columnWidth(page: PageSize): number {
  return page.right - page.left
}

export function columnHeight(page: PageSize): number {
  return page.bottom - page.top
}

/** The width at which the drawing of the line fills the column, one unit to a point. */
export function drawingWidth(units: Units): number {
  return columnWidth(pageSize(units))
}
