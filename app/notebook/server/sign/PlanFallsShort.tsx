import { paymentPlanStanding } from '../../../../lib/core/ledger/paymentPlan.ts'
import { instalmentWords, planShortSentences } from '../../../../lib/words/instalmentText.ts'
import { householdName } from '../../../../lib/words/labels.ts'
import { ButtonLink } from '../../../ui/ButtonLink.tsx'
import { Panel } from '../../../ui/Panel.tsx'
import { draftSummary } from '../summaryOf.ts'
import { today } from '../today.ts'
import type { Signing } from './signingOf.ts'

/** Beside what is to be signed: that its payment plan has less than its household is still to bring in money. */
export function PlanFallsShort({ signing: { opened, differs, summary } }: { signing: Signing }) {
  const { notebook, statement, actual } = differs ? draftSummary(opened) : summary
  const standing = paymentPlanStanding(notebook, actual ?? statement, today())
  if (standing === undefined || standing.short === 0n) return null
  const names = { a: householdName(notebook, 'a'), b: householdName(notebook, 'b') }
  return (
    <Panel heading={instalmentWords.open} id="plan-falls-short">
      {planShortSentences(standing, names, notebook.currency).map((sentence) => (
        <p key={sentence}>{sentence}</p>
      ))}
      <p>{instalmentWords.bars}</p>
      <div className="button-row">
        <ButtonLink href={`/notebook/${opened.notebookId}/arrangements`}>{instalmentWords.change}</ButtonLink>
      </div>
    </Panel>
  )
}
