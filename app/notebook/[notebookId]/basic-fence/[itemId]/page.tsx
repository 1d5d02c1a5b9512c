import { notFound } from 'next/navigation'
import { itemKey } from '../../../../../lib/core/agreement/agreedItems.ts'
import { basicTakeOff } from '../../../../../lib/core/takeoff/basicTakeOff.ts'
import { readPart } from '../../../../../lib/forms/parts.ts'
import { fingerprintOf } from '../../../../../lib/store/fingerprint.ts'
import { itemTitle } from '../../../../../lib/words/itemWords.ts'
import { shareNames } from '../../../../../lib/words/shareText.ts'
import { Panel } from '../../../../ui/Panel.tsx'
import { BasicFenceForm } from '../../../forms/BasicFenceForm.tsx'
import { saveNotebookPart } from '../../../server/actions.ts'
import { TakeBasicFenceOut } from '../../../server/BasicFenceHeld.tsx'
import { BasicFenceTakes, basicFindings } from '../../../server/BasicFenceTakes.tsx'
import {
  holdAgainstBasicFence,
  offerBasicQuantities,
  removeBasicFence,
} from '../../../server/basicFenceActions.ts'
import { basicOffers } from '../../../server/basicOffers.ts'
import { HoldAgainst } from '../../../server/HoldAgainst.tsx'
import { itemIdOf } from '../../../server/itemIdOf.ts'
import { NotebookShell } from '../../../server/NotebookShell.tsx'
import { openNotebook } from '../../../server/opened.ts'
import { standingOf } from '../../../server/standingOf.ts'

export const metadata = { title: 'Basic fence' }
type Address = { params: Promise<{ notebookId: string; itemId: string }> }

export default async function BasicFencePage({ params }: Address) {
  const { notebookId, itemId } = await params
  const opened = await openNotebook(notebookId)
  const { document, notebook } = opened
  const id = itemIdOf(itemId) ?? notFound()
  const index = notebook.sections.findIndex((one) => one.id === id)
  const section = notebook.sections[index] ?? notFound()
  const part = { part: 'item', id } as const
  const draft = readPart(document, part) ?? notFound()
  const fingerprint = fingerprintOf(draft)
  const title = itemTitle(standingOf(opened, itemKey(id)).item)
  const found = basicTakeOff(notebook, index)
  const followed = basicTakeOff(opened.asAgreed, index)
  const names = shareNames(notebook)
  const home = `/notebook/${notebookId}`
  const back = `${home}/item/${encodeURIComponent(id)}`
  const bound = { hold: holdAgainstBasicFence.bind(null, notebookId), fingerprint }
  const offer = offerBasicQuantities.bind(null, notebookId)
  return (
    <NotebookShell
      opened={opened}
      page={`basic-fence/${itemId}`}
      title={`Basic fence of ${title}`}
      lead="The plainer fence that would be enough on this stretch. Nobody builds it, and it is in no sum. The share of the real fence can be held against it: whoever wants more then pays what is above it."
      back={{ href: back, label: title }}
    >
      {section.basicFence === undefined ? null : (
        <>
          <Panel heading="What it comes to">
            <HoldAgainst {...{ section, names, ...bound }} />
          </Panel>
          <Panel heading="What it takes">
            <BasicFenceTakes {...{ notebook, section, found, followed, fingerprint, offer }} />
          </Panel>
        </>
      )}
      <BasicFenceForm
        initial={draft}
        base={fingerprint}
        save={saveNotebookPart.bind(null, notebookId, part)}
        names={names}
        offers={basicOffers(document, draft)}
        findings={basicFindings(notebook, found)}
      />
      {section.basicFence === undefined ? null : (
        <TakeBasicFenceOut remove={removeBasicFence.bind(null, notebookId)} {...{ id, fingerprint }} />
      )}
    </NotebookShell>
  )
}
