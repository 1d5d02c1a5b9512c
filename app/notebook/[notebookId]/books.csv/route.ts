import { booksCsv } from '../../../../lib/words/booksCsv.ts'
import { booksFigures } from '../../server/booksFigures.ts'
import { download, fileName } from '../../server/download.ts'
import { openNotebook } from '../../server/opened.ts'

/** Planned against actual as comma-separated values, for a spreadsheet. */
export async function GET(
  _request: Request,
  { params }: { params: Promise<{ notebookId: string }> },
): Promise<Response> {
  const { notebook } = booksFigures(await openNotebook((await params).notebookId))
  // The byte order mark tells spreadsheets that the text is UTF-8.
  const text = `\uFEFF${booksCsv(notebook)}`
  return download(text, fileName(notebook.title, '-books.csv'), 'text/csv; charset=utf-8')
}
