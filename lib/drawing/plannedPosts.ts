import type { PlacedLine } from '../core/boundary/placedLine.ts'
import type { BuiltFence } from './builtFence.ts'
import type { Point, Shape } from './drawing.ts'
import type { DrawnMore } from './drawnMore.ts'
import { postPlaces } from './fenceRuns.ts'
import type { Frame } from './frame.ts'
import { postSign } from './postSigns.ts'
import { postShape } from './signs.ts'

/** Signs nearer to one another than this can't be told apart. */
const nearestSigns = 3.4

/**
 * Posts from above. Where a build-up lays them out they are the take-off's; elsewhere only the ends of sections and the
 * sides of openings have one for certain.
 */
export function plannedPosts(
  placed: PlacedLine,
  frame: Frame,
  onFence: (place: number) => Point,
  { fence, cutSections }: Pick<DrawnMore, 'fence' | 'cutSections'>,
): { readonly shapes: readonly Shape[]; readonly tooClose: number } {
  const certain = certainPlaces(cutSections ? { ...placed, sections: [] } : placed, fence).map((at) =>
    postShape(onFence(at)),
  )
  if (fence === undefined) return { shapes: certain, tooClose: 0 }
  const close = postsTooClose(fence, frame)
  const shown = close ? fence.posts.filter(({ built }) => built.post.kind !== 'line') : fence.posts
  return {
    shapes: [...certain, ...shown.flatMap(({ at, built }) => postSign(built.post.kind, onFence(at)))],
    tooClose: fence.posts.length - shown.length,
  }
}

/** Whether line posts would run into one another, on average. */
export function postsTooClose({ posts }: BuiltFence, frame: Frame): boolean {
  const [first, last] = [posts[0], posts.at(-1)]
  if (first === undefined || last === undefined || posts.length < 2) return false
  return ((last.at - first.at) * frame.unitsPerMillimetre) / (posts.length - 1) < nearestSigns
}

/** Where posts stand for certain without a build-up, less those that a build-up next to them has. */
export function certainPlaces(placed: PlacedLine, fence: BuiltFence | undefined): readonly number[] {
  if (fence === undefined) return postPlaces(placed)
  const places = postPlaces({
    ...placed,
    sections: placed.sections.filter(({ index }) => !fence.sections.has(index)),
    gates: placed.gates.filter(({ index }) => !fence.gates.has(index)),
  })
  return places.filter((place) => fence.posts.every(({ at }) => Math.abs(at - place) > 1))
}
