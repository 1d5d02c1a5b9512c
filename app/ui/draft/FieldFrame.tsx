'use client'

import type { ReactNode } from 'react'
import { formWords } from './formWords.ts'

export type FieldWords = { label: ReactNode; hint?: ReactNode }

/** The ids of all that describes a field, for `aria-describedby`; undefined where nothing does. */
export function describedBy(
  id: string,
  has: { hint: boolean; errors: boolean; findings?: boolean; unit?: boolean; reading?: boolean },
): string | undefined {
  const ids = [
    has.hint ? `${id}-hint` : '',
    has.errors ? `${id}-error` : '',
    has.findings ? `${id}-finding` : '',
    has.unit ? `${id}-unit` : '',
    has.reading ? `${id}-reading` : '',
  ].filter((part) => part !== '')
  return ids.length === 0 ? undefined : ids.join(' ')
}

/** What to mend, after a lead; a fault that begins with what is needed leads itself. */
function FaultWords({ words }: { words: string }) {
  const needed = words.startsWith(formWords.needed)
  return (
    <>
      <strong>{needed ? formWords.needed : formWords.mend}</strong>{' '}
      {needed ? words.slice(formWords.needed.length).trimStart() : words}
    </>
  )
}

/** The hint, the faults and the findings of a field, with the ids that `describedBy` names. */
export function FieldNotes({
  id,
  hint,
  errors,
  findings = [],
}: {
  id: string
  hint?: ReactNode
  errors: readonly string[]
  findings?: readonly string[] | undefined
}) {
  return (
    <>
      {hint === undefined ? null : (
        <p className="field-hint" id={`${id}-hint`}>
          {hint}
        </p>
      )}
      {errors.length === 0 ? null : (
        <p className="field-error" id={`${id}-error`}>
          <FaultWords words={errors.join(' ')} />
        </p>
      )}
      {findings.length === 0 ? null : (
        <p className="field-finding" id={`${id}-finding`}>
          <strong>{formWords.lookAt}</strong> {findings.join(' ')}
        </p>
      )}
    </>
  )
}

/** Label, hint, faults and control of one field, always in this order. */
export function FieldFrame({
  id,
  label,
  hint,
  errors,
  findings = [],
  width = 'full',
  after,
  children,
}: FieldWords & {
  id: string
  errors: readonly string[]
  findings?: readonly string[] | undefined
  width?: 'full' | 'short' | undefined
  after?: ReactNode
  children: ReactNode
}) {
  return (
    <div
      className={`field field-${width}`}
      data-wrong={errors.length > 0 ? '' : undefined}
      data-found={findings.length > 0 ? '' : undefined}
    >
      <label className="field-label" htmlFor={id}>
        {label}
      </label>
      <FieldNotes id={id} hint={hint} errors={errors} findings={findings} />
      {children}
      {after}
    </div>
  )
}
