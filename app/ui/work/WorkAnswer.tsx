'use client'

import { useInSight } from '../draft/useInSight.ts'
import { WorkProgress } from './WorkProgress.tsx'

/** How far work is, in words and as a part of one; absent while nothing is shown of it. */
export type WorkSoFar = { readonly said: string; readonly fraction: number | undefined } | undefined

/** What is said when work has ended. */
export type SaidAtEnd = { readonly text: string; readonly kind: 'done' | 'refused' }

/** Below what was pressed: how far the work is, with a way to stop it, and what is said at its end. */
export function WorkAnswer({
  label,
  progress,
  said,
  onStop,
}: {
  /** What is being made, for whoever hears the bar. */
  label: string
  progress: WorkSoFar
  said: SaidAtEnd | undefined
  onStop: () => void
}) {
  const end = useInSight<HTMLSpanElement>(said, said?.kind === 'refused')
  return (
    <>
      {progress === undefined ? null : (
        <WorkProgress label={label} said={progress.said} fraction={progress.fraction} onStop={onStop} />
      )}
      <span className="press-answer work-said" ref={end} role="status" data-kind={said?.kind ?? 'done'}>
        {said?.text ?? ''}
      </span>
    </>
  )
}
