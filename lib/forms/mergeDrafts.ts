import { canonicalText } from '../core/agreement/canonicalText.ts'
import { mergeRows, type RowsMerge } from './mergeRows.ts'
import { isObject } from './readNotebook.ts'
import { tidyDraft } from './tidyDraft.ts'

/** A place that both sides changed, each in its own way. Missing there is `undefined`. */
export type Clash = { readonly path: string; readonly mine: unknown; readonly theirs: unknown }

export type MergedDraft = {
  /** What only one side changed as that side has it; at a clash what is mine. */
  readonly draft: unknown
  readonly clashes: readonly Clash[]
}

/**
 * Two drafts that were made from the same third: what only one side changed is taken over, what both changed alike
 * stands, and what both changed differently is a clash. A way of sharing and a row of a list are taken whole or not at
 * all, so that no figure of one side ends up beside a word of the other.
 */
export function mergeDrafts(opened: unknown, mine: unknown, theirs: unknown): MergedDraft {
  return merge('', '', opened, mine, theirs)
}

/** Whether two values at a key say the same; an empty text says the same as none. */
export function saysTheSame(key: string, one: unknown, other: unknown): boolean {
  return plain(key, one) === plain(key, other)
}

function plain(key: string, value: unknown): string {
  return canonicalText(tidyDraft({ [key]: value ?? '' }, undefined))
}

function merge(path: string, key: string, opened: unknown, mine: unknown, theirs: unknown): MergedDraft {
  if (saysTheSame(key, mine, theirs) || saysTheSame(key, opened, theirs)) return { draft: mine, clashes: [] }
  if (saysTheSame(key, opened, mine)) return { draft: theirs, clashes: [] }
  if (Array.isArray(mine) && Array.isArray(theirs)) {
    const rows = mergeRows(Array.isArray(opened) ? opened : [], mine, theirs, (row) => plain('row', row))
    return ofRows(path, mine, theirs, rows)
  }
  if (isObject(mine) && isObject(theirs) && !isWhole(key, mine) && !isWhole(key, theirs))
    return ofObject(path, isObject(opened) ? opened : {}, mine, theirs)
  return { draft: mine, clashes: [{ path, mine, theirs }] }
}

/** What makes sense only as a whole: a principle with its figures. */
function isWhole(key: string, value: Readonly<Record<string, unknown>>): boolean {
  return key === 'share' || 'principle' in value
}

function ofObject(
  path: string,
  opened: Readonly<Record<string, unknown>>,
  mine: Readonly<Record<string, unknown>>,
  theirs: Readonly<Record<string, unknown>>,
): MergedDraft {
  const keys = [...new Set([...Object.keys(mine), ...Object.keys(theirs)])]
  const parts = keys.map((key) => ({
    key,
    ...merge(path === '' ? key : `${path}.${key}`, key, opened[key], mine[key], theirs[key]),
  }))
  return {
    draft: Object.fromEntries(
      parts.flatMap(({ key, draft }) => (draft === undefined ? [] : [[key, draft] as const])),
    ),
    clashes: parts.flatMap(({ clashes }) => clashes),
  }
}

function ofRows(
  path: string,
  mine: readonly unknown[],
  theirs: readonly unknown[],
  rows: RowsMerge,
): MergedDraft {
  if (rows === 'apart') return { draft: mine, clashes: [{ path, mine, theirs }] }
  return {
    draft: rows.rows,
    clashes: rows.clashes.map((clash) => ({
      path: `${path}[${clash.at}]`,
      mine: clash.mine,
      theirs: clash.theirs,
    })),
  }
}
