import { cutPlansOf } from '../../server/cutPlans.ts'
import { NotebookShell } from '../../server/NotebookShell.tsx'
import { openNotebook } from '../../server/opened.ts'
import { CutPlanPanel } from '../../server/TakeOffPanels.tsx'

export const metadata = { title: 'Cut plan' }

export default async function CutPlanPage({ params }: { params: Promise<{ notebookId: string }> }) {
  const { notebookId } = await params
  const opened = await openNotebook(notebookId)
  const plans = await cutPlansOf(opened.notebook)
  return (
    <NotebookShell
      opened={opened}
      page="cut-plan"
      title="Cut plan"
      lead="Which piece comes from which length, from what is at hand first and then from stock. Measure again before you cut."
      back={{ href: `/notebook/${notebookId}/materials`, label: 'Materials' }}
    >
      {plans.length === 0 ? <p>No build-up says yet in which lengths its stock is bought.</p> : null}
      {plans.map((plan) => (
        <CutPlanPanel key={plan.what} plan={plan} />
      ))}
    </NotebookShell>
  )
}
