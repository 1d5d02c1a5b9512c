import { never } from '../../core/assert.ts'
import type { Figure, FigureUnit } from '../../core/figures/figure.ts'
import type { Drawing } from '../drawing.ts'
import { barsDrawing } from './barsDrawing.ts'
import { stepsDrawing } from './stepsDrawing.ts'

/** A drawing without a place on the ground. */
export type DrawnFigure = Pick<Drawing, 'width' | 'height' | 'shapes'>

/** The width at which a figure is seen and the size of its letters there, in units; and what its axes say. */
export type FigureLook = {
  readonly width: number
  readonly text: number
  readonly words: {
    readonly amounts: (places: readonly bigint[], unit: FigureUnit) => readonly string[]
    readonly day: (day: string, upTo: 'day' | 'month' | 'year') => string
  }
}

/** A figure as shapes: the one description for the screen and for paper. */
export function figureDrawing(figure: Figure, look: FigureLook): DrawnFigure {
  switch (figure.kind) {
    case 'bars':
      return barsDrawing(figure, look)
    case 'steps':
      return stepsDrawing(figure, look)
    default:
      return never(figure)
  }
}
