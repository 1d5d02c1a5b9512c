import { inMillimetres } from '../core/amounts/length.ts'
import { type BuiltFence, type DrawnPost, postNumber } from './builtFence.ts'
import { obliqueTick } from './dimensionLine.ts'
import type { Point, Shape } from './drawing.ts'
import type { DrawingWords } from './drawingWords.ts'
import { type DrawnMore, reachOf } from './drawnMore.ts'
import { frameFrom, margin } from './frame.ts'
import { type Part, rowHeight, smallText } from './part.ts'
import { bandStroke, holeStroke } from './planBand.ts'
import { boundaryStroke } from './signs.ts'
import { wrapped } from './textRoom.ts'
import { title, titleHeight } from './title.ts'

const side = 96

/** The post whose hole comes nearest to reaching across the line, from above, both ways to one scale, with what is known of it. */
export function acrossDrawing(
  fence: BuiltFence,
  width: number,
  words: DrawingWords,
  { error, section }: Pick<DrawnMore, 'error' | 'section'>,
  top: number,
): Part | undefined {
  const chosen = nearestToLine(fence)
  if (chosen === undefined) return undefined
  const { post, setback } = chosen
  const reach = reachOf(post)
  const half = Math.max(reach, post.width / 2, 1)
  const [high, low] = [Math.max(setback + half, error, 0), Math.min(setback - half, -error, 0)]
  const scale = side / (Math.max(high - low, 2 * half) * 1.12)
  if (!(scale > 0) || !Number.isFinite(scale)) return undefined
  const boxTop = top + titleHeight
  const middle = (high + low) / 2
  const toY = (off: number) => boxTop + side / 2 - (off - middle) * scale
  const centre: Point = { x: margin + side / 2, y: toY(setback) }
  const line = toY(0)
  const across = (y: number, stroke: typeof bandStroke): Shape => ({
    kind: 'polyline',
    points: [
      { x: margin, y },
      { x: margin + side, y },
    ],
    stroke,
  })
  const room = width - margin - side - 12 - margin
  const lines = words
    .acrossLines(post, postNumber(fence, post.built, section)?.number)
    .flatMap((text) => wrapped(text, smallText, room))
  return {
    shapes: [
      title(words.acrossTitle, frameFrom(0, width, width, 1), top),
      box(boxTop, line, 'soft-a'),
      box(line, boxTop + side, 'soft-b'),
      ...(error > 0
        ? [
            box(toY(error), toY(-error), 'sheet'),
            across(toY(error), bandStroke),
            across(toY(-error), bandStroke),
          ]
        : []),
      ...(post.hole > 0
        ? [
            {
              kind: 'circle' as const,
              centre,
              radius: (post.hole / 2) * scale,
              fill: 'sheet' as const,
              stroke: holeStroke,
            },
          ]
        : []),
      postSection(post, centre, scale),
      across(line, boundaryStroke),
      ...(Math.abs(setback) * scale > 1
        ? [
            {
              kind: 'polyline' as const,
              points: [centre, { x: centre.x, y: line }],
              stroke: { ink: 'quiet' as const, width: 0.6 },
            },
            obliqueTick(centre),
            obliqueTick({ x: centre.x, y: line }),
          ]
        : []),
      ...lines.map(
        (text, index): Shape => ({
          kind: 'text',
          text,
          at: { x: margin + side + 12, y: boxTop + 10 + index * (rowHeight + 2) },
          anchor: 'start',
          size: smallText,
          ink: 'ink',
          room,
        }),
      ),
    ],
    bottom: boxTop + Math.max(side, lines.length * (rowHeight + 2)) + 4,
    leftOut: 0,
  }
}

function nearestToLine({ posts, found }: BuiltFence): { post: DrawnPost; setback: number } | undefined {
  const known = posts.flatMap((post) => {
    const setback = found.setbacks.posts[post.place]?.setback
    return setback === undefined ? [] : [{ post, setback: inMillimetres(setback) }]
  })
  return known.reduce<(typeof known)[number] | undefined>(
    (best, one) =>
      best === undefined ||
      reachOf(one.post) - Math.abs(one.setback) > reachOf(best.post) - Math.abs(best.setback)
        ? one
        : best,
    undefined,
  )
}

function postSection({ built, width }: DrawnPost, centre: Point, scale: number): Shape {
  const half = Math.max((width / 2) * scale, 1)
  const stroke = { ink: 'ink' as const, width: 1 }
  if (built.size.member.shape === 'round')
    return { kind: 'circle', centre, radius: half, fill: 'rule', stroke }
  return {
    kind: 'polygon',
    points: corners(centre.x - half, centre.y - half, centre.x + half, centre.y + half),
    fill: 'rule',
    stroke,
  }
}

function box(top: number, bottom: number, fill: 'soft-a' | 'soft-b' | 'sheet'): Shape {
  return { kind: 'polygon', points: corners(margin, top, margin + side, bottom), fill }
}

function corners(left: number, top: number, right: number, bottom: number): Point[] {
  return [
    { x: left, y: top },
    { x: right, y: top },
    { x: right, y: bottom },
    { x: left, y: bottom },
  ]
}
