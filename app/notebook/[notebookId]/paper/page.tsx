import { notFound } from 'next/navigation'
import { printFonts } from '../../../../lib/files/printFonts.ts'
import { summaryPages } from '../../../../lib/pdf/summaryPaper.ts'
import {
  paperLargerWords,
  paperPageWords,
  paperSmallerWords,
  paperTitleWords,
  paperViewWords,
} from '../../../../lib/words/paperText.ts'
import { PaperLens } from '../../../ui/PaperLens.tsx'
import { PaperLink } from '../../../ui/work/PaperLink.tsx'
import { NotebookShell } from '../../server/NotebookShell.tsx'
import { openNotebook } from '../../server/opened.ts'
import { PaperSheet } from '../../server/PaperSheet.tsx'
import { draftSummary, revisionSummary } from '../../server/summaryOf.ts'

export const metadata = { title: 'The paper' }

/** The summary as it is printed, page by page: of the draft, or with `?revision=2` of a revision. */
export default async function PaperPage({
  params,
  searchParams,
}: {
  params: Promise<{ notebookId: string }>
  searchParams: Promise<{ revision?: string | string[] }>
}) {
  const { notebookId } = await params
  const opened = await openNotebook(notebookId)
  const { revision: asked } = (await searchParams) ?? {}
  const frozen =
    asked === undefined
      ? undefined
      : (opened.revisions.find(({ revision }) => String(revision.number) === asked) ?? notFound())
  const summary = frozen ? revisionSummary(frozen, opened.revisions) : draftSummary(opened)
  const { page, pages } = summaryPages(summary, printFonts())
  const pdf = `/notebook/${notebookId}/summary.pdf${frozen ? `?revision=${frozen.revision.number}` : ''}`
  return (
    <NotebookShell
      opened={opened}
      page="paper"
      title={paperTitleWords(frozen?.revision.number)}
      lead={paperViewWords}
      back={{ href: `/notebook/${notebookId}/sign`, label: 'Sign' }}
    >
      <div className="button-row">
        <PaperLink href={pdf}>Take it as a PDF</PaperLink>
      </div>
      <div className="paper-sheets">
        {pages.map((marks, index) => (
          <PaperLens
            // biome-ignore lint/suspicious/noArrayIndexKey: pages are told by their number
            key={index}
            label={paperPageWords(index + 1, pages.length)}
            larger={paperLargerWords(index + 1)}
            smaller={paperSmallerWords(index + 1)}
          >
            <PaperSheet marks={marks} page={page} label={paperPageWords(index + 1, pages.length)} />
          </PaperLens>
        ))}
      </div>
    </NotebookShell>
  )
}
