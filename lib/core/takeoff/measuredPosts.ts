import type { Notebook } from '../agreement/notebook.ts'
import { compareLengths, lengthOf, type Millimetres } from '../amounts/length.ts'
import { lowestTerms, subtractRatios } from './exact.ts'
import type { Found } from './finding.ts'
import { aboveZero, countOr } from './neededLength.ts'
import type { Post, PostLayout } from './postLayout.ts'

/**
 * Posts as they were measured on site: rock moves holes. What was measured goes before the plan as long as the posts stay
 * in their order; a measure that would pass a neighbour is found and left out, and so is one that was in order only with
 * another that is left out itself.
 */
export function withMeasuredPosts(notebook: Notebook, layout: PostLayout, found: Found): PostLayout {
  const posts: Post[] = [...layout.posts]
  const ofSection = postsBySection(layout.posts)
  const measured: Measured[] = []
  for (const [section, { measured: entries }] of notebook.sections.entries()) {
    for (const [entry, { post: number, at, depth, why }] of entries.entries()) {
      const path = `sections[${section}].measured[${entry}]`
      const own = ofSection.get(section) ?? []
      const index = own[countOr(number, 0) - 1]
      const post = index === undefined ? undefined : posts[index]
      if (index === undefined || post === undefined) {
        found(`${path}.post`, { kind: 'measured-unknown', post: number, posts: own.length })
        continue
      }
      if (post.measured !== undefined) {
        found(path, { kind: 'measured-twice', post: number, at: post.at })
        continue
      }
      const deep = aboveZero(depth, `${path}.depth`, found)
      posts[index] = {
        ...post,
        at: at === '' ? post.planned : lowestTerms(lengthOf(at)),
        measured: { path, why, ...(deep === undefined ? {} : { depth: deep }) },
      }
      if (at !== '') measured.push({ post: index, path, number })
    }
  }
  const inOrder: Measured[] = []
  for (const entry of measured.sort((left, right) => left.post - right.post)) {
    inOrder.push(entry)
    // Whatever is left out may have kept the one before it in order.
    for (
      let last = inOrder.at(-1);
      last !== undefined && !holdsOrder(posts, last, found);
      last = inOrder.at(-1)
    ) {
      inOrder.pop()
    }
  }
  return { ...layout, posts }
}

/** A place that was measured: of which post of the line, the field, and the number that the section knows it by. */
type Measured = { readonly post: number; readonly path: string; readonly number: string }

/** For each section the posts that its runs and its gates' jambs stand on, in order along the line. */
export function postsBySection(posts: readonly Post[]): ReadonlyMap<number, readonly number[]> {
  const bySection = new Map<number, number[]>()
  for (const [index, post] of posts.entries()) {
    for (const section of post.sections) {
      const own = bySection.get(section) ?? []
      own.push(index)
      bySection.set(section, own)
    }
  }
  return bySection
}

/** Whether a measured post stands between its neighbours as they stand; else it is found and put back where it was planned. */
function holdsOrder(posts: Post[], { post: index, path, number }: Measured, found: Found): boolean {
  const [before, post, after] = [posts[index - 1], posts[index], posts[index + 1]]
  if (post === undefined) return true
  const passes =
    (before !== undefined && compareLengths(before.at, post.at) >= 0) ||
    (after !== undefined && compareLengths(post.at, after.at) >= 0)
  if (!passes) return true
  found(`${path}.at`, {
    kind: 'measured-out-of-order',
    post: number,
    at: post.at,
    before: before?.at ?? post.planned,
    after: after?.at ?? post.planned,
  })
  posts[index] = { ...post, at: post.planned }
  return false
}

/** By how much a post stands off where it was planned: above zero further along the line. */
export function offCentre(post: Post): Millimetres {
  return lowestTerms(subtractRatios(post.at, post.planned))
}
