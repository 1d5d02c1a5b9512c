import { notFound } from 'next/navigation'
import type { ItemKind } from '../../../../../lib/core/agreement/notebook.ts'
import { agreedRates } from '../../../../../lib/core/hours/rates.ts'
import { shareNames } from '../../../../../lib/words/shareText.ts'
import { ItemForm } from '../../../forms/ItemForm.tsx'
import { addNotebookItem } from '../../../server/actions.ts'
import { NotebookShell } from '../../../server/NotebookShell.tsx'
import { openNotebook } from '../../../server/opened.ts'

export const metadata = { title: 'Add an item' }

const titles: Readonly<Record<ItemKind, string>> = {
  section: 'Add a section',
  gate: 'Add a gate',
  common: 'Add a common cost',
}

const halves = { materials: { principle: 'equal' }, labour: { principle: 'equal' } }

export default async function AddPage({ params }: { params: Promise<{ notebookId: string; kind: string }> }) {
  const { notebookId, kind: named } = await params
  const opened = await openNotebook(notebookId)
  const kind = (['section', 'gate', 'common'] as const).find((one) => one === named) ?? notFound()
  return (
    <NotebookShell
      opened={opened}
      page={`add/${kind}`}
      title={titles[kind]}
      back={{ href: `/notebook/${notebookId}`, label: 'The line' }}
    >
      <ItemForm
        kind={kind}
        initial={{ name: '', materials: [], labour: [], share: halves }}
        base="new"
        save={addNotebookItem.bind(null, notebookId, kind)}
        names={{ ...shareNames(opened.notebook), rates: agreedRates(opened.notebook.arrangements) }}
      />
    </NotebookShell>
  )
}
