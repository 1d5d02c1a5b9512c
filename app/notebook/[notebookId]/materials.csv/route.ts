import { shoppingList, shoppingListCsv } from '../../../../lib/words/takeoff/shoppingList.ts'
import { download, fileName } from '../../server/download.ts'
import { openNotebook } from '../../server/opened.ts'

/** Every cost line as comma-separated values, for a spreadsheet. */
export async function GET(
  _request: Request,
  { params }: { params: Promise<{ notebookId: string }> },
): Promise<Response> {
  const { notebook } = await openNotebook((await params).notebookId)
  // The byte order mark tells spreadsheets that the text is UTF-8.
  const text = `\uFEFF${shoppingListCsv(shoppingList(notebook))}`
  return download(text, fileName(notebook.title, '-materials.csv'), 'text/csv; charset=utf-8')
}
