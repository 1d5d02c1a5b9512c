import { notFound } from 'next/navigation'
import { askedRevision } from '../../server/askedRevision.ts'
import { download, fileName } from '../../server/download.ts'
import { openNotebook } from '../../server/opened.ts'

/** The canonical bytes of one revision: their SHA-256 is the printed hash. */
export async function GET(
  request: Request,
  { params }: { params: Promise<{ notebookId: string }> },
): Promise<Response> {
  const opened = await openNotebook((await params).notebookId)
  const { revision } = askedRevision(opened, request) ?? notFound()
  return download(
    revision.canonicalText,
    fileName(opened.notebook.title, `-revision-${revision.number}.json`),
    'application/json',
  )
}
