import { digitsOf } from '../../../../lib/core/shares/statement.ts'
import { firstSplitWords } from '../../../../lib/words/firstSplitText.ts'
import { shareNames } from '../../../../lib/words/shareText.ts'
import { FirstSplitForm } from '../../forms/FirstSplitForm.tsx'
import { keepFirstSplit } from '../../server/firstSplitActions.ts'
import { NotebookShell } from '../../server/NotebookShell.tsx'
import { openNotebook } from '../../server/opened.ts'

export const metadata = { title: firstSplitWords.title }

const figures = { length: '', height: '', materials: '', hours: '', rate: '', frontA: '', frontB: '' }

/** The short way in: one stretch of fence, what it costs, and what each household would be asked for. */
export default async function FirstSplitPage({ params }: { params: Promise<{ notebookId: string }> }) {
  const { notebookId } = await params
  const opened = await openNotebook(notebookId)
  const { household, notebook } = opened
  return (
    <NotebookShell
      opened={opened}
      page="first-split"
      title={firstSplitWords.title}
      lead={firstSplitWords.lead}
      back={{ href: `/notebook/${notebookId}`, label: 'The line' }}
    >
      <FirstSplitForm
        initial={{ ...figures, basic: '', by: household, way: 'equal', wants: household }}
        save={keepFirstSplit.bind(null, notebookId)}
        names={shareNames(notebook)}
        digits={digitsOf(notebook)}
      />
    </NotebookShell>
  )
}
