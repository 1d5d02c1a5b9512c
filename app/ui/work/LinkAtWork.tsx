'use client'

import type { MouseEvent } from 'react'
import type { ButtonWeight } from '../ButtonLink.tsx'
import { type SaidAtEnd, WorkAnswer, type WorkSoFar } from './WorkAnswer.tsx'

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
  progress: WorkSoFar
  said: SaidAtEnd | undefined
  onPress: () => void
  onStop: () => void
  children: string
}) {
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
      <WorkAnswer label={label} progress={progress} said={said} onStop={onStop} />
    </>
  )
}
