import { cautionsOfAll } from '../../../../lib/core/agreement/cautions.ts'
import { arrangementsTitle } from '../../../../lib/words/arrangementText.ts'
import { ButtonLink } from '../../../ui/ButtonLink.tsx'
import { Panel } from '../../../ui/Panel.tsx'
import { ConversionsPanel } from '../../server/ConversionsPanel.tsx'
import { HoursPanel } from '../../server/HoursPanel.tsx'
import { LabourTables } from '../../server/LabourTables.tsx'
import { NotebookShell } from '../../server/NotebookShell.tsx'
import { openNotebook } from '../../server/opened.ts'
import { RatesAgainstQuotes } from '../../server/RatesAgainstQuotes.tsx'
import { WorkCautions } from '../../server/WorkCautions.tsx'

export const metadata = { title: 'Work' }

export default async function WorkPage({ params }: { params: Promise<{ notebookId: string }> }) {
  const { notebookId } = await params
  const opened = await openNotebook(notebookId)
  const { notebook } = opened
  const empty = notebook.sections.length + notebook.gates.length + notebook.common.length === 0
  return (
    <NotebookShell
      opened={opened}
      page="work"
      title="Work"
      lead="Every line of work in hours, item by item, and what is left of each household’s share of them. Open an item to change its lines."
    >
      <WorkCautions kinds={cautionsOfAll(notebook)} />
      {empty ? (
        <p>Lay out sections and gates on The line first.</p>
      ) : (
        <>
          <LabourTables opened={opened} />
          <HoursPanel opened={opened} />
          <Panel heading="Rates">
            <RatesAgainstQuotes notebook={notebook} />
            <div className="button-row">
              <ButtonLink href={`/notebook/${notebookId}/arrangements`}>{arrangementsTitle}</ButtonLink>
            </div>
          </Panel>
          {await ConversionsPanel({ opened })}
        </>
      )}
    </NotebookShell>
  )
}
