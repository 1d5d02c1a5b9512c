import Link from 'next/link'
import { itemKey } from '../../../lib/core/agreement/agreedItems.ts'
import { sharedUses } from '../../../lib/core/shares/passages.ts'
import { itemTitle } from '../../../lib/words/itemWords.ts'
import { shareNames } from '../../../lib/words/shareText.ts'
import { Panel } from '../../ui/Panel.tsx'
import { ItemShareView } from './ItemShareView.tsx'
import { StandingStatus } from './MarkBox.tsx'
import type { Opened } from './opened.ts'
import { standingOf } from './standingOf.ts'

/** What each item asks of each household, and why, with the way to its page and to its other ways to share. */
export function ItemSharePanels({ opened }: { opened: Opened }) {
  const { notebookId, notebook, shared } = opened
  const usesOf = (id: string) => sharedUses(notebook.gates.find((gate) => gate.id === id))
  return (
    <div className="panel-columns">
      {shared.items.map((item) => {
        const standing = standingOf(opened, itemKey(item.id))
        const id = encodeURIComponent(item.id)
        return (
          <Panel
            key={item.id}
            heading={
              <Link href={`/notebook/${notebookId}/item/${id}`} prefetch={false}>
                {itemTitle(standing.item)}
              </Link>
            }
            aside={<StandingStatus standing={standing} opened={opened} />}
          >
            <ItemShareView item={item} names={shareNames(notebook, usesOf(item.id))} />
            <p className="on-screen-only">
              <Link href={`/notebook/${notebookId}/side-by-side/${id}`} prefetch={false}>
                Ways to share it, side by side
              </Link>
            </p>
          </Panel>
        )
      })}
    </div>
  )
}
