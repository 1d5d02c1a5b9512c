/**
 * A drawn signature as SVG path data: `M` and `L` with whole numbers in a box of 600 × 200, and nothing else, so that
 * it can be checked by its letters alone. Drawn with a round cap, a stroke of one point is a dot.
 */
export const strokeBox = { width: 600, height: 200 } as const
/** The longest path that is kept, in characters; beyond it points are left out, evenly. */
export const longestStrokePath = 20_000

export type StrokePoint = { x: number; y: number }
export type Stroke = readonly StrokePoint[]

const clamp = (value: number, most: number) => Math.min(most, Math.max(0, Math.round(value)))

/** Whole points inside the box, without one that repeats the point before it. */
function settled(stroke: Stroke): StrokePoint[] {
  const points: StrokePoint[] = []
  for (const point of stroke) {
    const next = { x: clamp(point.x, strokeBox.width), y: clamp(point.y, strokeBox.height) }
    const last = points.at(-1)
    if (last === undefined || last.x !== next.x || last.y !== next.y) points.push(next)
  }
  return points
}

function written(points: readonly StrokePoint[]): string {
  const [first, ...rest] = points
  if (first === undefined) return ''
  const tail = rest.length === 0 ? [first] : rest
  return `M${first.x} ${first.y}${tail.map((point) => `L${point.x} ${point.y}`).join('')}`
}

/** Every `step`-th point of a stroke, its first and last always. */
function thinned(points: readonly StrokePoint[], step: number): readonly StrokePoint[] {
  return points.filter((_, at) => at % step === 0 || at === points.length - 1)
}

/** The path of strokes given in box units; at most `longestStrokePath` characters, '' for no strokes. */
export function strokePathOf(strokes: readonly Stroke[]): string {
  const drawn = strokes.map(settled).filter((points) => points.length > 0)
  const longest = Math.max(1, ...drawn.map((points) => points.length))
  for (let step = 1; step <= longest; step += 1) {
    const path = drawn.map((points) => written(thinned(points, step))).join('')
    if (path.length <= longestStrokePath) return path
  }
  // So many strokes that even their ends are too much: the first ones that fit.
  let path = ''
  for (const points of drawn) {
    const next = path + written(thinned(points, longest))
    if (next.length > longestStrokePath) break
    path = next
  }
  return path
}

/** The strokes of a path that `strokePathOf` wrote; null for any other text, also for strokes that leave the box. */
export function strokesOf(path: string): readonly Stroke[] | null {
  if (path.length > longestStrokePath || !/^(M\d{1,3} \d{1,3}(L\d{1,3} \d{1,3})+)*$/.test(path)) return null
  const strokes = path
    .split('M')
    .slice(1)
    .map((stroke) =>
      stroke.split('L').map((pair) => {
        const [x = 0, y = 0] = pair.split(' ').map(Number)
        return { x, y }
      }),
    )
  const inside = strokes.flat().every(({ x, y }) => x <= strokeBox.width && y <= strokeBox.height)
  return inside ? strokes : null
}
