'use server'

import { redirect } from 'next/navigation'
import { requireHousehold } from '../../../lib/access/whoAsks.ts'
import * as stored from '../../../lib/forms/conversions.ts'
import { kindOf } from '../../../lib/forms/parts.ts'
import { conversionRefusals } from '../../../lib/words/hoursText.ts'
import type { PressAnswer } from '../../ui/draft/PressForm.tsx'
import type { SaveAnswer } from '../../ui/draft/saveAnswer.ts'
import { booksPlan, signedBefore } from './booksPlan.ts'
import { conversionFaults } from './conversionLimit.ts'
import { pressConversion, recorded, today } from './conversionPress.ts'
import { readDraft, refusedDraft } from './readDraft.ts'
import { editDocument } from './savePart.ts'
import { typedText } from './typedText.ts'

/** Asks to give money in the place of hours, or hours in the place of money. It counts once the other has marked it. */
export async function askConversion(notebookId: string, _base: string, draft: unknown): Promise<SaveAnswer> {
  const { household } = await requireHousehold(notebookId)
  const read = readDraft.safeParse(draft)
  if (!read.success) return refusedDraft
  const asked = {
    to: read.data.to,
    item: typedText(read.data.item),
    hours: typedText(read.data.hours),
    rate: typedText(read.data.rate),
    why: typedText(read.data.why),
  }
  const { signed } = await signedBefore(notebookId)
  const answer = await editDocument(
    notebookId,
    household,
    (document) => {
      if (kindOf(document, asked.item) === undefined)
        return { faults: [{ path: 'item', message: conversionRefusals.noSuchItem }] }
      const faults = conversionFaults(booksPlan(document, signed).notebook, household, asked)
      if (faults.length > 0) return { faults: [...faults] }
      const prefix = stored.conversionPath(document)
      const next = stored.addConversion(document, asked, household, today())
      return { next, prefix, record: recorded('asked', asked) }
    },
    'also while closed',
  )
  if ('saved' in answer) redirect(`/notebook/${notebookId}/work`)
  return answer
}

/** The other household's mark: from now on the conversion counts. */
export async function agreeToConversion(
  notebookId: string,
  _previous: PressAnswer,
  form: FormData,
): Promise<PressAnswer> {
  return pressConversion(notebookId, form, 'agreed', (document, index, household, isMeant) =>
    stored.markConversion(document, index, household, today(), isMeant),
  )
}

/** Takes a conversion back that the other household has not marked yet. */
export async function withdrawConversion(
  notebookId: string,
  _previous: PressAnswer,
  form: FormData,
): Promise<PressAnswer> {
  return pressConversion(notebookId, form, 'withdrawn', stored.withdrawConversion)
}
