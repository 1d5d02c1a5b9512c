import { redirect } from 'next/navigation'
import { z } from 'zod'
import { requireHousehold } from '../../../lib/access/whoAsks.ts'
import { itemKey } from '../../../lib/core/agreement/agreedItems.ts'
import type { Household } from '../../../lib/core/people/household.ts'
import { conversionsIn } from '../../../lib/forms/conversions.ts'
import type { NotebookDocument } from '../../../lib/forms/readNotebook.ts'
import { fingerprintOf } from '../../../lib/store/fingerprint.ts'
import { conversionRefusals } from '../../../lib/words/hoursText.ts'
import { pressRefusals } from '../../../lib/words/pressText.ts'
import type { PressAnswer } from '../../ui/draft/PressForm.tsx'
import { pressFields } from './pressFields.ts'
import { editDocument } from './savePart.ts'

const pressSchema = z.object({
  index: z
    .string()
    .regex(/^[0-9]{1,9}$/)
    .transform(Number),
  fingerprint: z.string().regex(/^[0-9a-f]{64}$/),
})

/** One press on a conversion, by who asks, on the one that its form was made for. */
export async function pressConversion(
  notebookId: string,
  form: FormData,
  step: 'agreed' | 'withdrawn',
  change: (
    document: NotebookDocument,
    index: number,
    household: Household,
    isMeant: (conversion: unknown) => boolean,
  ) => NotebookDocument | undefined,
): Promise<PressAnswer> {
  const { household } = await requireHousehold(notebookId)
  const read = pressSchema.safeParse(pressFields(form))
  if (!read.success) return { refused: pressRefusals.unreadable }
  const { index, fingerprint } = read.data
  const answer = await editDocument(
    notebookId,
    household,
    (document) => {
      const next = change(document, index, household, (one) => fingerprintOf(one) === fingerprint)
      if (next === undefined) return { gone: true, message: conversionRefusals.gone }
      return { next, record: recorded(step, conversionsIn(document)[index] ?? {}) }
    },
    'also while closed',
  )
  if ('saved' in answer) redirect(`/notebook/${notebookId}/work`)
  return { refused: 'gone' in answer ? answer.message : conversionRefusals.gone }
}

/** What goes on record: the step, and what the conversion says, so that it is still told once it was taken back. */
export function recorded(step: string, conversion: Readonly<Record<string, unknown>>) {
  const { to, item, hours, rate, why } = conversion
  return {
    kind: 'books' as const,
    itemKey: itemKey(String(item ?? '')),
    detail: { books: 'conversion', step, to, hours, rate, ...(why === undefined ? {} : { why }) },
  }
}

export function today(): string {
  return new Date().toISOString().slice(0, 10)
}
