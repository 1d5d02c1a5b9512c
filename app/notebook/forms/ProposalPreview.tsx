'use client'

import { useState, useTransition } from 'react'
import { useDraft } from '../../ui/draft/draftContext.ts'
import { failureOf } from '../../ui/draft/failure.ts'
import { formWords } from '../../ui/draft/formWords.ts'
import { useInSight } from '../../ui/draft/useInSight.ts'
import { Panel } from '../../ui/Panel.tsx'

/** What a proposal would ask, in sentences; or why that can't be said. */
type PreviewAnswer = { readonly asks: readonly string[] } | { readonly refused: readonly string[] }
export type PreviewAction = (draft: unknown) => Promise<PreviewAnswer>

const previewFailures = {
  lost: formWords.pressLost,
  broke: formWords.pressBroke,
  outdated: formWords.pressOutdated,
} as const

/** Works out what the proposal in the form would ask, before it is sent. It says when the form has moved on since. */
export function ProposalPreview({ preview }: { preview: PreviewAction }) {
  const { draft, ready } = useDraft()
  const [shown, setShown] = useState<{ answer: PreviewAnswer; of: unknown }>()
  const [working, startWorking] = useTransition()
  const told = useInSight<HTMLDivElement>(working ? undefined : shown, shown !== undefined && !working)
  const ask = () =>
    startWorking(async () => {
      const of = draft
      try {
        const answer = await preview(of)
        startWorking(() => setShown({ answer, of }))
      } catch (error) {
        const refused = [previewFailures[failureOf(error)]]
        startWorking(() => setShown({ answer: { refused }, of }))
      }
    })
  return (
    <Panel heading="What it would ask">
      <div className="button-row">
        <button type="button" className="button button-plain" disabled={!ready || working} onClick={ask}>
          See what this would ask
        </button>
      </div>
      <div role="status" ref={told}>
        {working ? <p>{formWords.working}</p> : null}
        {shown === undefined || working ? null : (
          <>
            {shown.of === draft ? null : <p>You changed the form since; press again.</p>}
            <ul>
              {('asks' in shown.answer ? shown.answer.asks : shown.answer.refused).map((sentence) => (
                <li key={sentence}>{sentence}</li>
              ))}
            </ul>
          </>
        )}
      </div>
    </Panel>
  )
}
