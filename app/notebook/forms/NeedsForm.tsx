'use client'

import { needWeights } from '../../../lib/core/agreement/needs.ts'
import { needKinds } from '../../../lib/core/agreement/notebook.ts'
import { mostOwnNeeds, needMeaning, needWords, weightWords } from '../../../lib/words/needText.ts'
import { capitalised } from '../../../lib/words/summary/names.ts'
import { type Choice, ChoiceField } from '../../ui/draft/ChoiceField.tsx'
import { DraftForm } from '../../ui/draft/DraftForm.tsx'
import { textAt } from '../../ui/draft/draftPath.ts'
import { RowsField } from '../../ui/draft/RowsField.tsx'
import { TextField } from '../../ui/draft/TextField.tsx'
import type { SaveAction } from '../../ui/draft/useSaving.ts'

const weights: readonly Choice[] = needWeights.map((value) => ({ value, label: weightWords[value] }))

/** What one household needs of the fence: the six kinds, and rows in its own words. */
export function NeedsForm({ initial, save }: { initial: object; save: SaveAction }) {
  return (
    <DraftForm initial={initial} base="new" save={save} saveLabel="Keep our needs" form="needs">
      {needKinds.map((kind) => (
        <div className="need-fields" key={kind}>
          <ChoiceField
            path={`kinds.${kind}.weight`}
            label={capitalised(needWords[kind])}
            hint={needMeaning[kind]}
            options={weights}
            optionalLabel="does not matter to us"
            asRadios
          />
          <TextField path={`kinds.${kind}.words`} label={`In your own words: ${needWords[kind]}`} />
        </div>
      ))}
      <RowsField
        path="own"
        label="What else you need, in your own words"
        rowLabel={(row) => textAt(row, 'words')}
        empty={{ words: '', weight: '' }}
        addLabel="Add a need of our own"
        max={mostOwnNeeds}
      >
        {(row) => (
          <>
            <TextField path={`${row}.words`} label="What you need" />
            <ChoiceField path={`${row}.weight`} label="How much it matters" options={weights} />
          </>
        )}
      </RowsField>
    </DraftForm>
  )
}
