'use client'

import type { ComponentProps } from 'react'
import { lengthReading } from '../../../lib/words/length.ts'
import { DraftForm } from '../../ui/draft/DraftForm.tsx'
import { LengthReading } from '../../ui/draft/LengthReading.tsx'

/** A draft form whose lengths are read back below their fields as the notebook understands them. */
export function NotebookForm(props: ComponentProps<typeof DraftForm>) {
  return (
    <LengthReading readLength={lengthReading}>
      <DraftForm {...props} />
    </LengthReading>
  )
}
