'use client'

import { formWords } from './formWords.ts'
import type { Conflict } from './saveAnswer.ts'
import { useAttention } from './useAttention.ts'

/** Two versions of the same thing, row by row where they differ, and the choice between them. */
export function ConflictChoice({
  conflict,
  removing,
  waiting,
  attempt,
  onTakeTheirs,
  onWriteOver,
}: {
  conflict: Conflict
  removing: boolean
  waiting: boolean
  attempt: number
  onTakeTheirs: () => void
  onWriteOver: () => void
}) {
  const box = useAttention(attempt)
  const { words } = conflict
  const rows = conflict.rows.filter((row) => row.yours !== row.theirs)
  return (
    <section className="summary summary-conflict" ref={box} tabIndex={-1} aria-labelledby="conflict-title">
      <h2 id="conflict-title">{words?.title ?? formWords.conflictTitle}</h2>
      <p>{words?.lead ?? leadOf(conflict)}</p>
      {rows.length === 0 ? (
        <p>{formWords.conflictSame}</p>
      ) : (
        <dl className="conflict-rows">
          {rows.map((row, at) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: labels may repeat and the order is fixed
            <div className="conflict-row" key={at}>
              <dt>{row.label}</dt>
              <dd>
                <span className="conflict-whose">
                  {words?.theirs ?? (conflict.own ? formWords.otherWindow : formWords.theirs)}
                </span>{' '}
                <span className="conflict-text">{row.theirs === '' ? '(nothing)' : row.theirs}</span>
              </dd>
              {removing ? null : (
                <dd>
                  <span className="conflict-whose">
                    {words?.yours ?? (conflict.own ? formWords.here : formWords.yours)}
                  </span>{' '}
                  <span className="conflict-text">{row.yours === '' ? '(nothing)' : row.yours}</span>
                </dd>
              )}
            </div>
          ))}
        </dl>
      )}
      <div className="button-row">
        <button type="button" className="button button-main" disabled={waiting} onClick={onTakeTheirs}>
          {words?.takeTheirs ?? (conflict.own ? formWords.keepSaved : formWords.keepTheirs)}
        </button>
        <button type="button" className="button button-plain" disabled={waiting} onClick={onWriteOver}>
          {removing ? formWords.removeMine : (words?.writeOver ?? formWords.saveMine)}
        </button>
      </div>
    </section>
  )
}

function leadOf({ own, by, when }: Conflict): string {
  return own ? `${formWords.ownLead(when)} ${formWords.ownConflict}` : formWords.conflictLead(by, when)
}
