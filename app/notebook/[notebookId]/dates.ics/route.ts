import { datesCalendar } from '../../../../lib/calendar/datesCalendar.ts'
import { sha256Hex } from '../../../../lib/store/sha256.ts'
import { download, fileName } from '../../server/download.ts'
import { openNotebook } from '../../server/opened.ts'

/** The dates as a calendar file, for a phone. */
export async function GET(
  _request: Request,
  { params }: { params: Promise<{ notebookId: string }> },
): Promise<Response> {
  const { notebook, notebookId } = await openNotebook((await params).notebookId)
  const text = datesCalendar(notebook, {
    // The notebook's address is no part of it: a calendar is shown to others.
    uidOf: (what, nth) => `${sha256Hex(`${notebookId} ${nth} ${what}`).slice(0, 32)}@mearing`,
    madeAt: new Date(),
  })
  return download(text, fileName(notebook.title, '-dates.ics'), 'text/calendar; charset=utf-8')
}
