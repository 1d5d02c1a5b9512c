import { decisionKey } from '../../../../lib/core/agreement/agreedItems.ts'
import { readPart } from '../../../../lib/forms/parts.ts'
import { fingerprintOf } from '../../../../lib/store/fingerprint.ts'
import { dayWords } from '../../../../lib/words/day.ts'
import { Panel } from '../../../ui/Panel.tsx'
import { DecisionsForm } from '../../forms/DecisionsForm.tsx'
import { TermsForm } from '../../forms/TermsForm.tsx'
import { saveNotebookPart } from '../../server/actions.ts'
import { ItemConversation } from '../../server/ItemConversation.tsx'
import { MarkBox } from '../../server/MarkBox.tsx'
import { NotebookShell } from '../../server/NotebookShell.tsx'
import { openNotebook } from '../../server/opened.ts'
import { standingOf } from '../../server/standingOf.ts'

export const metadata = { title: 'Terms' }

export default async function TermsPage({ params }: { params: Promise<{ notebookId: string }> }) {
  const { notebookId } = await params
  const opened = await openNotebook(notebookId)
  const { document } = opened
  const back = `/notebook/${notebookId}/terms`
  const [terms, decisions] = [{ part: 'terms' } as const, { part: 'decisions' } as const]
  const [termsDraft, decisionsDraft] = [readPart(document, terms) ?? {}, readPart(document, decisions) ?? {}]
  const written = Array.isArray(document.decisions) ? document.decisions : []
  return (
    <NotebookShell
      opened={opened}
      page="terms"
      title="Terms"
      lead="What you settle in words. The wordings are a beginning to be edited; none of them is agreed until both mark them."
    >
      <Panel heading="Where this stands">
        <MarkBox opened={opened} standing={standingOf(opened, 'terms')} back={back} />
      </Panel>
      <TermsForm
        initial={termsDraft}
        base={fingerprintOf(termsDraft)}
        save={saveNotebookPart.bind(null, notebookId, terms)}
      />
      <ItemConversation opened={opened} itemKey="terms" />
      <Panel heading="Decisions" id="decisions">
        <p>What you decided along the way. Each is marked by itself.</p>
        {opened.notebook.decisions.map((decision, index) => {
          const key = decisionKey(written[index])
          return (
            <Panel
              key={key}
              heading={decision.on ? `Decided on ${dayWords(decision.on)}` : 'Decided'}
              level={3}
              tone="quiet"
            >
              <p>{decision.text}</p>
              <MarkBox opened={opened} standing={standingOf(opened, key)} back={`${back}#decisions`} />
            </Panel>
          )
        })}
        <DecisionsForm
          initial={decisionsDraft}
          base={fingerprintOf(decisionsDraft)}
          save={saveNotebookPart.bind(null, notebookId, decisions)}
        />
      </Panel>
    </NotebookShell>
  )
}
