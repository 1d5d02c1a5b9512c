/**
 * How far a tube's end is cut back where it meets another at a right angle and is cut to a saddle. All sizes are of one
 * unit of length, whichever, and so are the answers.
 */
export type SaddleJoint = {
  /** The tube that is cut: outside diameter, or inside where the inner edge of the wall is to fit. */
  readonly branchDiameter: number
  /** The tube that it sits on. */
  readonly headerDiameter: number
}

/**
 * The cut-back at one place around the branch, from the saddle's tips: R − √(R² − r²·sin²θ), by the intersection of two
 * cylinders. Undefined where the branch is wider than the header, which it then does not sit on.
 *
 * @param degrees around the branch, 0 at a tip's foot (no cut-back) and 90 where it is deepest
 */
export function saddleDrop(joint: SaddleJoint, degrees: number): number | undefined {
  const header = joint.headerDiameter / 2
  const across = (joint.branchDiameter / 2) * Math.sin((degrees * Math.PI) / 180)
  if (!(joint.branchDiameter > 0) || !(joint.branchDiameter <= joint.headerDiameter)) return undefined
  return header - Math.sqrt(Math.max(0, header * header - across * across))
}

/** How deep the saddle is, from tips to valley: half the diameter for tubes of one size. Undefined like `saddleDrop`. */
export function saddleDepth(joint: SaddleJoint): number | undefined {
  return saddleDrop(joint, 90)
}

/**
 * Where two straight cuts at 45° stand in for a saddle of equal tubes, the widest gap they leave: (√2 − 1) radii, at 45°
 * around the tube.
 */
export function mitredSaddleGap(diameter: number): number {
  return (diameter / 2) * (Math.SQRT2 - 1)
}

/** The angle off square, in degrees, of each cut where a tube turns by `turnDegrees` (0 straight on, below 180). */
export function mitreAngle(turnDegrees: number): number {
  return turnDegrees / 2
}

/** How much longer a mitred tube is on its outer side than on its inner: width · tan(turn/2). Same unit as `width`. */
export function mitreOffset(width: number, turnDegrees: number): number {
  return width * Math.tan((mitreAngle(turnDegrees) * Math.PI) / 180)
}
