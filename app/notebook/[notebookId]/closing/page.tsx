import type { Notebook } from '../../../../lib/core/agreement/notebook.ts'
import { readPart } from '../../../../lib/forms/parts.ts'
import { fingerprintOf } from '../../../../lib/store/fingerprint.ts'
import { shareNames } from '../../../../lib/words/shareText.ts'
import { closingBlocks } from '../../../../lib/words/summary/closingBlocks.ts'
import { itemTitle } from '../../../../lib/words/summary/names.ts'
import { ButtonLink } from '../../../ui/ButtonLink.tsx'
import { PressForm } from '../../../ui/draft/PressForm.tsx'
import { Panel } from '../../../ui/Panel.tsx'
import { ClosingForm } from '../../forms/ClosingForm.tsx'
import { saveNotebookPart } from '../../server/actions.ts'
import { closedBy } from '../../server/closed.ts'
import { openAgain } from '../../server/closingActions.ts'
import { MarkBox } from '../../server/MarkBox.tsx'
import { NotebookShell } from '../../server/NotebookShell.tsx'
import { openNotebook } from '../../server/opened.ts'
import { SummaryView } from '../../server/SummaryView.tsx'
import { standingOf } from '../../server/standingOf.ts'
import { revisionSummary } from '../../server/summaryOf.ts'

export const metadata = { title: 'Closing' }

export default async function ClosingPage({ params }: { params: Promise<{ notebookId: string }> }) {
  const { notebookId } = await params
  const opened = await openNotebook(notebookId)
  const { document, notebook, revisions } = opened
  const home = `/notebook/${notebookId}`
  const part = { part: 'closing' } as const
  const draft = readPart(document, part) ?? {}
  const closed = closedBy(opened, revisions)
  return (
    <NotebookShell
      opened={opened}
      page="closing"
      title="Closing"
      lead={
        closed
          ? `The notebook is closed by revision ${closed.revision.number}, which all have signed.`
          : 'When the fence stands: how it came out, the last figures, and who keeps it up. It closes once all have signed a revision with it.'
      }
      back={{ href: `${home}/record`, label: 'Record' }}
    >
      {closed ? (
        <Panel heading="Closed">
          <SummaryView
            blocks={closingBlocks(revisionSummary(closed, revisions)).slice(1)}
            notebook={closed.notebook}
          />
          <p>
            Only the books go on, until the last payment. Opening the notebook again takes the closing off the
            draft; what was signed stays as it is.
          </p>
          <div className="button-row">
            <ButtonLink href={`${home}/money`}>Money and hours</ButtonLink>
            <ButtonLink href={`${home}/final-account`}>The final account</ButtonLink>
            <PressForm
              action={openAgain.bind(null, notebookId)}
              label="Open it again"
              confirm="Open the notebook again, to amend it? Both households must sign the amendment."
            />
          </div>
        </Panel>
      ) : (
        <>
          {notebook.closing ? (
            <Panel heading="Where this stands">
              <MarkBox opened={opened} standing={standingOf(opened, 'closing')} back={`${home}/closing`} />
              <p>
                Mark it as agreed, then put it up for signing on the page “Sign”. The last figures are those
                of the books at that time.
              </p>
              <PressForm
                action={openAgain.bind(null, notebookId)}
                label="Take the closing off again"
                confirm="Take the closing off? What was typed here is gone; it stays in the history."
              />
            </Panel>
          ) : null}
          <ClosingForm
            initial={notebook.closing ? draft : { closing: startingClosing(notebook) }}
            base={fingerprintOf(draft)}
            save={saveNotebookPart.bind(null, notebookId, part)}
            names={shareNames(notebook)}
          />
        </>
      )}
    </NotebookShell>
  )
}

/** What is usually measured and kept up, ready to be filled in. */
function startingClosing(notebook: Notebook) {
  const { sections, gates } = notebook
  return {
    on: '',
    asBuilt: [
      ...sections.map(({ name }, index) => ({
        what: `Height of ${itemTitle('section', index, name)}`,
        measured: '',
      })),
      ...gates.map(({ name }, index) => ({
        what: `Clear opening of ${itemTitle('gate', index, name)}`,
        measured: '',
      })),
    ],
    upkeep: [
      ...sections.map(({ name, upkeep }, index) => ({
        what: itemTitle('section', index, name),
        household: upkeep,
        every: 'year',
      })),
      ...gates.map(({ name, upkeep }, index) => ({
        what: itemTitle('gate', index, name),
        household: upkeep,
        every: 'year',
      })),
    ],
    notes: '',
  }
}
