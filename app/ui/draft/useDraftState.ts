'use client'

import { useCallback, useMemo, useRef, useState } from 'react'
import type { DraftHold } from './draftContext.ts'
import { moveRowFaults } from './rowFaults.ts'
import type { Fault } from './saveAnswer.ts'

/** A version of the draft and the base it builds on. */
export type Version = { draft: unknown; base: string }

/**
 * The draft being edited, the last version known to be saved, and the faults found in it. A newer saved version that
 * arrives from the server is taken over only while nothing is unsaved: what was typed is never overwritten.
 */
export function useDraftState(arriving: Version, arrivingFindings: readonly Fault[]) {
  const [draft, setDraft] = useState<unknown>(arriving.draft)
  const [kept, setKept] = useState<Version>(arriving)
  const [seenBase, setSeenBase] = useState(arriving.base)
  const [faults, setFaults] = useState<readonly Fault[]>([])
  const [findings, setFindings] = useState(arrivingFindings)
  const [seenFindings, setSeenFindings] = useState(arrivingFindings)
  const fields = useRef(new Set<string>())

  const unsaved = useMemo(() => JSON.stringify(draft) !== JSON.stringify(kept.draft), [draft, kept.draft])

  if (arriving.base !== seenBase) {
    setSeenBase(arriving.base)
    if (!unsaved) {
      setDraft(arriving.draft)
      setKept(arriving)
    }
  }

  if (
    arrivingFindings !== seenFindings &&
    JSON.stringify(arrivingFindings) !== JSON.stringify(seenFindings)
  ) {
    setSeenFindings(arrivingFindings)
    setFindings(arrivingFindings)
  }

  const change = useCallback<DraftHold['change']>((next, rows) => {
    setDraft(next)
    if (rows === undefined) return
    setFaults((old) => moveRowFaults(old, rows.path, rows.newIndex))
    setFindings((old) => moveRowFaults(old, rows.path, rows.newIndex))
  }, [])
  const register = useCallback<DraftHold['register']>((path) => {
    fields.current.add(path)
    return () => fields.current.delete(path)
  }, [])
  /** Makes a version the one that is saved; with `load` it also replaces what is on the page. */
  const keep = useCallback((version: Version, load: boolean) => {
    setKept(version)
    if (load) setDraft(version.draft)
    setFaults([])
  }, [])

  /** Puts a draft on the page that builds on a version. */
  const load = useCallback((next: unknown, version: Version) => {
    setDraft(next)
    setKept(version)
    setFaults([])
  }, [])

  return {
    draft,
    kept,
    base: kept.base,
    unsaved,
    faults,
    findings,
    setFaults,
    fields,
    change,
    register,
    keep,
    load,
  }
}
