import type { MeasuredFrom } from '../core/agreement/notebook.ts'
import { type Profile, valueAt } from './profile.ts'

/** Ground heights as the stations say them; empty where none does. */
export type Grades = { readonly a: Profile; readonly b: Profile; readonly fence: Profile }

/** The ground at a place along the line, in millimetres over the common level. */
export type Ground = {
  readonly of: (side: 'a' | 'b', at: number) => number
  readonly fence: (at: number) => number
  readonly measured: (from: MeasuredFrom, at: number) => number
}

/** Where one side's ground is not said, the other's stands in for it; the fence stands between the two. */
export function groundOf(grades: Grades): Ground {
  const known = (first: Profile, second: Profile, third: Profile) =>
    [first, second, third].find((profile) => profile.length > 0) ?? []
  const a = known(grades.a, grades.fence, grades.b)
  const b = known(grades.b, grades.fence, grades.a)
  const of = (side: 'a' | 'b', at: number) => valueAt(side === 'a' ? a : b, at)
  return {
    of,
    fence: (at) => (grades.fence.length > 0 ? valueAt(grades.fence, at) : (of('a', at) + of('b', at)) / 2),
    measured: (from, at) => {
      if (from === 'a' || from === 'b') return of(from, at)
      return from === 'lower' ? Math.min(of('a', at), of('b', at)) : Math.max(of('a', at), of('b', at))
    },
  }
}
