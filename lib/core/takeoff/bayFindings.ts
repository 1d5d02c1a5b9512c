import { compareLengths } from '../amounts/length.ts'
import { lowestTerms, subtractRatios } from './exact.ts'
import type { FenceTops } from './fenceTops.ts'
import type { Found } from './finding.ts'
import type { PostLayout } from './postLayout.ts'
import { placeKey } from './runEdges.ts'

/** What measured posts do to the plan: a bay wider than the largest spacing, an opening that a post stands in. */
export function bayFindings(layout: PostLayout, { bays }: FenceTops, found: Found): void {
  for (const bay of bays) {
    const spacing = layout.runs[bay.run]?.spacing
    const [left, right] = [layout.posts[bay.left], layout.posts[bay.right]]
    const moved = left?.measured ?? right?.measured
    if (!spacing || !left || !moved || compareLengths(bay.length, spacing) <= 0) continue
    found(`${moved.path}.at`, { kind: 'bay-too-wide', bay: bay.length, spacing, at: left.at })
  }
  const indexOf = new Map(layout.posts.map((post, index) => [placeKey(post.planned), index]))
  for (const jamb of layout.jambs) {
    const [left, right] = [jamb.left, jamb.right].map((at) => layout.posts[indexOf.get(placeKey(at)) ?? -1])
    if (!left || !right || (!left.measured && !right.measured)) continue
    const opening = subtractRatios(jamb.gate.to, jamb.gate.from)
    // By how much the posts' centres came closer, the opening is narrower.
    const planned = subtractRatios(jamb.right, jamb.left)
    const change = subtractRatios(subtractRatios(right.at, left.at), planned)
    if (change.over >= 0n) continue
    const path = (left.measured ?? right.measured)?.path ?? ''
    found(`${path}.at`, {
      kind: 'opening-narrowed',
      opening: lowestTerms(opening),
      left: lowestTerms(subtractRatios(opening, { over: -change.over, under: change.under })),
    })
  }
}
