import { notFound } from 'next/navigation'
import { itemKey } from '../../../../../lib/core/agreement/agreedItems.ts'
import { readyBuildUps } from '../../../../../lib/core/takeoff/readyBuildUps.ts'
import { takeOff } from '../../../../../lib/core/takeoff/takeOff.ts'
import { kindOf, readPart } from '../../../../../lib/forms/parts.ts'
import { fingerprintOf } from '../../../../../lib/store/fingerprint.ts'
import { itemTitle } from '../../../../../lib/words/itemWords.ts'
import { sharedPostSentences } from '../../../../../lib/words/takeoff/sharedPostText.ts'
import { ButtonLink } from '../../../../ui/ButtonLink.tsx'
import { Caution } from '../../../../ui/Caution.tsx'
import { PressForm } from '../../../../ui/draft/PressForm.tsx'
import { Panel } from '../../../../ui/Panel.tsx'
import { GateBuildUpForm } from '../../../forms/GateBuildUpForm.tsx'
import { KeepBuildUpForm } from '../../../forms/KeepBuildUpForm.tsx'
import { SectionBuildUpForm } from '../../../forms/SectionBuildUpForm.tsx'
import { saveNotebookPart } from '../../../server/actions.ts'
import { keepBuildUp } from '../../../server/buildUpActions.ts'
import { FindingList } from '../../../server/FindingList.tsx'
import { findingsHere } from '../../../server/findingField.ts'
import { itemIdOf } from '../../../server/itemIdOf.ts'
import { keptFor } from '../../../server/keptBuildUps.ts'
import { ItemDrawing } from '../../../server/LineDrawing.tsx'
import { NotebookShell } from '../../../server/NotebookShell.tsx'
import { openNotebook } from '../../../server/opened.ts'
import { QuantityTable } from '../../../server/QuantityTable.tsx'
import { standingOf } from '../../../server/standingOf.ts'
import { offerQuantities } from '../../../server/takeOffActions.ts'

export const metadata = { title: 'Build-up' }

export default async function BuildUpPage({
  params,
}: {
  params: Promise<{ notebookId: string; itemId: string }>
}) {
  const { notebookId, itemId } = await params
  const opened = await openNotebook(notebookId)
  const { document, notebook } = opened
  const id = itemIdOf(itemId) ?? notFound()
  const part = { part: 'item', id } as const
  const kind = kindOf(document, id) ?? notFound()
  if (kind === 'common') notFound()
  const draft = readPart(document, part) ?? notFound()
  const { item } = standingOf(opened, itemKey(id))
  const found = takeOff(notebook)
  const quantities = found.quantities.filter(
    ({ item: place }) => notebook[place.list][place.index]?.id === id,
  )
  const shared = sharedPostSentences(notebook, found.sharedPosts, {
    list: kind === 'gate' ? 'gates' : 'sections',
    index: notebook[kind === 'gate' ? 'gates' : 'sections'].findIndex((one) => one.id === id),
  })
  const findings = found.findings.filter(({ path }) => path === item.path || path.startsWith(`${item.path}.`))
  const here = `/notebook/${notebookId}/build-up/${encodeURIComponent(id)}`
  const back = `/notebook/${notebookId}/item/${encodeURIComponent(id)}`
  const ready = kind === 'section' ? 'section' : 'gate'
  const offers = {
    ready: readyBuildUps.map((one) => ({ label: String(one[ready].name), buildUp: one[ready] })),
    own: keptFor(document, ready),
  }
  const form = {
    initial: draft,
    base: fingerprintOf(draft),
    save: saveNotebookPart.bind(null, notebookId, part),
    offers,
    findings: findingsHere(here, notebookId, notebook, findings).atFields,
  }
  return (
    <NotebookShell
      opened={opened}
      page={`build-up/${itemId}`}
      title={`Build-up of ${itemTitle(item)}`}
      lead="What a unit of it is made of. From this and the dimensions the notebook works out the quantities."
      back={{ href: back, label: itemTitle(item) }}
    >
      <ItemDrawing notebook={notebook} takeOff={found} itemId={id} home={`/notebook/${notebookId}`} />
      <Panel heading="What it takes">
        <FindingList notebookId={notebookId} notebook={notebook} findings={findings} here={here} />
        {quantities.length === 0 ? (
          <p>Nothing is worked out yet. Choose a build-up below and save it.</p>
        ) : (
          <>
            <QuantityTable
              notebook={notebook}
              quantities={quantities}
              caption={`Quantities of ${itemTitle(item)}`}
            />
            {shared.map((sentence) => (
              <p key={sentence}>Among the cost lines: {sentence}</p>
            ))}
            <PressForm
              action={offerQuantities.bind(null, notebookId)}
              label="Put these among the cost lines"
              weight="main"
            >
              <input type="hidden" name="id" value={id} />
            </PressForm>
          </>
        )}
      </Panel>
      <Caution title="For estimating, not a design">
        <p>
          Sizes, holes and depths here are for working out quantities. A pool barrier, a retaining wall, or a
          fence that must stand up to wind or livestock needs a licensed designer; strips, boards and vines
          catch wind that posts may not be made for.
        </p>
      </Caution>
      {kind === 'section' ? (
        <ButtonLink href={`/notebook/${notebookId}/measured/${encodeURIComponent(id)}`}>
          Posts as measured on site
        </ButtonLink>
      ) : null}
      {kind === 'section' ? <SectionBuildUpForm {...form} /> : <GateBuildUpForm {...form} />}
      {'buildUp' in draft ? <KeepBuildUpForm save={keepBuildUp.bind(null, notebookId, id)} /> : null}
    </NotebookShell>
  )
}
