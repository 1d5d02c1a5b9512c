import { ButtonLink } from '../../../ui/ButtonLink.tsx'
import { CapsPanel } from '../../server/CapsPanel.tsx'
import { CommonPartsPanel } from '../../server/CommonPartsPanel.tsx'
import { ItemConversation } from '../../server/ItemConversation.tsx'
import { ItemSharePanels } from '../../server/ItemSharePanels.tsx'
import { NotebookShell } from '../../server/NotebookShell.tsx'
import { openNotebook } from '../../server/opened.ts'
import { PlanPanel } from '../../server/PlanPanel.tsx'
import { WholeShare } from '../../server/WholeShare.tsx'
import { WholeWhy } from '../../server/WholeWhy.tsx'

export const metadata = { title: 'Shares' }

/** With `?limit=nothing` the form for the caps opens with nothing filled in for the household that asks. */
export default async function SharesPage({
  params,
  searchParams,
}: {
  params: Promise<{ notebookId: string }>
  searchParams?: Promise<{ limit?: string | string[] }>
}) {
  const { notebookId } = await params
  const opened = await openNotebook(notebookId)
  const { statement } = opened
  const home = `/notebook/${notebookId}`
  const nothing = (await searchParams)?.limit === 'nothing'
  return (
    <NotebookShell
      opened={opened}
      page="shares"
      title="Shares"
      lead="Who is asked for what, and why. Open an item to choose another principle for it."
    >
      <WholeShare opened={opened} />
      <WholeWhy opened={opened} />
      <div className="button-row">
        <ButtonLink href={`${home}/side-by-side`}>Ways to share, side by side</ButtonLink>
        <ButtonLink href={`${home}/proposals`}>Proposals</ButtonLink>
        <ButtonLink href={`${home}/try`}>Try a change</ButtonLink>
      </div>
      {statement.ok ? <PlanPanel opened={opened} statement={statement.value} /> : null}
      <CommonPartsPanel opened={opened} />
      <ItemSharePanels opened={opened} />
      <CapsPanel opened={opened} nothing={nothing} />
      <ItemConversation opened={opened} itemKey="caps" />
    </NotebookShell>
  )
}
