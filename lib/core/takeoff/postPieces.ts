import { compareLengths, type Millimetres } from '../amounts/length.ts'
import { halved, lowestTerms, nothing, subtractRatios } from './exact.ts'
import type { FenceTops } from './fenceTops.ts'
import type { Found } from './finding.ts'
import type { GateLeaf } from './gateLeaf.ts'
import type { Ground } from './ground.ts'
import { lengthOrNothing } from './neededLength.ts'
import type { PostLayout } from './postLayout.ts'
import type { PostSize } from './postSize.ts'

/** One post as it is cut; elevations above the stations' datum, all exact. */
export type PostPiece = {
  /** Ground of each household and under the fence. */
  readonly ground: { readonly a: Millimetres; readonly b: Millimetres; readonly fence: Millimetres }
  readonly depth: Millimetres
  readonly deduction: Millimetres
  readonly top: Millimetres | undefined
  /** Top less the hole's bottom less the deduction; undefined while no height is agreed, or where nothing would be left. */
  readonly length: Millimetres | undefined
}

/** Post piece = top elevation − elevation of the hole's bottom − deduction; the hole is dug from the ground under the fence. */
export function postPieces(
  layout: PostLayout,
  sizes: readonly PostSize[],
  tops: FenceTops,
  leaves: readonly GateLeaf[],
  ground: Ground,
  found: Found,
): readonly PostPiece[] {
  const headers = new Map(
    leaves.flatMap(({ gate, header }) => (header ? [[gate, header.outside] as const] : [])),
  )
  const deductions = new Map<PostSize, Millimetres>()
  return layout.posts.map((post, index) => {
    const size = sizes[index]
    const at = { a: ground.of('a', post.at), b: ground.of('b', post.at), fence: ground.fence(post.at) }
    const depth = post.measured?.depth ?? size?.depth ?? nothing
    const top = tops.postTops[index]
    const header = post.gates.map((gate) => headers.get(gate)).find((outside) => outside !== undefined)
    let deduction = size && (header ? headerDeduction(size, header) : deductions.get(size))
    if (size && deduction === undefined) {
      deduction = deductionOf(size, found)
      deductions.set(size, deduction)
    }
    const whole = { ground: at, depth, deduction: deduction ?? nothing, top }
    if (top === undefined) return { ...whole, length: undefined }
    const bottom = subtractRatios(at.fence, depth)
    const length = lowestTerms(subtractRatios(subtractRatios(top, bottom), whole.deduction))
    if (length.over > 0n) return { ...whole, length }
    found(`${post.item.list}[${post.item.index}]`, { kind: 'post-too-short', at: post.at })
    return { ...whole, length: undefined }
  })
}

/**
 * Under a saddle the post's tips reach the rail's middle line, so at least half the rail is taken off; under a rail on a
 * flat top the whole of it. What is typed goes before that, and is found where a saddle can't have it.
 */
function deductionOf(size: PostSize, found: Found): Millimetres {
  if (size.deduction === '') return ruleDeduction(size.top, size.rail)
  const typed = lengthOrNothing(size.deduction)
  const least = halved(size.rail)
  const outside = compareLengths(typed, least) < 0 || compareLengths(typed, size.rail) > 0
  if (size.top === 'saddle' && size.rail.over > 0n && outside)
    found(deductionPath(size), { kind: 'deduction-outside', deduction: typed, least, most: size.rail })
  return typed
}

/** A deduction is typed once, with the line posts. */
function deductionPath({ path }: PostSize): string {
  return `${path.slice(0, path.lastIndexOf('.'))}.posts.deduction`
}

function ruleDeduction(top: PostSize['top'], rail: Millimetres): Millimetres {
  return top === 'saddle' ? lowestTerms(halved(rail)) : top === 'flat' ? rail : nothing
}

function headerDeduction(size: PostSize, header: Millimetres): Millimetres {
  const sameTube = compareLengths(size.rail, header) === 0
  return sameTube && size.deduction !== '' ? lengthOrNothing(size.deduction) : ruleDeduction(size.top, header)
}
