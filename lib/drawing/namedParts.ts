import type { StatusLook } from '../core/agreement/itemStatus.ts'
import { inMillimetres } from '../core/amounts/length.ts'
import type { PlacedLine } from '../core/boundary/placedLine.ts'
import { postNumber } from './builtFence.ts'
import type { DrawingWords } from './drawingWords.ts'
import type { DrawnMore } from './drawnMore.ts'
import { type Box, type DrawnPart, leastTarget, targetBox } from './drawnPart.ts'
import type { Elevation } from './elevationShapes.ts'
import { inFloats } from './fenceRuns.ts'
import type { Frame } from './frame.ts'
import type { Plan } from './planShapes.ts'

/** More posts than this on one drawing are neither named nor opened one by one. */
const mostNamed = 400

/** Sections, gates, posts and stations with their boxes in plan and in elevation. */
export function namedParts(
  placed: PlacedLine,
  frame: Frame,
  words: DrawingWords,
  more: DrawnMore,
  plan: Plan,
  elevation: Elevation,
): readonly DrawnPart[] {
  const box = (left: number, right: number, top: number, bottom: number) =>
    targetBox(left, right, top, bottom, frame.width)
  const standing = (name: string, look: StatusLook | undefined) =>
    look ? `${name}, ${words.standing[look]}` : name
  const { bracket, bottom } = plan.land
  // A section is opened by its bracket too, so that its gates never cover all of it.
  const sections = uncovered(
    placed.sections.map((section) => {
      const { from, to } = inFloats(section)
      const [left, right] = [frame.toX(from), frame.toX(to)]
      return {
        of: { kind: 'section' as const, index: section.index },
        name: standing(words.sectionName(section.index), more.standings?.sections[section.index]),
        boxes: [box(left, right, bracket - 18, bottom), box(left, right, elevation.top, elevation.bottom)],
      }
    }),
  )
  const gates = uncovered(
    placed.gates.map((gate) => {
      const { from, to } = inFloats(gate)
      const [left, right] = [frame.toX(from), frame.toX(to)]
      return {
        of: { kind: 'gate' as const, index: gate.index },
        name: standing(words.gateName(gate.index), more.standings?.gates[gate.index]),
        boxes: [box(left, right, bracket + 4, bottom), box(left, right, elevation.top, elevation.bottom)],
      }
    }),
  )
  const stationPlaces = placed.stations.map(({ at }) => frame.toX(inMillimetres(at)))
  const stations = placed.stations.map(({ index }, place): DrawnPart => {
    const x = stationPlaces[place] ?? 0
    return {
      of: { kind: 'station', index },
      name: words.stationName(index),
      boxes: isFree(stationPlaces, place)
        ? [box(x, x, plan.land.bottom + 2, Math.max(plan.land.labels, plan.land.bottom + 2 + leastTarget))]
        : [],
    }
  })
  return [...sections, ...gates, ...posts(frame, words, more, elevation), ...stations]
}

function posts(
  frame: Frame,
  words: DrawingWords,
  { fence, section }: DrawnMore,
  elevation: Elevation,
): readonly DrawnPart[] {
  if (fence === undefined || fence.posts.length > mostNamed) return []
  const places = fence.posts.map(({ at }) => frame.toX(at))
  return fence.posts.map((post, place): DrawnPart => {
    const x = places[place] ?? 0
    const { index, post: laid } = post.built
    const top = elevation.toY(post.top ?? post.ground)
    return {
      of: { kind: 'post', index, item: laid.item },
      name: words.postName(post, postNumber(fence, post.built, section)),
      boxes: isFree(places, place) ? [targetBox(x, x, top, elevation.toY(post.bottom), frame.width)] : [],
    }
  })
}

/** Parts whose boxes would lie on those of one before keep their names alone. */
function uncovered(parts: readonly DrawnPart[]): readonly DrawnPart[] {
  const taken: Box[] = []
  return parts.map((part) => {
    const [box] = part.boxes
    if (box === undefined) return part
    const covers = taken.some(
      (other) => box.x < other.x + other.width - 0.5 && other.x < box.x + box.width - 0.5,
    )
    if (covers) return { ...part, boxes: [] }
    taken.push(box)
    return part
  })
}

/** Whether a finger finds the place without touching its neighbours. */
function isFree(places: readonly number[], place: number): boolean {
  const x = places[place]
  if (x === undefined) return false
  return places.every((other, index) => index === place || Math.abs(other - x) >= leastTarget)
}
