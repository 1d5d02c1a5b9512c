/** Steel's linear expansion per °C (EN 1993-1-1, from memory). */
export const steelExpansion = 12e-6

/** Aluminium's linear expansion per °C (EN 1999-1-1, from memory). */
export const aluminiumExpansion = 23e-6

/** A difference of temperature: 100 °F is 55.6 °C. */
export function celsiusRange(fahrenheitRange: number): number {
  return (fahrenheitRange * 5) / 9
}

/** How much a rail's length changes over a range of temperatures, in the unit of `length`. */
export function heatMovement(length: number, celsius: number, expansion = steelExpansion): number {
  return length * expansion * celsius
}

/**
 * How many slip joints a welded run needs so that each takes no more than it can: none where both ends together can take
 * the run's whole movement.
 *
 * @param movement of the whole run
 * @param takenAtEnds what gaps at the run's ends take together, same unit
 * @param takenPerJoint what one joint takes, same unit, more than zero
 */
export function slipJointsNeeded(movement: number, takenAtEnds: number, takenPerJoint: number): number {
  return Math.max(0, Math.ceil(((movement - takenAtEnds) / takenPerJoint) * (1 - 1e-12)))
}
