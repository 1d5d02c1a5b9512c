import { documentText } from '../../../../lib/forms/parts.ts'
import { download, fileName } from '../../server/download.ts'
import { openNotebook } from '../../server/opened.ts'

/** The notebook file as it stands, books included. */
export async function GET(
  _request: Request,
  { params }: { params: Promise<{ notebookId: string }> },
): Promise<Response> {
  const opened = await openNotebook((await params).notebookId)
  return download(documentText(opened.document), fileName(opened.notebook.title, '.json'), 'application/json')
}
