import { takeOff } from '../../../../lib/core/takeoff/takeOff.ts'
import { ButtonLink } from '../../../ui/ButtonLink.tsx'
import { fieldId } from '../../../ui/draft/fieldId.ts'
import { HeightsPanel } from '../../server/HeightsPanel.tsx'
import { NotebookShell } from '../../server/NotebookShell.tsx'
import { openNotebook } from '../../server/opened.ts'
import { SetbacksPanel } from '../../server/SetbacksPanel.tsx'
import { WindPanel } from '../../server/WindPanel.tsx'

export const metadata = { title: 'Setbacks and heights' }

export default async function SetbacksPage({ params }: { params: Promise<{ notebookId: string }> }) {
  const { notebookId } = await params
  const opened = await openNotebook(notebookId)
  const { notebook } = opened
  const found = takeOff(notebook)
  const line = `/notebook/${notebookId}/line`
  const enter = (path: string, label: string) => (
    <p>
      <ButtonLink href={`${line}#${fieldId('field', path)}`}>{label}</ButtonLink>
    </p>
  )
  return (
    <NotebookShell
      opened={opened}
      page="setbacks"
      title="Setbacks and heights"
      lead="Worked out from the stations and the build-ups: whose land lies on which side, how high the fence is as each household sees it, and a rough look at the wind."
    >
      <SetbacksPanel notebook={notebook} found={found}>
        {enter('line.error', 'Say how sure the line is')}
      </SetbacksPanel>
      <HeightsPanel notebook={notebook} found={found}>
        {enter('line.limits', 'Enter limits on height')}
      </HeightsPanel>
      <WindPanel notebook={notebook} found={found}>
        {enter('line.site', 'Enter wind, soil and frost')}
      </WindPanel>
    </NotebookShell>
  )
}
