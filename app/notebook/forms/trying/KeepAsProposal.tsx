'use client'

import { useRouter } from 'next/navigation'
import { useId, useState, useTransition } from 'react'
import type { Notebook } from '../../../../lib/core/agreement/notebook.ts'
import { placesOf } from '../../../../lib/core/shares/itemShares.ts'
import type { Tried } from '../../../../lib/core/trying/tried.ts'
import { itemTitle } from '../../../../lib/words/itemWords.ts'
import { tryWords } from '../../../../lib/words/tryText.ts'
import { failureOf } from '../../../ui/draft/failure.ts'
import { formWords } from '../../../ui/draft/formWords.ts'
import { useInSight } from '../../../ui/draft/useInSight.ts'
import { useReady } from '../../../ui/draft/useReady.ts'
import { Panel } from '../../../ui/Panel.tsx'

/** Answers with a refusal, or with where the proposal is to be seen. */
export type KeepTried = (
  tried: Tried,
  text: string,
) => Promise<{ readonly refused: string } | { readonly made: string }>

/** Sends what was tried as a proposal to the other household. */
export function KeepAsProposal({
  tried,
  changed,
  plan,
  possible,
  keep,
  onKept,
}: {
  tried: Tried
  /** Ids of the items that are other than planned. */
  changed: readonly string[]
  plan: Notebook
  /** Whether the tried plan can be shared. */
  possible: boolean
  keep: KeepTried
  onKept: () => void
}) {
  const id = useId()
  const router = useRouter()
  const ready = useReady()
  const [text, setText] = useState('')
  const [answer, setAnswer] = useState({ refused: '' })
  const said = useInSight<HTMLParagraphElement>(answer, answer.refused !== '')
  const [sending, startSending] = useTransition()
  const titles = placesOf(plan)
    .filter(({ item }) => changed.includes(item.id))
    .map(({ item, kind }) => itemTitle({ kind, name: item.name, key: `item:${item.id}` }))

  function send() {
    startSending(async () => {
      try {
        const answer = await keep(tried, text)
        if ('made' in answer) {
          onKept()
          router.push(answer.made)
        } else startSending(() => setAnswer(answer))
      } catch (error) {
        const text = formWords[failureOf(error)]('saved')
        startSending(() => setAnswer({ refused: text }))
      }
    })
  }
  return (
    <div className="on-screen-only">
      <Panel heading={tryWords.propose}>
        <p>{tryWords.proposeHint}</p>
        {titles.length === 0 ? null : (
          <p>
            {tryWords.onlyItems} {titles.join(', ')}.
          </p>
        )}
        <div className="field">
          <label className="field-label" htmlFor={id}>
            {tryWords.proposeWhy}
          </label>
          <textarea id={id} value={text} maxLength={2000} onChange={(event) => setText(event.target.value)} />
        </div>
        <button
          type="button"
          className="button button-main"
          disabled={!ready || sending || changed.length === 0 || !possible}
          onClick={send}
        >
          {tryWords.propose}
        </button>
        <p className="press-answer" ref={said} role="status" data-kind="refused">
          {answer.refused}
        </p>
      </Panel>
    </div>
  )
}
