import { historyOf } from '../../../../lib/store/historyChain.ts'
import { download, fileName } from '../../server/download.ts'
import { historyFile } from '../../server/historyFile.ts'
import { openNotebook } from '../../server/opened.ts'

/** Everything that happened in the notebook, with the hashes that chain it. */
export async function GET(
  _request: Request,
  { params }: { params: Promise<{ notebookId: string }> },
): Promise<Response> {
  const { notebookId, notebook } = await openNotebook((await params).notebookId)
  const text = historyFile(await historyOf(notebookId))
  return download(text, fileName(notebook.title, '-history.json'), 'application/json')
}
