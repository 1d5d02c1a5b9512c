import { notFound } from 'next/navigation'
import { recordPack } from '../../../../lib/files/recordPack.ts'
import { frozenAccounts } from '../../../notebook/server/account/frozenAccounts.ts'
import { recordPackOf } from '../../../notebook/server/recordPackOf.ts'
import { unlessGone } from '../../../notebook/server/workStream.ts'
import { everythingLocked } from '../../server/everythingLocked.ts'
import { streamForReader } from '../../server/forReader.ts'
import { openForReader } from '../../server/opening.ts'

/** All that is kept of the notebook, in one zip, for a link to everything. */
export async function GET(
  request: Request,
  { params }: { params: Promise<{ token: string }> },
): Promise<Response> {
  const opening = await openForReader((await params).token, 'record-pack.zip')
  if (!(await everythingLocked(opening))) notFound()
  const { link } = opening
  const accounts = await frozenAccounts(link.notebookId)
  const packed = { ...opening, accounts, notebookId: link.notebookId, household: link.createdBy }
  const watching = { stop: request.signal, ready: () => undefined }
  return unlessGone(request, async () => {
    const pack = recordPack(await recordPackOf(packed, new Date(), watching))
    return streamForReader(opening, pack, '-record-pack.zip', 'application/zip')
  })
}
