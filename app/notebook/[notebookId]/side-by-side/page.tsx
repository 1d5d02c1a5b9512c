import Link from 'next/link'
import { itemKey } from '../../../../lib/core/agreement/agreedItems.ts'
import { placesOf } from '../../../../lib/core/shares/itemShares.ts'
import { wholeSideBySide } from '../../../../lib/core/shares/sideBySide.ts'
import { itemTitle } from '../../../../lib/words/itemWords.ts'
import { faultTexts } from '../../../../lib/words/shareFaultText.ts'
import { shareNames } from '../../../../lib/words/shareText.ts'
import { Panel } from '../../../ui/Panel.tsx'
import { NotebookShell } from '../../server/NotebookShell.tsx'
import { openNotebook } from '../../server/opened.ts'
import { standingOf } from '../../server/standingOf.ts'
import { WholeWays } from '../../server/WholeWays.tsx'
import { WholeWhy } from '../../server/WholeWhy.tsx'

export const metadata = { title: 'Side by side' }

export default async function SideBySidePage({ params }: { params: Promise<{ notebookId: string }> }) {
  const { notebookId } = await params
  const opened = await openNotebook(notebookId)
  const { notebook } = opened
  const found = wholeSideBySide(opened.inForce)
  const home = `/notebook/${notebookId}`
  const items = placesOf(notebook).map(({ item }) => item.id)
  return (
    <NotebookShell
      opened={opened}
      page="side-by-side"
      title="The whole fence: side by side"
      lead="What the fence would ask of each household if every item that can followed one way."
      back={{ href: `${home}/shares`, label: 'Shares' }}
    >
      {found.ok ? (
        <WholeWays
          found={found.value}
          names={shareNames(notebook)}
          notebookId={notebookId}
          notebook={notebook}
        />
      ) : (
        <Panel heading="This can’t be shared yet">
          {faultTexts(notebook, found.faults).map((text) => (
            <p key={text}>{text}</p>
          ))}
        </Panel>
      )}
      {found.ok ? (
        <Panel heading="Why it asks for what it asks now">
          <WholeWhy opened={opened} />
        </Panel>
      ) : null}
      <div className="on-screen-only">
        <Panel heading="Item by item">
          {items.length === 0 ? <p>There is no item yet.</p> : null}
          <ul>
            {items.map((id) => (
              <li key={id}>
                <Link href={`${home}/side-by-side/${encodeURIComponent(id)}`} prefetch={false}>
                  {itemTitle(standingOf(opened, itemKey(id)).item)}
                </Link>
              </li>
            ))}
          </ul>
        </Panel>
      </div>
    </NotebookShell>
  )
}
