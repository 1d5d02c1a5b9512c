import type { Shape } from './drawing.ts'

/** One part of the drawing, from some top down to `bottom`; `leftOut` counts the labels and swings that found no room. */
export type Part = { readonly shapes: readonly Shape[]; readonly bottom: number; readonly leftOut: number }

/** Text size and row height of every label, in units. */
export const smallText = 8.5
export const rowHeight = 12
