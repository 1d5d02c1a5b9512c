'use client'

import { spreads } from '../../../lib/core/agreement/notebook.ts'
import { spreadLabels, spreadMeaning } from '../../../lib/words/spreadText.ts'
import { ChoiceField } from '../../ui/draft/ChoiceField.tsx'
import { Shown } from '../../ui/draft/Shown.tsx'
import type { FormNames } from './partWords.ts'
import { ShareFields } from './ShareFields.tsx'

/** How a common cost is borne: shared by itself, or laid on the sections and gates, and then its own share rests. */
export function SpreadField({ names }: { names: FormNames }) {
  return (
    <>
      <ChoiceField
        path="spread"
        label="How this cost is borne"
        options={[
          { value: '', label: spreadLabels[''], hint: spreadMeaning[''] },
          ...spreads.map((by) => ({ value: by, label: spreadLabels[by], hint: spreadMeaning[by] })),
        ]}
      />
      <Shown path="spread" is="">
        <ShareFields names={names} onGate={false} />
      </Shown>
      <Shown path="spread" is={spreads}>
        <p>Each section and gate shares its part its own way. How this cost was shared by itself is kept.</p>
      </Shown>
    </>
  )
}
