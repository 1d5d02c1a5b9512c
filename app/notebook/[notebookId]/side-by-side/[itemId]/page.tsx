import { notFound } from 'next/navigation'
import { itemKey } from '../../../../../lib/core/agreement/agreedItems.ts'
import { sharedUses } from '../../../../../lib/core/shares/passages.ts'
import { itemSideBySide } from '../../../../../lib/core/shares/sideBySide.ts'
import { readPart } from '../../../../../lib/forms/parts.ts'
import { fingerprintOf } from '../../../../../lib/store/fingerprint.ts'
import { itemTitle } from '../../../../../lib/words/itemWords.ts'
import { shareNames } from '../../../../../lib/words/shareText.ts'
import { wayWords } from '../../../../../lib/words/sideBySideText.ts'
import { ButtonLink } from '../../../../ui/ButtonLink.tsx'
import { Panel } from '../../../../ui/Panel.tsx'
import { BasicFenceLink } from '../../../server/BasicFenceLink.tsx'
import { ItemWays } from '../../../server/ItemWays.tsx'
import { ItemWhy } from '../../../server/ItemWhy.tsx'
import { itemIdOf } from '../../../server/itemIdOf.ts'
import { MarkBox } from '../../../server/MarkBox.tsx'
import { NotebookShell } from '../../../server/NotebookShell.tsx'
import { openNotebook } from '../../../server/opened.ts'
import { chooseWay } from '../../../server/sideBySideActions.ts'
import { standingOf } from '../../../server/standingOf.ts'

export const metadata = { title: 'Side by side' }

type Address = { params: Promise<{ notebookId: string; itemId: string }> }

export default async function ItemSideBySidePage({ params }: Address) {
  const { notebookId, itemId } = await params
  const opened = await openNotebook(notebookId)
  const id = itemIdOf(itemId) ?? notFound()
  const { document, notebook } = opened
  const found = itemSideBySide(notebook, id) ?? notFound()
  const fingerprint = fingerprintOf(readPart(document, { part: 'item', id }) ?? notFound())
  const standing = standingOf(opened, itemKey(id))
  const names = shareNames(notebook, sharedUses(notebook.gates.find((gate) => gate.id === id)))
  const home = `/notebook/${notebookId}`
  const back = `${home}/side-by-side/${encodeURIComponent(id)}`
  const itemPage = `${home}/item/${encodeURIComponent(id)}`
  const asNow = found.chosen.ok && !found.ways.some((one) => one.chosen) ? [found.chosen.value] : []
  return (
    <NotebookShell
      opened={opened}
      page={`side-by-side/${itemId}`}
      title={`${itemTitle(standing.item)}: side by side`}
      lead="What each way to share asks of the two households, from the figures that stand in this item."
      back={{ href: itemPage, label: itemTitle(standing.item) }}
    >
      <ItemWays
        found={found}
        names={names}
        id={id}
        notebookId={notebookId}
        fingerprint={fingerprint}
        choose={chooseWay.bind(null, notebookId)}
      />
      <Panel heading="Why each asks for what it asks">
        {asNow.map((shares) => (
          <div key="now">
            <h3>As it is now</h3>
            <ItemWhy opened={opened} shares={shares} />
          </div>
        ))}
        {found.ways.map((one) => (
          <div key={one.way}>
            <h3>{wayWords(one.way, names)}</h3>
            <ItemWhy opened={opened} shares={one.shares} />
          </div>
        ))}
      </Panel>
      <Panel heading="Where this stands">
        <MarkBox {...{ opened, standing, back }} />
      </Panel>
      <div className="button-row">
        <ButtonLink href={`${home}/side-by-side`}>The whole fence, side by side</ButtonLink>
        <ButtonLink href={itemPage}>Enter other figures</ButtonLink>
        <ButtonLink href={`${home}/proposals/new?item=${encodeURIComponent(id)}`}>
          Propose something for this
        </ButtonLink>
        <BasicFenceLink notebookId={notebookId} item={standing.item} id={id} />
      </div>
    </NotebookShell>
  )
}
