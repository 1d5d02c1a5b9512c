import { shareNames } from '../../../../lib/words/shareText.ts'
import { tryWords } from '../../../../lib/words/tryText.ts'
import { TryAChange } from '../../forms/trying/TryAChange.tsx'
import { NotebookShell } from '../../server/NotebookShell.tsx'
import { openNotebook } from '../../server/opened.ts'
import { itemsBase } from '../../server/proposalDraft.ts'
import { keepTried } from '../../server/tryActions.ts'
import { tryOffers } from '../../server/tryOffers.ts'

export const metadata = { title: 'Try a change' }

export default async function TryPage({ params }: { params: Promise<{ notebookId: string }> }) {
  const { notebookId } = await params
  const opened = await openNotebook(notebookId)
  const { notebook, document } = opened
  const { units } = opened.asAgreed
  // A tried change is held against the plan; what was given and bought so far is no part of it. Lines that follow the
  // take-off are written in the units that are agreed: in others each would lose its price.
  const plan = {
    ...opened.inForce,
    units,
    contributions: [],
    books: { bought: [], things: [], conversions: [] },
  }
  return (
    <NotebookShell
      opened={opened}
      page="try"
      title="Try a change"
      lead={tryWords.lead}
      back={{ href: `/notebook/${notebookId}/shares`, label: 'Shares' }}
    >
      <TryAChange
        notebookId={notebookId}
        plan={plan}
        offers={tryOffers(document)}
        names={shareNames(notebook)}
        keep={keepTried.bind(null, notebookId, itemsBase(document))}
      />
    </NotebookShell>
  )
}
