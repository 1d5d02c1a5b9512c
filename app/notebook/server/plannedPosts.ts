import type { Notebook, Units } from '../../../lib/core/agreement/notebook.ts'
import type { Millimetres } from '../../../lib/core/amounts/length.ts'
import { offCentre, postsBySection } from '../../../lib/core/takeoff/measuredPosts.ts'
import type { TakeOff } from '../../../lib/core/takeoff/takeOff.ts'
import { postKindWords } from '../../../lib/words/labels.ts'
import { lengthWords, stationWords } from '../../../lib/words/length.ts'

/** One post of a section in words: what it is, where it is planned, where it stands. */
export type PostRow = {
  readonly kind: string
  readonly planned: string
  readonly stands: string
  /** Empty where it stands as planned. */
  readonly off: string
  /** Of its hole, as planned and as it is; empty where it has none. */
  readonly plannedDepth: string
  readonly depth: string
  readonly why: string
}

/** The posts of a section from its beginning, as the take-off lays them out. Empty where it has no build-up or no place. */
export function plannedPosts(notebook: Notebook, found: TakeOff, section: number): readonly PostRow[] {
  const { units } = notebook
  return (postsBySection(found.layout.posts).get(section) ?? []).flatMap((index) => {
    const built = found.posts[index]
    if (built === undefined) return []
    const { post, size } = built
    const off = offCentre(post)
    const deep = (depth: Millimetres) => (depth.over === 0n ? '' : lengthWords(depth, units))
    return [
      {
        kind: postKindWords[post.kind],
        planned: stationWords(post.planned, units),
        stands: stationWords(post.at, units),
        off: off.over === 0n ? '' : offWords(off, units),
        plannedDepth: deep(size.depth),
        depth: deep(post.measured?.depth ?? size.depth),
        why: post.measured?.why ?? '',
      },
    ]
  })
}

function offWords(off: Millimetres, units: Units): string {
  const size = off.over < 0n ? { over: -off.over, under: off.under } : off
  return `${lengthWords(size, units)} ${off.over < 0n ? 'nearer the start' : 'further along'}`
}
