'use client'

import type { MouseEvent } from 'react'
import type { ButtonWeight } from '../ButtonLink.tsx'
import { useInSight } from '../draft/useInSight.ts'
import { WorkProgress } from './WorkProgress.tsx'

/** What a link says when its work has ended. */
export type SaidAtEnd = { readonly text: string; readonly kind: 'done' | 'refused' }

/**
 * A link to a file that is made when it is asked for: with script `onPress` does it, with how far it is, a way to stop it,
 * and what is said at its end; without, and where it is opened elsewhere, the link itself saves the file.
 */
export function LinkAtWork({
  href,
  weight = 'plain',
  label,
  progress,
  said,
  onPress,
  onStop,
  children,
}: {
  href: string
  weight?: ButtonWeight | undefined
  /** What is being made, for whoever hears the bar. */
  label: string
  /** How far it is, in words and as a part of one; absent while nothing is shown of it. */
  progress: { readonly said: string; readonly fraction: number | undefined } | undefined
  said: SaidAtEnd | undefined
  onPress: () => void
  onStop: () => void
  children: string
}) {
  const end = useInSight<HTMLSpanElement>(said, said?.kind === 'refused')
  function press(event: MouseEvent<HTMLAnchorElement>) {
    if (event.ctrlKey || event.metaKey || event.shiftKey) return
    event.preventDefault()
    onPress()
  }
  return (
    <>
      <a
        className={`button button-${weight}`}
        href={href}
        download
        aria-disabled={progress === undefined ? undefined : true}
        onClick={press}
      >
        {children}
      </a>
      {progress === undefined ? null : (
        <WorkProgress label={label} said={progress.said} fraction={progress.fraction} onStop={onStop} />
      )}
      <span className="press-answer work-said" ref={end} role="status" data-kind={said?.kind ?? 'done'}>
        {said?.text ?? ''}
      </span>
    </>
  )
}
