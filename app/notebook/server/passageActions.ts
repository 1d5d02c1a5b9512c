'use server'

import { redirect } from 'next/navigation'
import { z } from 'zod'
import { requireHousehold } from '../../../lib/access/whoAsks.ts'
import { isNumber } from '../../../lib/core/amounts/typedNumber.ts'
import { afterCount, afterTaking } from '../../../lib/core/shares/passages.ts'
import { withPassages } from '../../../lib/forms/gatePassages.ts'
import { readPart } from '../../../lib/forms/parts.ts'
import { type NotebookDocument, readDocument } from '../../../lib/forms/readNotebook.ts'
import { readCount } from '../../../lib/forms/saidApart.ts'
import { fingerprintOf } from '../../../lib/store/fingerprint.ts'
import { findNotebook } from '../../../lib/store/notebooks.ts'
import { countPassages } from '../../../lib/store/passageRounds.ts'
import { faultText } from '../../../lib/words/faultText.ts'
import { countFaults, countKept } from '../../../lib/words/passageText.ts'
import { pressRefusals } from '../../../lib/words/pressText.ts'
import type { PressAnswer } from '../../ui/draft/PressForm.tsx'
import type { SaveAnswer } from '../../ui/draft/saveAnswer.ts'
import { closedByNumber } from './closed.ts'
import { pressFields } from './pressFields.ts'
import { readDraft, refusedDraft } from './readDraft.ts'
import { changeOfStored, editDocument } from './savePart.ts'
import { typedText } from './typedText.ts'

const idSchema = z.string().min(1).max(200_000)
const households = z.enum(['a', 'b'])

/**
 * Keeps a household's count of both households' passages. The other household sees it once it has counted too; then the
 * gate says what both counted alike, or both counts side by side.
 */
export async function countThePassages(
  notebookId: string,
  gateId: string,
  _base: string,
  draft: unknown,
): Promise<SaveAnswer> {
  const { household } = await requireHousehold(notebookId)
  const read = z.object({ gateId: idSchema, draft: readDraft }).safeParse({ gateId, draft })
  if (!read.success) return refusedDraft
  const closed = await closedByNumber(notebookId)
  if (closed !== undefined) return { faults: [{ path: '', message: pressRefusals.closed(closed) }] }
  const count = { a: typedText(read.data.draft.a), b: typedText(read.data.draft.b) }
  const faults = (['a', 'b'] as const).flatMap((path) => numberFault(path, count[path]))
  if (faults.length > 0) return { faults }
  const id = read.data.gateId
  const known = await findNotebook(notebookId)
  if (known === undefined || gateIn(JSON.parse(known.document), id) === undefined)
    return { gone: true, message: countFaults.gateGone }
  return countPassages<SaveAnswer>({
    notebookId,
    household,
    gateId: id,
    content: JSON.stringify(count),
    at: new Date(),
    decide: (stored, { a, b }) => {
      const edit = changeOfStored((document) => {
        const gate = gateIn(document, id)
        if (gate === undefined) return { gone: true, message: countFaults.gateGone }
        const counted = { ...(a ? { a: readCount(a) } : {}), ...(b ? { b: readCount(b) } : {}) }
        const after = afterCount(gate, counted)
        return { next: after === gate ? document : withPassages(document, id, after) }
      })(stored)
      const kept: SaveAnswer = { saved: true, base: 'new', note: countKept }
      // A count that leaves the gate as it is for now is kept all the same.
      const leavesIt = 'refused' in edit && 'saved' in edit.refused
      if (leavesIt) return { document: stored, changed: [], kept }
      return 'refused' in edit ? edit : { ...edit, kept }
    },
  })
}

const takeSchema = z.object({
  id: idSchema,
  count: households,
  fingerprint: z.string().regex(/^[0-9a-f]{64}$/),
})

/** Takes one of two counts that differ, for the household that asks. Once both take the same one, it is settled. */
export async function takeCount(
  notebookId: string,
  _previous: PressAnswer,
  form: FormData,
): Promise<PressAnswer> {
  const { household } = await requireHousehold(notebookId)
  const read = takeSchema.safeParse(pressFields(form))
  if (!read.success) return { refused: pressRefusals.unreadable }
  const { id, count, fingerprint } = read.data
  const answer = await editDocument(notebookId, household, (document) => {
    const gate = gateIn(document, id)
    if (gate === undefined) return { gone: true, message: countFaults.gateGone }
    const meant = fingerprintOf(readPart(document, { part: 'item', id }) ?? {}) === fingerprint
    const after = meant ? afterTaking(gate, household, count) : undefined
    if (after === undefined) return { gone: true, message: countFaults.changed }
    return { next: withPassages(document, id, after) }
  })
  if ('saved' in answer) redirect(`/notebook/${notebookId}/item/${encodeURIComponent(id)}`)
  if ('gone' in answer) return { refused: answer.message }
  return { refused: 'faults' in answer ? answer.faults.map(({ message }) => message).join(' ') : '' }
}

function gateIn(document: NotebookDocument, id: string) {
  const read = readDocument(document)
  return read.ok ? read.value.notebook.gates.find((gate) => gate.id === id) : undefined
}

function numberFault(path: 'a' | 'b', typed: string) {
  if (typed === '') return [{ path, message: countFaults.needed }]
  if (isNumber(typed, 6)) return []
  return [{ path, message: faultText({ kind: 'number-form', found: typed, fractionDigits: 6 }) }]
}
