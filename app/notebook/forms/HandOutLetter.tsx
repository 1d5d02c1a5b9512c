'use client'

import { useEffect, useRef, useState } from 'react'
import { workWords } from '../../../lib/words/workText.ts'
import { CopyField } from '../../ui/draft/CopyField.tsx'
import { CopyText } from '../../ui/draft/CopyText.tsx'
import { type PressAction, PressForm } from '../../ui/draft/PressForm.tsx'
import { usePaper } from '../../ui/work/usePaper.ts'
import { WorkAnswer } from '../../ui/work/WorkAnswer.tsx'
import type { HandedOut } from '../server/letterActions.ts'

/**
 * Makes a new invitation with its letter, and shows both once. The PDF is asked for with the token in the
 * body, since the token is stored nowhere.
 */
export function HandOutLetter({
  make,
  paper,
  confirm,
}: {
  make: () => Promise<HandedOut | { refused: string }>
  /** The address that makes the PDF. */
  paper: string
  /** Asked first where an earlier invitation ends by it. */
  confirm?: string | undefined
}) {
  const [made, setMade] = useState<HandedOut>()
  const shown = useRef<HTMLDivElement>(null)
  useEffect(() => {
    if (made) shown.current?.focus()
  }, [made])
  const press: PressAction = async () => {
    const answer = await make()
    if ('refused' in answer) return { refused: answer.refused }
    setMade(answer)
    return { done: 'The letter is ready, with a new invitation. Take it now.' }
  }
  return (
    <>
      <PressForm
        action={press}
        label="Make a new invitation and the letter"
        weight="main"
        confirm={confirm}
      />
      {made === undefined ? null : (
        <div className="made-link handed-out" ref={shown} tabIndex={-1}>
          <LetterPaper paper={paper} token={made.token} />
          <CopyField
            label="Invitation, works once"
            value={made.address}
            hint="It stands in the letter too, as text and as a square code. It is not shown again."
          />
          <CopyText label="Letter as text" value={made.text} copyLabel="Copy the text" />
        </div>
      )}
    </>
  )
}

/** The PDF, asked for without leaving the page: the invitation would not be shown again. */
function LetterPaper({ paper, token }: { paper: string; token: string }) {
  const { progress, said, make, stop } = usePaper((signal) =>
    fetch(paper, { method: 'POST', body: new URLSearchParams({ token }), signal }),
  )
  return (
    <div className="button-row">
      <button
        type="button"
        className="button button-main"
        aria-disabled={progress === undefined ? undefined : true}
        onClick={make}
      >
        Letter with this invitation (PDF)
      </button>
      <WorkAnswer label={workWords.paper.label} progress={progress} said={said} onStop={stop} />
    </div>
  )
}
