import { readPart } from '../../../../lib/forms/parts.ts'
import { fingerprintOf } from '../../../../lib/store/fingerprint.ts'
import { shareNames } from '../../../../lib/words/shareText.ts'
import { ButtonLink } from '../../../ui/ButtonLink.tsx'
import { Panel } from '../../../ui/Panel.tsx'
import { DatesForm } from '../../forms/DatesForm.tsx'
import { saveNotebookPart } from '../../server/actions.ts'
import { InstalmentsPanel } from '../../server/InstalmentsPanel.tsx'
import { instalmentsNow } from '../../server/instalmentsNow.ts'
import { NotebookShell } from '../../server/NotebookShell.tsx'
import { openNotebook } from '../../server/opened.ts'

export const metadata = { title: 'Dates' }

export default async function DatesPage({ params }: { params: Promise<{ notebookId: string }> }) {
  const { notebookId } = await params
  const opened = await openNotebook(notebookId)
  const part = { part: 'dates' } as const
  const draft = readPart(opened.document, part) ?? {}
  const home = `/notebook/${notebookId}`
  const plan = instalmentsNow(opened)
  const withDay =
    opened.notebook.dates.filter(({ on }) => on !== '').length + (plan?.standing.parts.length ?? 0)
  return (
    <NotebookShell
      opened={opened}
      page="dates"
      title="Dates"
      lead="What is due or runs out, and whose it is to see to: marks of buried services, an inspection, notice periods, yearly upkeep, a screen that comes down."
      back={{ href: `${home}/ask-first`, label: 'Ask first' }}
    >
      {withDay > 0 ? (
        <Panel heading="In your own calendar">
          <p>
            A calendar file with every date that has a day, and every instalment that is not paid. Take it
            again after a change: the same date takes the place of the old one.
          </p>
          <ButtonLink href={`${home}/dates.ics`} download>
            Calendar file (ICS)
          </ButtonLink>
        </Panel>
      ) : null}
      <InstalmentsPanel opened={opened} />
      <DatesForm
        initial={draft}
        base={fingerprintOf(draft)}
        save={saveNotebookPart.bind(null, notebookId, part)}
        names={shareNames(opened.notebook)}
      />
    </NotebookShell>
  )
}
