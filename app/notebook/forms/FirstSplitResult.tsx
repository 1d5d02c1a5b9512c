'use client'

import { splitFirst } from '../../../lib/core/shares/firstSplit.ts'
import { readFirstSplit } from '../../../lib/forms/firstSplitDraft.ts'
import { broughtAsHours, firstSplitWaits, firstSplitWords } from '../../../lib/words/firstSplitText.ts'
import { moneyWords } from '../../../lib/words/money.ts'
import { useDraft } from '../../ui/draft/draftContext.ts'
import { Panel } from '../../ui/Panel.tsx'
import { ShareBar } from '../../ui/ShareBar.tsx'
import type { FormNames } from './partWords.ts'

/** What the figures in the form ask of each household; by the same function of the core that saves them. */
export function FirstSplitResult({ names, digits }: { names: FormNames; digits: number }) {
  const { draft } = useDraft()
  const split = splitFirst(readFirstSplit(draft as Record<string, unknown>), names.currency, digits)
  const money = (minor: bigint) => moneyWords(minor, names.currency)
  return (
    <Panel
      heading={firstSplitWords.result}
      aside={split.ok ? <span className="figure">{money(split.value.total)}</span> : undefined}
    >
      <div role="status">
        {split.ok ? (
          <>
            <ShareBar
              a={Number(split.value.a)}
              b={Number(split.value.b)}
              aText={money(split.value.a)}
              bText={money(split.value.b)}
              nameA={names.a}
              nameB={names.b}
              label="Asked for, materials and work"
            />
            {(['a', 'b'] as const)
              .filter((household) => split.value.promised[household] > 0n)
              .map((household) => {
                const { [household]: share, promised } = split.value
                const worth = promised[household]
                return (
                  <p key={household}>
                    {broughtAsHours(names[household], money(worth), money(share - worth))}
                  </p>
                )
              })}
          </>
        ) : (
          firstSplitWaits(split.faults, names).map((sentence) => <p key={sentence}>{sentence}</p>)
        )}
      </div>
      <p>{firstSplitWords.binds}</p>
    </Panel>
  )
}
