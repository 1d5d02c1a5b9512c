import type { Notebook } from '../../../lib/core/agreement/notebook.ts'
import { distanceBetween } from '../../../lib/core/shares/distance.ts'
import { type NotebookDocument, readDocument } from '../../../lib/forms/readNotebook.ts'
import type { ProposedItem } from '../../../lib/store/proposals.ts'
import { askSentences } from '../../../lib/words/distanceText.ts'
import { faultText } from '../../../lib/words/faultText.ts'
import { proposalRefusalWords } from '../../../lib/words/proposalText.ts'
import { faultTexts } from '../../../lib/words/shareFaultText.ts'
import { shareNames } from '../../../lib/words/shareText.ts'
import { itemTitles } from './itemTitles.ts'
import { isFitting, proposedNow } from './proposedNow.ts'
import { proposalRefusal, proposedPlan } from './proposedPlan.ts'

/** What a proposal would ask, in sentences; or why that can't be said. */
export type Preview = { readonly asks: readonly string[] } | { readonly refused: readonly string[] }

export function previewOf(
  document: NotebookDocument,
  items: readonly ProposedItem[],
  caps: Notebook['caps'],
): Preview {
  const titleOf = itemTitles(document)
  const refusal = proposalRefusal(document, items, caps)
  if (refusal?.kind === 'does not hold') return { refused: refusal.faults.map(faultText) }
  if (refusal !== undefined) return { refused: [proposalRefusalWords(refusal, titleOf)] }
  const fitting = items.map((item) => proposedNow(document, item)).filter(isFitting)
  const [now, plan] = [readDocument(document), proposedPlan(document, fitting, caps)]
  if (!now.ok || !plan.ok) return { refused: [] }
  const distance = distanceBetween({ ...now.value.notebook, caps }, plan.value.inForce)
  if (!distance.ok) return { refused: faultTexts(now.value.notebook, distance.faults) }
  return { asks: askSentences(distance.value, titleOf, shareNames(now.value.notebook)) }
}
