'use server'

import { redirect } from 'next/navigation'
import { requireHousehold } from '../../../lib/access/whoAsks.ts'
import { idOfItemKey } from '../../../lib/core/agreement/agreedItems.ts'
import { currencyDigits } from '../../../lib/core/amounts/currency.ts'
import { firstSection, splitFirst } from '../../../lib/core/shares/firstSplit.ts'
import { readFirstSplit } from '../../../lib/forms/firstSplitDraft.ts'
import { addItem } from '../../../lib/forms/parts.ts'
import { isObject, type NotebookDocument } from '../../../lib/forms/readNotebook.ts'
import { itemKeysOnRecord } from '../../../lib/store/changes.ts'
import { faultTextIn } from '../../../lib/words/faultText.ts'
import { firstSectionNames } from '../../../lib/words/firstSplitText.ts'
import type { SaveAnswer } from '../../ui/draft/saveAnswer.ts'
import { readDraft, refusedDraft } from './readDraft.ts'
import { editDocument } from './savePart.ts'

/** Makes a section of the first split, and of a line without stations one that runs along it. */
export async function keepFirstSplit(notebookId: string, _base: string, draft: unknown): Promise<SaveAnswer> {
  const { household } = await requireHousehold(notebookId)
  const read = readDraft.safeParse(draft)
  if (!read.success) return refusedDraft
  const typed = readFirstSplit(read.data)
  const usedBefore = (await itemKeysOnRecord(notebookId)).flatMap((key) => idOfItemKey(key) ?? [])
  const answer = await editDocument(notebookId, household, (document) => {
    const currency = String(document.currency)
    const split = splitFirst(typed, currency, currencyDigits(currency) ?? 2)
    const units = document.units === 'metric' ? 'metric' : 'ft-in'
    if (!split.ok) {
      const faults = split.faults.map((fault) => ({ path: fault.path, message: faultTextIn(fault, units) }))
      return { faults }
    }
    const start = units === 'metric' ? '0 m' : '0 ft'
    const section = firstSection(typed, firstSectionNames, start)
    return { next: addItem(withEnds(document, start, typed.length), 'section', section, usedBefore).document }
  })
  if ('saved' in answer) redirect(`/notebook/${notebookId}`)
  return answer
}

function withEnds(document: NotebookDocument, start: string, end: string): NotebookDocument {
  const line = isObject(document.line) ? document.line : {}
  const stations = Array.isArray(line.stations) ? line.stations : []
  if (stations.length > 0) return document
  return { ...document, line: { ...line, stations: [{ at: start }, { at: end }] } }
}
