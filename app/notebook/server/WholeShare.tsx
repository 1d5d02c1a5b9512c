import { moneyWords } from '../../../lib/words/money.ts'
import { capSentence, shareNames } from '../../../lib/words/shareText.ts'
import type { Opened } from './opened.ts'
import { PlannedMeans } from './PlannedMeans.tsx'
import { WholeBar } from './WholeBar.tsx'

/** What the whole fence asks of each household; or why that can't be worked out yet. */
export function WholeShare({ opened }: { opened: Opened }) {
  const { notebook, statement } = opened
  const names = shareNames(notebook)
  if (!statement.ok) return <WholeBar opened={opened} moved="" />
  const { asked, beforeCaps } = statement.value
  const money = (minor: bigint) => moneyWords(minor, notebook.currency)
  const moved = capSentence(asked, names)
  const before = `Before caps it is ${money(beforeCaps.a)} for ${names.a} and ${money(beforeCaps.b)} for ${names.b}.`
  return (
    <WholeBar opened={opened} moved={moved ? `${moved} ${before}` : ''}>
      <PlannedMeans opened={opened} statement={statement.value} />
    </WholeBar>
  )
}
