'use client'

import { useState } from 'react'
import { formWords } from './formWords.ts'

/** What waited in this browser and stands in the form again. */
export type Restored = { readonly at: number; readonly sent: boolean }

/** Says that what was typed earlier stands in the form again, and offers what is saved instead, and back. */
export function RestoredNotice({
  restored,
  onPutBack,
}: {
  restored: Restored
  /** Puts what is saved on the page and gives how to undo that. */
  onPutBack: () => () => void
}) {
  const [undo, setUndo] = useState<() => void>()
  const when = new Intl.DateTimeFormat('en-GB', { dateStyle: 'long', timeStyle: 'short' }).format(restored.at)
  return (
    <section className="summary restored-draft" role="status">
      {undo === undefined ? (
        <p>
          {formWords.restored(when)} {restored.sent ? formWords.restoredSent : ''}
        </p>
      ) : (
        <p>{formWords.putBackDone}</p>
      )}
      <div className="button-row">
        <button
          type="button"
          className="button button-plain"
          onClick={() => {
            if (undo !== undefined) undo()
            const back = undo === undefined ? onPutBack() : undefined
            setUndo(() => back)
          }}
        >
          {undo === undefined ? formWords.putBackSaved : formWords.putBackUndo}
        </button>
      </div>
    </section>
  )
}
