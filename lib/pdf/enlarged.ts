import type { PageSize } from './pageSize.ts'

/** How much smaller one page may be printed so that all of it fits: at the last one the text is 7 points high. */
export const reductions = [1, 1.08, 1.16, 1.24, 1.32, 1.4] as const

/** A page that is printed `by` times smaller: the same margins on a larger sheet. */
export function enlarged({ width, height, left, top }: PageSize, by: number): PageSize {
  return {
    width: width * by,
    height: height * by,
    left,
    right: width * by - left,
    top,
    bottom: height * by - left,
  }
}
