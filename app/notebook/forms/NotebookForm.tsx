'use client'

import type { ComponentProps } from 'react'
import { lengthReading } from '../../../lib/words/length.ts'
import { DraftForm } from '../../ui/draft/DraftForm.tsx'
import { LengthReading } from '../../ui/draft/LengthReading.tsx'
import type { MergeSaved } from '../../ui/draft/merging.ts'
import { useKnownNames } from './KnownNames.tsx'

/** A draft form whose lengths are read back below their fields as the notebook understands them. */
export function NotebookForm(props: ComponentProps<typeof DraftForm>) {
  const names = useKnownNames()
  // Fetched only when two households saved the same part: no page has to carry it.
  const mergeSaved: MergeSaved = async (opened, mine, theirs) =>
    (await import('./mergeWithWords.ts')).mergeWithWords(opened, mine, theirs, names)
  return (
    <LengthReading readLength={lengthReading}>
      <DraftForm merge={mergeSaved} {...props} />
    </LengthReading>
  )
}
