import { inMillimetres } from '../core/amounts/length.ts'
import type { PlacedGate } from '../core/boundary/placedLine.ts'
import { type BuiltFence, type DrawnPost, postNumber } from './builtFence.ts'
import { obliqueTick } from './dimensionLine.ts'
import type { Point, Shape } from './drawing.ts'
import type { DrawingWords } from './drawingWords.ts'
import { inFloats } from './fenceRuns.ts'
import { type Frame, heldInside } from './frame.ts'
import type { Ground } from './ground.ts'
import { labelRows } from './labelRows.ts'
import { type Part, rowHeight, smallText } from './part.ts'
import { holeStroke } from './planBand.ts'
import { postsTooClose } from './plannedPosts.ts'
import { textWidth } from './textRoom.ts'

type DrawPoint = (at: number, height: number) => Point

/** Every height that has to be on the drawing: tops, the bottoms of holes, leaves and headers. */
export function heightsOf({ posts, bays, leaves }: BuiltFence, ground: Ground): readonly number[] {
  return [
    ...posts.flatMap(({ bottom, top }) => [bottom, ...(top === undefined ? [] : [top])]),
    ...bays.flatMap(({ top }) => (top ? [top.left, top.right] : [])),
    ...[...leaves.values()].flatMap(({ header }) => (header ? [inMillimetres(header.top)] : [])),
    ...posts.flatMap(({ at, built }) =>
      built.post.gates.flatMap((gate) => {
        const leaf = leaves.get(gate)
        return leaf?.height === undefined
          ? []
          : [ground.fence(at) + inMillimetres(leaf.ground) + inMillimetres(leaf.height)]
      }),
    ),
  ]
}

/** Each bay from its two posts' tops to the ground under the fence: raked or level, as the take-off has it. A brace bay has a slanting line. */
export function bayPanels({ bays }: BuiltFence, ground: Ground, point: DrawPoint): readonly Shape[] {
  return bays.flatMap(({ bay, from, to, top }): Shape[] => {
    if (top === undefined) return []
    const [topLeft, topRight] = [point(from, top.left), point(to, top.right)]
    const [right, left] = [point(to, ground.fence(to)), point(from, ground.fence(from))]
    return [
      {
        kind: 'polygon',
        points: [topLeft, topRight, right, left],
        fill: 'sheet',
        stroke: { ink: 'quiet', width: 0.8 },
      },
      ...(bay.brace
        ? [
            {
              kind: 'polyline' as const,
              points: [topLeft, right],
              stroke: { ink: 'quiet' as const, width: 0.8 },
            },
          ]
        : []),
    ]
  })
}

/** The leaves of a gate with a build-up, level over the higher ground, each with its brace; and the header over the posts. */
export function leafShapes(
  { leaves, posts }: BuiltFence,
  gates: readonly PlacedGate[],
  ground: Ground,
  point: DrawPoint,
): readonly Shape[] {
  return gates.flatMap((gate): Shape[] => {
    const leaf = leaves.get(gate.index)
    if (leaf?.height === undefined || leaf.width === undefined) return []
    const { from, to } = inFloats(gate)
    const wide = inMillimetres(leaf.width)
    const gap = (to - from - wide * leaf.leaves) / (leaf.leaves + 1)
    const bottom = Math.max(ground.fence(from), ground.fence(to)) + inMillimetres(leaf.ground)
    const top = bottom + inMillimetres(leaf.height)
    const each = Array.from({ length: leaf.leaves }, (_, index) => from + gap + index * (wide + gap))
    const jambs = posts.filter(({ built }) => built.post.gates.includes(gate.index))
    return [
      ...each.flatMap((at): Shape[] => [
        {
          kind: 'polygon',
          points: [point(at, top), point(at + wide, top), point(at + wide, bottom), point(at, bottom)],
          fill: 'sheet',
          stroke: { ink: 'ink', width: 1 },
        },
        {
          kind: 'polyline',
          points: [point(at, top), point(at + wide, bottom)],
          stroke: { ink: 'quiet', width: 0.8 },
        },
      ]),
      ...headerShape(leaf, jambs, point),
    ]
  })
}

function headerShape(
  {
    header,
  }: {
    readonly header:
      | {
          readonly top: Parameters<typeof inMillimetres>[0]
          readonly outside: Parameters<typeof inMillimetres>[0]
        }
      | undefined
  },
  jambs: readonly DrawnPost[],
  point: DrawPoint,
): Shape[] {
  const [left, right] = [jambs[0], jambs.at(-1)]
  if (header === undefined || left === undefined || right === undefined) return []
  const [top, high] = [inMillimetres(header.top), inMillimetres(header.outside)]
  const [from, to] = [left.at - left.width / 2, right.at + right.width / 2]
  return [
    {
      kind: 'polygon',
      points: [point(from, top), point(to, top), point(to, top - high), point(from, top - high)],
      fill: 'sheet',
      stroke: { ink: 'ink', width: 0.8 },
    },
  ]
}

/** Posts from the bottom of their holes to the top of the fence; what is below the ground is dashed. */
export function standingPosts(fence: BuiltFence, frame: Frame, point: DrawPoint): readonly Shape[] {
  const shown = postsTooClose(fence, frame)
    ? fence.posts.filter(({ built }) => built.post.kind !== 'line')
    : fence.posts
  return shown.flatMap(({ at, width, hole, ground, bottom, top }): Shape[] => {
    const half = Math.max(width * frame.unitsPerMillimetre, 1.6) / 2
    const upright = (from: number, to: number, reach: number): Point[] => {
      const [high, low] = [point(at, from), point(at, to)]
      return [
        { x: high.x - reach, y: high.y },
        { x: high.x + reach, y: high.y },
        { x: low.x + reach, y: low.y },
        { x: low.x - reach, y: low.y },
      ].map((corner) => heldInside(frame, corner))
    }
    const holeHalf = (hole * frame.unitsPerMillimetre) / 2
    return [
      ...(bottom < ground && holeHalf > 0
        ? [
            {
              kind: 'polygon' as const,
              points: upright(ground, bottom, Math.max(holeHalf, half + 0.8)),
              fill: 'sheet' as const,
              stroke: holeStroke,
            },
          ]
        : []),
      ...(bottom < ground
        ? [
            {
              kind: 'polygon' as const,
              points: upright(ground, bottom, half),
              stroke: { ink: 'quiet' as const, width: 0.6, dash: [1.5, 1.2] },
            },
          ]
        : []),
      ...(top !== undefined && top > ground
        ? [
            {
              kind: 'polygon' as const,
              points: upright(top, ground, half),
              fill: 'ink' as const,
            },
          ]
        : []),
    ]
  })
}

/** Under the ground: each post's number in its section, and how deep its hole is where that differs from the one before. */
export function footLabels(
  fence: BuiltFence,
  frame: Frame,
  words: DrawingWords,
  floor: number,
  point: DrawPoint,
  section: number | undefined,
): Part {
  const edges = { from: 0, to: frame.width }
  const numbers = labelRows(
    fence.posts.flatMap((post) => {
      const text = `${postNumber(fence, post.built, section)?.number ?? ''}`
      return text === ''
        ? []
        : [{ label: text, centre: frame.toX(post.at), width: textWidth(text, smallText) }]
    }),
    edges,
    1,
  )
  let before = ''
  const deep = fence.posts.flatMap((post) => {
    if (!(post.bottom < post.ground)) return []
    const text = words.length(post.built.piece.depth)
    if (text === before) return []
    before = text
    return [{ label: { text, post }, centre: frame.toX(post.at) + 4, width: textWidth(text, smallText) }]
  })
  const depths = labelRows(deep, edges, 3)
  const numbersBottom = floor + (numbers.rows > 0 ? rowHeight : 0)
  const text = (label: string, x: number, y: number, room: number, bold: boolean): Shape => ({
    kind: 'text',
    text: label,
    at: { x, y },
    anchor: 'middle',
    size: smallText,
    ...(bold ? { bold } : {}),
    ink: 'ink',
    room,
  })
  return {
    shapes: [
      ...numbers.placed.map(({ label, x, width }) => text(label, x, floor + 10, width, true)),
      ...depths.placed.flatMap(({ label, x, row, width, centre }) => [
        ...depthLine(label.post, frame, point, numbersBottom + 2 + row * rowHeight, centre),
        text(label.text, x, numbersBottom + 10 + row * rowHeight, width, false),
      ]),
    ],
    bottom: numbersBottom + depths.rows * rowHeight,
    leftOut: depths.leftOut,
  }
}

/** Beside the hole, from the ground to its bottom, and down to the figure. */
function depthLine(
  { at, hole, ground, bottom }: DrawnPost,
  frame: Frame,
  point: DrawPoint,
  foot: number,
  x: number,
): Shape[] {
  const side = Math.max((hole * frame.unitsPerMillimetre) / 2 + 3, x - frame.toX(at))
  const [top, low] = [point(at, ground), point(at, bottom)]
  const shift = ({ x: middle, y }: Point): Point => ({
    x: Math.max(1, Math.min(middle + side, frame.width - 1)),
    y,
  })
  const [from, to] = [shift(top), shift(low)]
  return [
    { kind: 'polyline', points: [from, to], stroke: { ink: 'ink', width: 0.6 } },
    obliqueTick({ x: Math.max(3, Math.min(from.x, frame.width - 3)), y: from.y }),
    obliqueTick({ x: Math.max(3, Math.min(to.x, frame.width - 3)), y: to.y }),
    {
      kind: 'polyline',
      points: [to, { x: to.x, y: foot }],
      stroke: { ink: 'quiet', width: 0.5, dash: [1, 2] },
    },
  ]
}
