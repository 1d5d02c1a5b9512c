import { datesCalendar } from '../../../../lib/calendar/datesCalendar.ts'
import { sha256Hex } from '../../../../lib/store/sha256.ts'
import { download, fileName } from '../../server/download.ts'
import { instalmentsNow } from '../../server/instalmentsNow.ts'
import { openNotebook } from '../../server/opened.ts'

/** The dates as a calendar file, for a phone. */
export async function GET(
  _request: Request,
  { params }: { params: Promise<{ notebookId: string }> },
): Promise<Response> {
  const opened = await openNotebook((await params).notebookId)
  const { notebook, notebookId } = opened
  const about = {
    // The notebook's address is no part of it: a calendar is shown to others.
    uidOf: (what: string, nth: number) => `${sha256Hex(`${notebookId} ${nth} ${what}`).slice(0, 32)}@mearing`,
    madeAt: new Date(),
  }
  const text = datesCalendar(notebook, about, instalmentsNow(opened)?.standing)
  return download(text, fileName(notebook.title, '-dates.ics'), 'text/calendar; charset=utf-8')
}
