import type { Station } from '../agreement/notebook.ts'
import { lengthOf, type Millimetres } from '../amounts/length.ts'
import { asNumber } from './exact.ts'

/** A point seen from above, in millimetres: x along the line's first stretch, y to the left of it, where household a's land lies. */
export type PlanPoint = { readonly x: number; readonly y: number }

/** The line as it runs over the ground, with its turns; floats, for drawing and for areas by coordinates. */
export type PlanPath = {
  /** The point of the line at a distance along it. */
  readonly pointAt: (at: Millimetres) => PlanPoint
  /** The point beside it: above zero on household a's land. */
  readonly beside: (at: Millimetres, setback: Millimetres) => PlanPoint
}

type Leg = { readonly at: number; readonly from: PlanPoint; readonly direction: number }

/** Straight from turn to turn; a turn toward household a goes to the left. Before the first turn along x. */
export function planPath(stations: readonly Station[]): PlanPath {
  const legs: Leg[] = [{ at: 0, from: { x: 0, y: 0 }, direction: 0 }]
  const turns = stations
    .flatMap(({ at, angle }) => {
      const degrees = Number(angle?.degrees || '0')
      if (at === '' || angle === undefined || degrees === 0 || degrees >= 180) return []
      return [
        { at: asNumber(lengthOf(at)), turn: ((angle.toward === 'b' ? -1 : 1) * degrees * Math.PI) / 180 },
      ]
    })
    .sort((left, right) => left.at - right.at)
  for (const { at, turn } of turns) {
    const last = legs.at(-1)
    if (last) legs.push({ at, from: alongLeg(last, at), direction: last.direction + turn })
  }
  const legAt = (at: number): Leg => {
    const after = legs.findIndex((leg) => leg.at > at)
    return (
      legs[after < 0 ? legs.length - 1 : Math.max(0, after - 1)] ?? {
        at: 0,
        from: { x: 0, y: 0 },
        direction: 0,
      }
    )
  }
  return {
    pointAt: (at) => alongLeg(legAt(asNumber(at)), asNumber(at)),
    beside: (at, setback) => {
      const leg = legAt(asNumber(at))
      const { x, y } = alongLeg(leg, asNumber(at))
      const off = asNumber(setback)
      return { x: x - off * Math.sin(leg.direction), y: y + off * Math.cos(leg.direction) }
    },
  }
}

function alongLeg({ at, from, direction }: Leg, to: number): PlanPoint {
  return { x: from.x + (to - at) * Math.cos(direction), y: from.y + (to - at) * Math.sin(direction) }
}

/** Area of a polygon by its corners (the shoelace formula), in the square of their unit; above zero counter-clockwise. */
export function polygonArea(corners: readonly PlanPoint[]): number {
  return (
    corners.reduce((sum, corner, index) => {
      const next = corners[(index + 1) % corners.length] ?? corner
      return sum + corner.x * next.y - next.x * corner.y
    }, 0) / 2
  )
}
