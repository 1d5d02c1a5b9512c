import { compareLengths, type Millimetres } from '../amounts/length.ts'
import { fromMillimetres } from './exact.ts'
import { chainLinkDepth, thirdOfHeight, twoFeetForSix } from './postEmbedment.ts'
import { millimetresPerFoot } from './unitFactors.ts'

/**
 * A depth that people dig without reckoning wind and soil; sources in `postEmbedment.ts`. It is no design, and what the
 * wind asks for is often far deeper.
 */
export type DepthRule = {
  readonly rule: 'chain link' | 'third of height' | 'two feet' | 'frost'
  readonly depth: Millimetres
  /** Whether the shallowest hole reaches it; undefined where no hole has a depth. */
  readonly reached: boolean | undefined
}

/**
 * @param height of the fence over the ground, in millimetres; undefined while it is not known
 * @param shallowest of the line posts, for the rules by height, and of all posts, for the frost
 */
export function depthRules(
  height: number | undefined,
  frost: Millimetres | undefined,
  shallowest: { readonly line: Millimetres | undefined; readonly all: Millimetres | undefined },
): readonly DepthRule[] {
  const rule = (name: DepthRule['rule'], depth: Millimetres, hole: Millimetres | undefined): DepthRule => ({
    rule: name,
    depth,
    reached: hole === undefined ? undefined : compareLengths(hole, depth) >= 0,
  })
  const byHeight = (name: DepthRule['rule'], found: { readonly feet: number } | undefined) =>
    found === undefined ? [] : [rule(name, fromMillimetres(found.feet * millimetresPerFoot), shallowest.line)]
  const feet = height === undefined ? undefined : height / millimetresPerFoot
  return [
    ...(feet === undefined
      ? []
      : [
          ...byHeight('two feet', twoFeetForSix(feet)),
          ...byHeight('third of height', thirdOfHeight(feet)),
          ...byHeight('chain link', chainLinkDepth(feet)),
        ]),
    ...(frost === undefined ? [] : [rule('frost', frost, shallowest.all)]),
  ]
}
