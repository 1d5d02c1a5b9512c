import type { ProposalRefusal } from '../../../lib/core/agreement/proposalRefusal.ts'
import type { Fault } from '../../../lib/core/faults.ts'
import { pathOfPart } from '../../../lib/forms/parts.ts'
import type { NotebookDocument } from '../../../lib/forms/readNotebook.ts'
import { answerRefusals, proposalRefusalWords } from '../../../lib/words/proposalText.ts'
import { savingRefusals } from '../../../lib/words/savingText.ts'
import type { Fault as FieldFault } from '../../ui/draft/saveAnswer.ts'
import { itemTitles } from './itemTitles.ts'
import type { ProposalDraft } from './proposalDraft.ts'
import { fieldFault } from './savePart.ts'

/** A refusal as faults of the form that proposes: each at the field of the item that it is about. */
export function proposalFaults(
  document: NotebookDocument,
  draft: ProposalDraft,
  refusal: ProposalRefusal,
): FieldFault[] {
  const titleOf = itemTitles(document)
  const at = (id: string) => `items[${draft.items.findIndex((one) => one.id === id)}]`
  switch (refusal.kind) {
    case 'does not hold':
      return refusal.faults.map((fault) => faultInForm(document, draft, fault, at))
    case 'items gone':
      return refusal.items.map((id) => ({
        path: `${at(id)}.in`,
        message: answerRefusals.itemGone,
      }))
    case 'sources missing':
      return refusal.at.map(({ item, path }) => ({
        path: draft.manner === 'one' ? path : `${at(item)}.${path}`,
        message: savingRefusals.source,
      }))
    case 'no items':
      return [{ path: 'items', message: proposalRefusalWords(refusal, titleOf) }]
    case 'too long':
      return [{ path: 'text', message: proposalRefusalWords(refusal, titleOf) }]
    default:
      return [{ path: '', message: proposalRefusalWords(refusal, titleOf) }]
  }
}

function faultInForm(
  document: NotebookDocument,
  draft: ProposalDraft,
  fault: Fault,
  at: (id: string) => string,
): FieldFault {
  const item = draft.items.find(({ id }) => {
    const path = pathOfPart(document, { part: 'item', id })
    return path !== '' && fault.path.startsWith(path)
  })
  if (item === undefined) return { ...fieldFault(fault, ''), path: '' }
  const inside = fieldFault(fault, pathOfPart(document, { part: 'item', id: item.id }))
  if (!/^share(\.|$)/.test(inside.path)) return { ...inside, path: `${at(item.id)}.in` }
  return draft.manner === 'one' ? inside : { ...inside, path: `${at(item.id)}.${inside.path}` }
}
