import type { TakeOff } from '../../../../lib/core/takeoff/takeOff.ts'
import type { DrawnPart, PartOf } from '../../../../lib/drawing/drawnPart.ts'

/** More posts than this are not looked at one by one: their section has a table of them. */
export const mostPostLooks = 200

/** The id of the look at a part, by its place in its list, counted from one. */
export function lookId(kind: PartOf['kind'], index: number): string {
  return `look-${kind}-${index + 1}`
}

/** Whether each post has a look of its own. */
export function postsOneByOne(found: TakeOff | undefined): boolean {
  return found !== undefined && found.posts.length <= mostPostLooks
}

/** Where a part of the drawing is opened on the page itself. */
export function lookAddresses(found: TakeOff | undefined): (part: DrawnPart) => string {
  return ({ of }) => {
    if (of.kind !== 'post' || postsOneByOne(found)) return `#${lookId(of.kind, of.index)}`
    return `#${lookId(of.item.list === 'sections' ? 'section' : 'gate', of.item.index)}`
  }
}
