import type { Notebook } from '../../../lib/core/agreement/notebook.ts'
import { lineDrawing } from '../../../lib/drawing/lineDrawing.ts'
import { drawingDescription } from '../../../lib/words/summary/drawingDescription.ts'
import { drawingWords } from '../../../lib/words/summary/drawingWords.ts'
import { DrawnShapes } from '../../ui/DrawnShapes.tsx'

/** The line to scale, in plan and in elevation, drawn for the width at which it is seen; the same in words beside it. */
export function LineDrawing({ notebook }: { notebook: Notebook }) {
  const words = drawingWords(notebook)
  const { caption, description, notes } = drawingDescription(notebook)
  return (
    <figure className="line-drawing">
      {(['narrow', 'wide'] as const).map((width) => (
        <div key={width} className={`line-drawing-${width}`}>
          <DrawnShapes
            drawing={lineDrawing(notebook, { widthUnits: width === 'narrow' ? 360 : 900, words })}
            label={`${caption} ${description}`}
          />
        </div>
      ))}
      <figcaption>
        {caption}
        {notes.map((note) => (
          <span key={note} className="line-drawing-note">
            {note}
          </span>
        ))}
      </figcaption>
    </figure>
  )
}
