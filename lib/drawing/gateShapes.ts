import type { PlacedGate } from '../core/boundary/placedLine.ts'
import type { Point, Shape } from './drawing.ts'
import { inFloats } from './fenceRuns.ts'
import type { Frame } from './frame.ts'
import { postShape } from './signs.ts'

/** The opening, and the leaf with its swing where the notebook says which way. Hinges on the left: it does not say where. */
export function gateShapes(
  gate: PlacedGate,
  frame: Frame,
  onFence: (place: number) => Point,
  landDepth: number,
  leaves = 1,
) {
  const { from, to } = inFloats(gate)
  const [hinge, latch] = [onFence(from), onFence(to)]
  const radius = ((to - from) * frame.unitsPerMillimetre) / leaves
  if (radius === 0) return { shapes: [postShape(hinge)], whole: true }
  const closed: Shape = {
    kind: 'polyline',
    points: [hinge, latch],
    stroke: { ink: 'ink', width: 0.8, dash: [2, 2] },
  }
  if (radius + 14 > landDepth) return { shapes: [closed], whole: gate.toward.length === 0 }
  const swings = gate.toward.flatMap((household): Shape[] => {
    const up = household === 'a'
    return leaves === 2
      ? [...swing(hinge, radius, up), ...swingFromRight(latch, radius, up)]
      : swing(hinge, radius, up)
  })
  return { shapes: [closed, ...swings], whole: true }
}

function swing(hinge: Point, radius: number, up: boolean): Shape[] {
  return [
    {
      kind: 'polyline',
      points: [hinge, { x: hinge.x, y: hinge.y + (up ? -radius : radius) }],
      stroke: { ink: 'ink', width: 1.4 },
    },
    {
      kind: 'arc',
      centre: hinge,
      radius,
      from: up ? -Math.PI / 2 : 0,
      to: up ? 0 : Math.PI / 2,
      stroke: { ink: 'ink', width: 0.8 },
    },
  ]
}

/** The second of two leaves. */
function swingFromRight(hinge: Point, radius: number, up: boolean): Shape[] {
  return [
    {
      kind: 'polyline',
      points: [hinge, { x: hinge.x, y: hinge.y + (up ? -radius : radius) }],
      stroke: { ink: 'ink', width: 1.4 },
    },
    {
      kind: 'arc',
      centre: hinge,
      radius,
      from: up ? -Math.PI : Math.PI / 2,
      to: up ? -Math.PI / 2 : Math.PI,
      stroke: { ink: 'ink', width: 0.8 },
    },
  ]
}
