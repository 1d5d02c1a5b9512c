'use client'

import { useState } from 'react'
import type { RowMove } from './draftContext.ts'
import { useDraft } from './draftContext.ts'
import { getAt, insertAt, listAt, moveAt, removeAt } from './draftPath.ts'

export type RemovedRow = { row: unknown; index: number; key: number }

/** Keys that stay with their rows while these move, so that an open fold or a nested list moves along. */
function useRowKeys(count: number) {
  const [keys, setKeys] = useState<readonly number[]>(() => Array.from({ length: count }, (_, at) => at))
  const [next, setNext] = useState(count)
  // The list changed from outside: another version was loaded.
  if (keys.length !== count) {
    setKeys(Array.from({ length: count }, (_, at) => next + at))
    setNext(next + count)
  }
  const fresh = () => {
    setNext(next + 1)
    return next
  }
  return { keys, setKeys, fresh }
}

/** The rows of the list at a path, and all that can be done with them. */
export function useRows(path: string) {
  const { draft, change } = useDraft()
  const rows = listAt(draft, path)
  const { keys, setKeys, fresh } = useRowKeys(rows.length)
  // Last in, first back: so every place is right again when its row returns.
  const [taken, setTaken] = useState<readonly RemovedRow[]>([])
  const removed = taken.at(-1) ?? null

  function rearrange(next: (draft: unknown) => unknown, nextKeys: readonly number[], newIndex: RowMove) {
    change(next, { path, newIndex })
    setKeys(nextKeys)
  }
  const putIn = (row: unknown, index: number, key: number) =>
    rearrange(
      (old) => insertAt(old, path, index, row),
      keys.toSpliced(index, 0, key),
      (at) => (at >= index ? at + 1 : at),
    )

  return {
    rows,
    keys,
    /** The one that was removed last and is not back. */
    removed,
    add: (row: unknown) => putIn(row, rows.length, fresh()),
    remove: (index: number) => {
      const row = { row: getAt(draft, `${path}[${index}]`), index, key: keys[index] ?? fresh() }
      setTaken([...taken, row])
      rearrange(
        (old) => removeAt(old, `${path}[${index}]`),
        keys.toSpliced(index, 1),
        (at) => (at === index ? undefined : at > index ? at - 1 : at),
      )
    },
    undo: () => {
      if (removed === null) return -1
      const index = Math.min(removed.index, rows.length)
      putIn(removed.row, index, removed.key)
      setTaken(taken.slice(0, -1))
      return index
    },
    move: (from: number, to: number) =>
      rearrange(
        (old) => moveAt(old, path, from, to),
        keys.toSpliced(from, 1).toSpliced(to, 0, keys[from] ?? 0),
        (at) => (at === from ? to : from < at && at <= to ? at - 1 : to <= at && at < from ? at + 1 : at),
      ),
  }
}
