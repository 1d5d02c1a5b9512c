import { notFound } from 'next/navigation'
import { itemKey } from '../../../../../lib/core/agreement/agreedItems.ts'
import { cautionsOf } from '../../../../../lib/core/agreement/cautions.ts'
import { agreedRates } from '../../../../../lib/core/hours/rates.ts'
import { sharedUses } from '../../../../../lib/core/shares/passages.ts'
import { takeOff } from '../../../../../lib/core/takeoff/takeOff.ts'
import { kindOf, readPart } from '../../../../../lib/forms/parts.ts'
import { fingerprintOf } from '../../../../../lib/store/fingerprint.ts'
import { passageRounds } from '../../../../../lib/store/passageRounds.ts'
import { itemTitle } from '../../../../../lib/words/itemWords.ts'
import { householdNames, kindWords } from '../../../../../lib/words/labels.ts'
import { itemFaultTexts } from '../../../../../lib/words/shareFaultText.ts'
import { shareNames } from '../../../../../lib/words/shareText.ts'
import { ButtonLink } from '../../../../ui/ButtonLink.tsx'
import { Panel } from '../../../../ui/Panel.tsx'
import { ItemForm } from '../../../forms/ItemForm.tsx'
import { ApartFromTakeOff } from '../../../server/ApartFromTakeOff.tsx'
import { removeNotebookItem, saveNotebookPart } from '../../../server/actions.ts'
import { BasicFenceOfItem } from '../../../server/BasicFenceHeld.tsx'
import { basicFenceOf } from '../../../server/basicOffers.ts'
import { CameTo } from '../../../server/books/CameTo.tsx'
import { CapNotice } from '../../../server/CapNotice.tsx'
import { FoundPanel } from '../../../server/FindingList.tsx'
import { findingsHere } from '../../../server/findingField.ts'
import { followedTakeOff } from '../../../server/followedTakeOff.ts'
import { GatePassages } from '../../../server/GatePassages.tsx'
import type { AddressFields } from '../../../server/historyAsked.ts'
import { ItemConversation } from '../../../server/ItemConversation.tsx'
import { filesOfItem, ItemFiles } from '../../../server/ItemFiles.tsx'
import { ItemShareView } from '../../../server/ItemShareView.tsx'
import { ItemWhy } from '../../../server/ItemWhy.tsx'
import { itemIdOf } from '../../../server/itemIdOf.ts'
import { ItemDrawing } from '../../../server/LineDrawing.tsx'
import { MarkBox } from '../../../server/MarkBox.tsx'
import { NotebookShell } from '../../../server/NotebookShell.tsx'
import { needsToMeet } from '../../../server/needsOf.ts'
import { openNotebook } from '../../../server/opened.ts'
import { standingOf } from '../../../server/standingOf.ts'
import { TakenOverNote } from '../../../server/TakenOverNote.tsx'
import { takenOverAsked } from '../../../server/takenOverAddress.ts'
import { WorkCautions } from '../../../server/WorkCautions.tsx'

export const metadata = { title: 'One item' }

export default async function ItemPage({
  params,
  searchParams,
}: {
  params: Promise<{ notebookId: string; itemId: string }>
  searchParams?: Promise<AddressFields>
}) {
  const { notebookId, itemId } = await params
  const opened = await openNotebook(notebookId)
  const id = itemIdOf(itemId) ?? notFound()
  const { document, notebook, shared } = opened
  const part = { part: 'item', id } as const
  const kind = kindOf(document, id) ?? notFound()
  const draft = readPart(document, part) ?? notFound()
  const standing = standingOf(opened, itemKey(id))
  const shares = shared.items.find((item) => item.id === id)
  const faults = shared.faults.filter((fault) => fault.path.startsWith(`${standing.item.path}.`))
  const uses = sharedUses(notebook.gates.find((gate) => gate.id === id))
  const item = [...notebook.sections, ...notebook.gates].find((one) => one.id === id)
  const section = notebook.sections.find((one) => one.id === id)
  const priced = [...notebook.sections, ...notebook.gates, ...notebook.common].filter((one) => one.id === id)
  const home = `/notebook/${notebookId}`
  const here = `${home}/item/${encodeURIComponent(id)}`
  const worked = takeOff(notebook)
  const followed = followedTakeOff(opened, worked)
  const just = takenOverAsked((await searchParams) ?? {})
  const found = findingsHere(here, notebookId, notebook, worked.findings)
  return (
    <NotebookShell
      opened={opened}
      page={`item/${itemId}`}
      title={itemTitle(standing.item)}
      lead={kindWords[kind]}
      back={{ href: home, label: 'The line' }}
    >
      <CapNotice opened={opened} itemId={id} />
      <Panel heading="What it asks of each household">
        {shares ? <ItemShareView item={shares} names={shareNames(notebook, uses)} /> : null}
        {shares ? <ItemWhy opened={opened} shares={shares} /> : null}
        {itemFaultTexts(householdNames(notebook), faults).map((text) => (
          <p key={text}>This can’t be shared yet: {text}</p>
        ))}
        <div className="button-row">
          <ButtonLink href={`${home}/side-by-side/${encodeURIComponent(id)}`}>
            Ways to share, side by side
          </ButtonLink>
          <ButtonLink href={`${home}/proposals/new?item=${encodeURIComponent(id)}`}>
            Propose something for this
          </ButtonLink>
        </div>
      </Panel>
      {section ? <BasicFenceOfItem opened={opened} section={section} draft={draft} /> : null}
      <GatePassages
        opened={opened}
        id={id}
        rounds={await passageRounds({ notebookId, household: opened.household, gateId: id })}
      />
      <CameTo opened={opened} id={id} />
      <Panel heading="Where this stands">
        <MarkBox opened={opened} standing={standing} back={here} />
      </Panel>
      {kind === 'common' ? null : (
        <ItemDrawing notebook={notebook} takeOff={worked} itemId={id} home={home} />
      )}
      {kind === 'common' ? null : (
        <div className="button-row">
          <ButtonLink href={`${home}/build-up/${encodeURIComponent(id)}`}>Build-up and quantities</ButtonLink>
          {kind === 'section' ? (
            <ButtonLink href={`${home}/measured/${encodeURIComponent(id)}`}>Posts as measured</ButtonLink>
          ) : null}
        </div>
      )}
      <FoundPanel notebookId={notebookId} notebook={notebook} findings={found.findings} here={here} />
      {item ? <ApartFromTakeOff notebook={notebook} found={followed} item={item} alone /> : null}
      <ItemFiles opened={opened} id={id} found={await filesOfItem(notebookId, id)} />
      <WorkCautions kinds={cautionsOf(priced)} />
      <ItemForm
        kind={kind}
        initial={draft}
        base={fingerprintOf(draft)}
        save={saveNotebookPart.bind(null, notebookId, part)}
        remove={removeNotebookItem.bind(null, notebookId, id)}
        names={{ ...shareNames(notebook), rates: agreedRates(notebook.arrangements) }}
        findings={found.atFields}
        needs={section && (await needsToMeet(notebookId, opened.household))}
        taken={item && <TakenOverNote materials={item.materials} just={just} />}
        basicFence={section && basicFenceOf(notebookId, notebook, section)}
      />
      <ItemConversation opened={opened} itemKey={itemKey(id)} />
    </NotebookShell>
  )
}
