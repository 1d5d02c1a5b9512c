import { statusLooks } from '../core/agreement/itemStatus.ts'
import type { Notebook } from '../core/agreement/notebook.ts'
import type { PlacedLine } from '../core/boundary/placedLine.ts'
import { basicStroke, hasBasicHeight } from './basicHeights.ts'
import type { Point, Shape, Stroke } from './drawing.ts'
import type { DrawingWords } from './drawingWords.ts'
import type { DrawnMore } from './drawnMore.ts'
import { limitDash } from './limitLines.ts'
import { bandStroke, holeStroke } from './planBand.ts'
import { certainPlaces } from './plannedPosts.ts'
import { postKinds, postSign } from './postSigns.ts'
import { boundaryStroke, fenceStroke, groundStrokes, postShape } from './signs.ts'
import { railsHeight, statusRails } from './statusRails.ts'

/** A sign, drawn from its left end in a room 26 units wide, and what it means. */
export type KeySign = { readonly text: string; readonly draw: (at: Point) => readonly Shape[] }

/** Only signs that are on the drawing. */
export function keySigns(
  notebook: Notebook,
  placed: PlacedLine,
  words: DrawingWords,
  { fence, limits, error, cutSections, standings }: DrawnMore,
): readonly KeySign[] {
  const line = (text: string, stroke: Stroke): KeySign => ({
    text,
    draw: (at) => [{ kind: 'polyline', points: [at, { x: at.x + 26, y: at.y }], stroke }],
  })
  const middle = ({ x, y }: Point): Point => ({ x: x + 13, y })
  const certain: KeySign = { text: words.post, draw: (at) => [postShape(middle(at))] }
  const kinds = new Set(fence?.posts.map(({ built }) => built.post.kind))
  const looks = new Set(standings ? [...standings.sections, ...standings.gates] : [])
  return [
    ...statusLooks
      .filter((look) => looks.has(look))
      .map(
        (look): KeySign => ({
          text: words.standing[look],
          draw: ({ x, y }) => statusRails(look, x + 1, x + 25, y - railsHeight / 2),
        }),
      ),
    line(words.boundaryLine, boundaryStroke),
    ...(error > 0 ? [line(words.statedError(notebook.line.error), bandStroke)] : []),
    line(words.fence, fenceStroke),
    ...(certainPlaces(cutSections ? { ...placed, sections: [] } : placed, fence).length > 0 || !fence
      ? [certain]
      : []),
    ...postKinds
      .filter((kind) => kinds.has(kind))
      .map((kind): KeySign => ({ text: words.postKind(kind), draw: (at) => postSign(kind, middle(at)) })),
    ...(fence?.posts.some(({ hole }) => hole > 0) ? [line(words.hole, holeStroke)] : []),
    ...(fence?.bays.some(({ bay, top }) => bay.brace && top !== undefined)
      ? [bracedBay(words.braceBay)]
      : []),
    line(words.groundOf('a'), groundStrokes.a),
    line(words.groundOf('b'), groundStrokes.b),
    ...(hasBasicHeight(placed) ? [line(words.basicHeight, basicStroke)] : []),
    ...(limits.length > 0 ? [line(words.heightLimit, { ink: 'ink', width: 1, dash: limitDash })] : []),
  ]
}

function bracedBay(text: string): KeySign {
  const stroke: Stroke = { ink: 'quiet', width: 0.8 }
  return {
    text,
    draw: ({ x, y }) => [
      {
        kind: 'polygon',
        points: [
          { x: x + 6, y: y - 4 },
          { x: x + 20, y: y - 4 },
          { x: x + 20, y: y + 4 },
          { x: x + 6, y: y + 4 },
        ],
        stroke,
      },
      {
        kind: 'polyline',
        points: [
          { x: x + 6, y: y - 4 },
          { x: x + 20, y: y + 4 },
        ],
        stroke,
      },
    ],
  }
}
