import type { Figure } from '../../../lib/core/figures/figure.ts'
import { figureDrawing } from '../../../lib/drawing/figures/figureDrawing.ts'
import { type DescribedFigure, figureWords } from '../../../lib/words/figures/figureWords.ts'
import { DrawnShapes } from '../../ui/DrawnShapes.tsx'

/** Width and letters in units of the drawing; figures.css shows them no smaller than that. */
const looks = { narrow: { width: 300, text: 13 }, wide: { width: 660, text: 13 } } as const

/** A figure to look at, drawn for a phone and for anything wider, under its caption; nothing where there is none yet. */
export function FigureView({ shown }: { shown: DescribedFigure<Figure> | undefined }) {
  if (shown === undefined) return null
  return (
    <figure className="figure-drawn">
      <figcaption>{shown.caption}</figcaption>
      {(['narrow', 'wide'] as const).map((look) => (
        <div key={look} className={`figure-drawn-${look}`}>
          <DrawnShapes
            drawing={figureDrawing(shown.figure, { ...looks[look], words: figureWords })}
            label={`${shown.caption}. ${shown.description}`}
          />
        </div>
      ))}
    </figure>
  )
}
