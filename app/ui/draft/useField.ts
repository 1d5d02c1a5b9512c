'use client'

import { useEffect } from 'react'
import { useDraft } from './draftContext.ts'
import { getAt, setAt, textAt } from './draftPath.ts'
import { fieldId } from './fieldId.ts'

export type FieldHold = {
  id: string
  value: unknown
  /** The value as a text field shows it. */
  text: string
  put: (value: unknown) => void
  errors: readonly string[]
  /** Sentences to look at that refuse nothing. */
  findings: readonly string[]
  ready: boolean
}

/** One field's hold on the draft: its value, its faults and its id. */
export function useField(path: string): FieldHold {
  const { draft, change, faults, findings, register, form, ready } = useDraft()
  useEffect(() => register(path), [register, path])
  return {
    id: fieldId(form, path),
    value: getAt(draft, path),
    text: textAt(draft, path),
    put: (value) => change((old) => setAt(old, path, value)),
    errors: faults.filter((fault) => fault.path === path).map((fault) => fault.message),
    findings: findings.filter((finding) => finding.path === path).map((finding) => finding.message),
    ready,
  }
}
