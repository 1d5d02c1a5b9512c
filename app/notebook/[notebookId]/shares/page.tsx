import Link from 'next/link'
import { itemKey } from '../../../../lib/core/agreement/agreedItems.ts'
import { sharedUses } from '../../../../lib/core/shares/passages.ts'
import { itemTitle } from '../../../../lib/words/itemWords.ts'
import { shareNames } from '../../../../lib/words/shareText.ts'
import { ButtonLink } from '../../../ui/ButtonLink.tsx'
import { Panel } from '../../../ui/Panel.tsx'
import { CapsPanel } from '../../server/CapsPanel.tsx'
import { CommonPartsPanel } from '../../server/CommonPartsPanel.tsx'
import { ItemConversation } from '../../server/ItemConversation.tsx'
import { ItemShareView } from '../../server/ItemShareView.tsx'
import { StandingStatus } from '../../server/MarkBox.tsx'
import { NotebookShell } from '../../server/NotebookShell.tsx'
import { openNotebook } from '../../server/opened.ts'
import { PlanPanel } from '../../server/PlanPanel.tsx'
import { standingOf } from '../../server/standingOf.ts'
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
  const { notebook, statement, shared } = opened
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
      {shared.items.map((item) => {
        const standing = standingOf(opened, itemKey(item.id))
        return (
          <Panel
            key={item.id}
            heading={
              <Link href={`${home}/item/${encodeURIComponent(item.id)}`} prefetch={false}>
                {itemTitle(standing.item)}
              </Link>
            }
            aside={<StandingStatus standing={standing} opened={opened} />}
          >
            <ItemShareView
              item={item}
              names={shareNames(notebook, sharedUses(notebook.gates.find((gate) => gate.id === item.id)))}
            />
            <p className="on-screen-only">
              <Link href={`${home}/side-by-side/${encodeURIComponent(item.id)}`} prefetch={false}>
                Ways to share it, side by side
              </Link>
            </p>
          </Panel>
        )
      })}
      <CapsPanel opened={opened} nothing={nothing} />
      <ItemConversation opened={opened} itemKey="caps" />
    </NotebookShell>
  )
}
