import { removeAt, setAt } from './draftPath.ts'
import type { Merging } from './merging.ts'

export type Side = 'mine' | 'theirs'

/** The merged draft with one side's value at each place that both changed; mine where nothing was chosen. */
export function chosen(merging: Merging, sides: Readonly<Record<string, Side>>): unknown {
  return merging.clashes.reduce<unknown>(
    (draft, { path, theirValue }) =>
      sides[path] !== 'theirs'
        ? draft
        : theirValue === undefined
          ? removeAt(draft, path)
          : setAt(draft, path, theirValue),
    merging.draft,
  )
}
