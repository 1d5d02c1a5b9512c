import { recordPack } from '../../../../lib/files/recordPack.ts'
import { fileName } from '../../server/download.ts'
import { openNotebook } from '../../server/opened.ts'
import { recordPackOf } from '../../server/recordPackOf.ts'

/** All that is kept of the notebook, in one zip, sent as it is made. */
export async function GET(
  _request: Request,
  { params }: { params: Promise<{ notebookId: string }> },
): Promise<Response> {
  const opened = await openNotebook((await params).notebookId)
  const pack = recordPack(await recordPackOf({ ...opened, notebook: opened.asAgreed }, new Date()))
  return new Response(pack, {
    headers: {
      'Content-Type': 'application/zip',
      'Content-Disposition': `attachment; filename="${fileName(opened.notebook.title, '-record-pack.zip')}"`,
      'Cache-Control': 'private, no-store',
    },
  })
}
