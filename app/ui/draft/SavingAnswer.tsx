'use client'

import { ConflictChoice } from './ConflictChoice.tsx'
import { ErrorSummary } from './ErrorSummary.tsx'
import { type Done, formWords } from './formWords.ts'
import { MergeChoice } from './MergeChoice.tsx'
import { useAttention } from './useAttention.ts'
import type { useDraftState } from './useDraftState.ts'
import type { useSaving } from './useSaving.ts'

/** What was saved is about something that is gone: there is nothing to mend, and what was typed stays to be copied. */
function Gone({ text, form, attempt, done }: { text: string; form: string; attempt: number; done: Done }) {
  const box = useAttention(attempt)
  return (
    <section className="summary summary-faults" ref={box} tabIndex={-1} aria-labelledby={`${form}-gone`}>
      <h2 id={`${form}-gone`}>{formWords.goneTitle[done]}</h2>
      <p>{text}</p>
    </section>
  )
}

/** What an attempt to save came to, where somebody has to do something about it: above the fields. */
export function SavingAnswer({
  saving,
  state,
  form,
  done,
}: {
  saving: ReturnType<typeof useSaving>
  state: ReturnType<typeof useDraftState>
  form: string
  done: Done
}) {
  const { outcome, attempt } = saving
  switch (outcome.kind) {
    case 'faults':
      return state.faults.length === 0 ? null : (
        <ErrorSummary
          faults={state.faults}
          fields={state.fields.current}
          form={form}
          attempt={attempt}
          done={done}
        />
      )
    case 'conflict':
      return (
        <ConflictChoice
          conflict={outcome.conflict}
          removing={outcome.removing}
          waiting={saving.saving}
          attempt={attempt}
          onTakeTheirs={() => saving.takeTheirs(outcome.conflict)}
          onWriteOver={() => saving.writeOver(outcome.conflict, outcome.removing)}
        />
      )
    case 'choices':
      return (
        <MergeChoice
          conflict={outcome.conflict}
          merging={outcome.merging}
          form={form}
          waiting={saving.saving}
          attempt={attempt}
          onTakeTheirs={() => saving.takeTheirs(outcome.conflict)}
          onSave={(sides) => void saving.saveChosen(outcome.conflict, sides)}
        />
      )
    case 'gone':
      return <Gone text={outcome.text} form={form} attempt={attempt} done={done} />
    default:
      return null
  }
}
