import type { Notebook } from '../../../lib/core/agreement/notebook.ts'
import type { Drawing } from '../../../lib/drawing/drawing.ts'
import type { DrawnPart } from '../../../lib/drawing/drawnPart.ts'
import { scaleLine } from '../../../lib/words/summary/drawingExaggeration.ts'
import { DrawnShapes } from '../../ui/DrawnShapes.tsx'
import { fieldId } from '../../ui/draft/fieldId.ts'
import { DrawingFrame } from '../../ui/drawing/DrawingFrame.tsx'
import { type AddressOf, PartLinks, PartList } from '../../ui/drawing/PartLinks.tsx'
import { FoldedPart } from '../../ui/FoldedPart.tsx'

/** A drawing for narrow and for wide screens, its parts to open, and its caption. */
export function DrawingFigure({
  notebook,
  label,
  narrow,
  wide,
  caption,
  description,
  notes,
  home,
  addressOf = home === undefined ? undefined : addressesIn(notebook, home),
}: {
  notebook: Notebook
  label: string
  narrow: Drawing
  wide: Drawing
  caption: string
  description: string
  notes: readonly string[]
  home: string | undefined
  /** Where each part leads, if not to its own page. */
  addressOf?: AddressOf | undefined
}) {
  const drawings = [
    ['narrow', narrow],
    ['wide', wide],
  ] as const
  const keyApart = narrow.details !== undefined
  return (
    <figure className="line-drawing">
      {drawings.map(([width, drawing]) => (
        <div key={width} className={`line-drawing-${width}`}>
          <DrawingFrame label={label}>
            <DrawnShapes drawing={drawing} label={`${caption} ${description}`} />
            {addressOf ? <PartLinks drawing={drawing} addressOf={addressOf} /> : null}
          </DrawingFrame>
          {keyApart ? <p className="line-drawing-scale">{scaleLine(drawing.scale)}</p> : null}
          <PartList parts={drawing.parts} addressOf={addressOf} />
        </div>
      ))}
      <figcaption>
        {keyApart ? (
          <FoldedPart summary="What the signs mean">
            {drawings.map(([width, { details = [] }]) =>
              details.map((key) => (
                <div key={width} className={`line-drawing-${width}`}>
                  <DrawnShapes drawing={key} label="Key of the drawing" />
                </div>
              )),
            )}
            <p>{caption}</p>
          </FoldedPart>
        ) : (
          caption
        )}
        {notes.map((note) => (
          <span key={note} className="line-drawing-note">
            {note}
          </span>
        ))}
      </figcaption>
    </figure>
  )
}

/** A section or gate opens its own page, a post the build-up that it is made by, a station its fields. */
function addressesIn(notebook: Notebook, home: string) {
  const idOf = (list: 'sections' | 'gates', index: number) =>
    encodeURIComponent(notebook[list][index]?.id ?? '')
  return ({ of }: DrawnPart): string => {
    switch (of.kind) {
      case 'section':
        return `${home}/item/${idOf('sections', of.index)}`
      case 'gate':
        return `${home}/item/${idOf('gates', of.index)}`
      case 'post':
        return `${home}/build-up/${idOf(of.item.list, of.item.index)}`
      case 'station':
        return `${home}/line#${fieldId('field', `line.stations[${of.index}].at`)}`
    }
  }
}
