import type { Notebook } from '../../../lib/core/agreement/notebook.ts'
import type { TakeOff } from '../../../lib/core/takeoff/takeOff.ts'
import { takeOffWhereBuilt } from '../../../lib/drawing/builtFence.ts'
import { itemDrawing } from '../../../lib/drawing/itemDrawing.ts'
import { lineDrawing } from '../../../lib/drawing/lineDrawing.ts'
import type { DrawnStandings } from '../../../lib/drawing/statusRails.ts'
import { drawingDescription, itemDescription } from '../../../lib/words/summary/drawingDescription.ts'
import { drawingWords } from '../../../lib/words/summary/drawingWords.ts'
import type { AddressOf } from '../../ui/drawing/PartLinks.tsx'
import { DrawingFigure } from './DrawingFigure.tsx'

/** A drawing's width in its own units: on a phone and on anything wider. The widths in drawing.css go with them. */
const widths = { narrow: 248, wide: 544 } as const

/**
 * The line to scale, in plan and in elevation, drawn for the width at which it is seen; the same in words beside it.
 *
 * @param home the notebook's own address, where its parts may be opened; without it they only have names
 * @param takeOff of the same notebook, where the page has it
 * @param inPlace where each part is opened on the same page, and how sections and gates stand; the key is folded away then
 */
export function LineDrawing({
  notebook,
  takeOff,
  home,
  inPlace,
}: {
  notebook: Notebook
  takeOff?: TakeOff | undefined
  home?: string | undefined
  inPlace?: { readonly addressOf: AddressOf; readonly standings: DrawnStandings } | undefined
}) {
  const words = drawingWords(notebook)
  const found = takeOff ?? takeOffWhereBuilt(notebook)
  const { caption, description, notes } = drawingDescription(notebook)
  const drawn = (widthUnits: number) =>
    lineDrawing(notebook, {
      widthUnits,
      words,
      ...(found ? { takeOff: found } : {}),
      ...(inPlace ? { standings: inPlace.standings, keyApart: true } : {}),
    })
  return (
    <DrawingFigure
      notebook={notebook}
      label="Drawing of the line"
      narrow={drawn(widths.narrow)}
      wide={drawn(widths.wide)}
      caption={caption}
      description={description}
      notes={notes}
      home={home}
      addressOf={inPlace?.addressOf}
    />
  )
}

/** One section or gate alone, with every dimension; nothing where it has no place on the line yet. */
export function ItemDrawing({
  notebook,
  takeOff,
  itemId,
  home,
}: {
  notebook: Notebook
  takeOff?: TakeOff | undefined
  itemId: string
  home: string
}) {
  const words = drawingWords(notebook)
  const found = takeOff ?? takeOffWhereBuilt(notebook)
  const [narrow, wide] = [widths.narrow, widths.wide].map((widthUnits) =>
    itemDrawing(notebook, found, itemId, { widthUnits, words }),
  )
  if (narrow === undefined || wide === undefined) return null
  const { caption, description } = itemDescription(notebook, itemId)
  return (
    <DrawingFigure
      notebook={notebook}
      label="Drawing of this part"
      narrow={narrow}
      wide={wide}
      caption={caption}
      description={description}
      notes={[]}
      home={home}
    />
  )
}
