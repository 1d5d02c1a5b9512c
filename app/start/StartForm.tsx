'use client'

import { guessWords, startWords } from '../../lib/words/startText.ts'
import { type Currencies, CurrencyAndUnits } from '../notebook/forms/CurrencyAndUnits.tsx'
import { DraftForm } from '../ui/draft/DraftForm.tsx'
import { useDraft } from '../ui/draft/draftContext.ts'
import { textAt } from '../ui/draft/draftPath.ts'
import { Fold } from '../ui/draft/Fold.tsx'
import { TextField } from '../ui/draft/TextField.tsx'
import type { SaveAction } from '../ui/draft/useSaving.ts'
import { Panel } from '../ui/Panel.tsx'

/** Three fields; what was guessed stands beside the fold in which it is changed. */
export function StartForm({
  initial,
  save,
  currencies,
}: {
  initial: object
  save: SaveAction
  currencies: Currencies
}) {
  return (
    <DraftForm initial={initial} base="new" save={save} saveLabel={startWords.save}>
      <Panel heading="The notebook">
        <TextField path="title" label={startWords.fence} hint={startWords.fenceHint} />
        <TextField path="households.a.name" label={startWords.own} hint={startWords.ownHint} />
        <TextField path="households.b.name" label={startWords.neighbours} />
        <GuessFold currencies={currencies} />
        <p className="field-hint">{startWords.later}</p>
      </Panel>
    </DraftForm>
  )
}

function GuessFold({ currencies }: { currencies: Currencies }) {
  const { draft } = useDraft()
  const units = textAt(draft, 'units') === 'metric' ? 'metric' : 'ft-in'
  return (
    <Fold
      label={startWords.money}
      about={guessWords(textAt(draft, 'currency'), units)}
      paths={['currency', 'units']}
    >
      <CurrencyAndUnits currencies={currencies} />
    </Fold>
  )
}
