import { capSentence, shareNames } from '../../../../lib/words/shareText.ts'
import type { Opened } from '../opened.ts'
import { PlannedMeans } from '../PlannedMeans.tsx'
import { WholeBar } from '../WholeBar.tsx'

/** Beside the drawing: what the whole fence asks of each household, in all, in money and in hours. */
export function WholeBeside({ opened }: { opened: Opened }) {
  const { notebook, statement } = opened
  if (!statement.ok) return <WholeBar opened={opened} moved="" />
  return (
    <WholeBar opened={opened} moved={capSentence(statement.value.asked, shareNames(notebook)) ?? ''}>
      <PlannedMeans opened={opened} statement={statement.value} />
    </WholeBar>
  )
}
