/** Length along a slope: √(run² + rise²), in the unit of both. A raked rail has this length, a stepped one its run. */
export function slopeLength(run: number, rise: number): number {
  return Math.hypot(run, rise)
}

/** How steep, in degrees from level; negative downhill. */
export function slopeDegrees(run: number, rise: number): number {
  return (Math.atan2(rise, run) * 180) / Math.PI
}
