'use client'

import { ChoiceField } from '../../ui/draft/ChoiceField.tsx'
import { DateField } from '../../ui/draft/DateField.tsx'
import { useDraft } from '../../ui/draft/draftContext.ts'
import { listAt } from '../../ui/draft/draftPath.ts'
import { FieldLine } from '../../ui/draft/FieldLine.tsx'
import { Fold } from '../../ui/draft/Fold.tsx'
import { LengthField } from '../../ui/draft/LengthField.tsx'
import { RowsField } from '../../ui/draft/RowsField.tsx'
import { TextField } from '../../ui/draft/TextField.tsx'
import { type FormNames, groundChoices } from './partWords.ts'

/** Limits on height that somebody named. The program knows no law. */
export function LimitFields({ names }: { names: FormNames }) {
  const { draft } = useDraft()
  const limits = listAt(draft, 'line.limits') as readonly { limit?: unknown }[]
  const said = limits.flatMap(({ limit }) => (typeof limit === 'string' && limit !== '' ? [limit] : []))
  return (
    <Fold
      label="Limits on height"
      about={
        limits.length === 0
          ? 'Here you note a limit that somebody named. The heights are then held against it.'
          : said.join(', ') || `${limits.length} without a figure yet`
      }
      paths={['line.limits']}
    >
      <RowsField
        path="line.limits"
        label="Limits that somebody named"
        hint="This program knows no rules. Ask the local permit office, and write down who said what, and when."
        rowLabel={(row) => String((row as { limit?: unknown } | null)?.limit ?? '')}
        empty={{ from: '', to: '', limit: '', measuredFrom: '', saidBy: '', on: '' }}
        addLabel="Add a limit"
        beginWith="limit"
      >
        {(row) => (
          <>
            <FieldLine>
              <LengthField path={`${row}.limit`} label="No higher than" />
              <ChoiceField
                path={`${row}.measuredFrom`}
                label="Measured from the ground of"
                optionalLabel="each household its own"
                options={groundChoices(names)}
              />
            </FieldLine>
            <FieldLine>
              <LengthField path={`${row}.from`} label="From station" hint="Empty: from the start." />
              <LengthField path={`${row}.to`} label="To station" hint="Empty: to the end." />
            </FieldLine>
            <FieldLine>
              <TextField path={`${row}.saidBy`} label="Said by" hint="Such as “the permit counter”." />
              <DateField path={`${row}.on`} label="On" />
            </FieldLine>
          </>
        )}
      </RowsField>
    </Fold>
  )
}
