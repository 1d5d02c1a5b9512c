import { heldUnder, holdBriefly } from '../../../../lib/files/heldBriefly.ts'
import { type PackEntry, recordPack } from '../../../../lib/files/recordPack.ts'
import { streamed } from '../../server/download.ts'
import { type Opened, openNotebook } from '../../server/opened.ts'
import { recordPackOf, type Watching } from '../../server/recordPackOf.ts'
import { isFromOwnPage } from '../../server/sameSite.ts'
import { unlessGone, workStream } from '../../server/workStream.ts'

type Asked = { readonly params: Promise<{ notebookId: string }> }

/**
 * All that is kept of the notebook, in one zip: with `?ready=` the one that was made ready just before, else one made now,
 * which a plain link without script asks for.
 */
export async function GET(request: Request, { params }: Asked): Promise<Response> {
  const opened = await openNotebook((await params).notebookId)
  const token = new URL(request.url).searchParams.get('ready')
  const made = heldUnder('record pack', owner(opened), token) as readonly PackEntry[] | undefined
  const stop = request.signal
  return unlessGone(request, async () => {
    const pack = recordPack(made ?? (await entriesOf(opened, { stop, ready: () => undefined })))
    return streamed(pack, opened.notebook.title, '-record-pack.zip', 'application/zip')
  })
}

/**
 * Makes the pack ready, and tells how far it is: `ready` of `all` papers and files, and at the end `token`, to get it by, and `bytes`,
 * within two minutes; null where too much is held already, and it is made anew when it is asked for. Whoever breaks off ends the making.
 */
export async function POST(request: Request, { params }: Asked): Promise<Response> {
  const opened = await openNotebook((await params).notebookId)
  if (!isFromOwnPage(request.headers)) return new Response(null, { status: 403 })
  return workStream(request, async (tell, stop) => {
    const ready = (count: number, all: number) => tell({ ready: count, all })
    const entries = await entriesOf(opened, { stop, ready })
    const bytes = entries.reduce((sum, { size }) => sum + size, 0)
    return { token: holdBriefly('record pack', owner(opened), entries) ?? null, bytes }
  })
}

function owner({ notebookId, household }: Opened): string {
  return `${notebookId} ${household}`
}

function entriesOf(opened: Opened, watching: Watching): Promise<readonly PackEntry[]> {
  return recordPackOf({ ...opened, notebook: opened.asAgreed }, new Date(), watching)
}
