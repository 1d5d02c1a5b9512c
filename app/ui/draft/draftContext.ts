'use client'

import { createContext, useContext } from 'react'
import type { Fault } from './saveAnswer.ts'

export type DraftHold = {
  draft: unknown
  /** The version that is known to be saved. */
  saved: unknown
  /** Changes the draft; `rows` says where the rows of a list went, so that faults stay with their rows. */
  change: (next: (draft: unknown) => unknown, rows?: { path: string; newIndex: RowMove }) => void
  faults: readonly Fault[]
  /** What the saved version was found to clash with or to lack, as sentences. They refuse nothing. */
  findings: readonly Fault[]
  /** Says that a field for the path is on the page; the answer takes it off again. */
  register: (path: string) => () => void
  /** Begins every field's id. */
  form: string
  /** False until the page has come to life: what is typed before that would be lost, so fields wait. */
  ready: boolean
}

export type RowMove = (index: number) => number | undefined

export const DraftContext = createContext<DraftHold | null>(null)

/** The draft around a field. Throws outside `DraftForm`. */
export function useDraft(): DraftHold {
  const hold = useContext(DraftContext)
  if (hold === null) throw new Error('This field stands outside a DraftForm')
  return hold
}
