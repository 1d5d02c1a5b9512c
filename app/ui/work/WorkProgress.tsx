'use client'

import { quartersOf, workWords } from '../../../lib/words/workText.ts'

/** How far long work is: a bar, a sentence, and a way to stop it. Aloud it is told at every quarter, not at every percent. */
export function WorkProgress({
  label,
  said,
  fraction,
  onStop,
}: {
  /** What the bar shows, for those who hear the page. */
  label: string
  /** Where it stands, in a sentence. */
  said: string
  /** From 0 to 1; undefined where nobody can tell how much there is to do. */
  fraction: number | undefined
  /** Without it nothing can be stopped any more. */
  onStop?: (() => void) | undefined
}) {
  return (
    <div className="work">
      <progress className="upload-progress" max={1} value={fraction} aria-label={label} />
      <p className="upload-standing">{said}</p>
      <p className="only-read-out" role="status">
        {fraction === undefined ? said : workWords.quarter(quartersOf(fraction))}
      </p>
      {onStop === undefined ? null : (
        <button type="button" className="button button-plain" onClick={onStop}>
          {workWords.stop}
        </button>
      )}
    </div>
  )
}
