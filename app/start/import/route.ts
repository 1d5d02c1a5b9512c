import { wholeFile } from '../../../lib/core/faults.ts'
import { boundedBody } from '../../../lib/files/boundedBody.ts'
import { holdBriefly } from '../../../lib/files/heldBriefly.ts'
import { importRefusals } from '../../../lib/words/workText.ts'
import { checkedImport, fileFaults, importOwner, largestImport } from '../../notebook/server/readImport.ts'
import { isFromOwnPage } from '../../notebook/server/sameSite.ts'
import { toStore } from '../../notebook/server/toStore.ts'
import { nextTurn, workStream } from '../../notebook/server/workStream.ts'

/**
 * Reads and checks a notebook file that comes as the body, and stores nothing: it is held for the press that stores it. Tells
 * `stage` `reading`, then `checking`; the last line is `held`, the token to store it by, or `refused` with
 * the faults. Where too much is held already `held` is null, and the file is sent once more with the press.
 */
export async function POST(request: Request): Promise<Response> {
  if (!isFromOwnPage(request.headers))
    return Response.json({ refused: importRefusals.foreign }, { status: 403 })
  const body = await boundedBody(request.body, largestImport)
  return workStream(request, async (tell, stop) => {
    if ('refused' in body) return { refused: tooLarge(request.headers) }
    tell({ stage: 'reading' })
    await nextTurn(stop)
    const read = checkedImport(body.bytes)
    if (!read.ok) return { refused: fileFaults(read.faults) }
    tell({ stage: 'checking' })
    await nextTurn(stop)
    const checked = toStore(read.value.document)
    if (!checked.ok) return { refused: fileFaults(checked.faults) }
    await nextTurn(stop)
    return { held: holdBriefly('import', importOwner, body.bytes) ?? null }
  })
}

/** The only refusal that anybody can read: where the connection broke off, nobody is there any more. */
function tooLarge(headers: Headers): string {
  const bytes = Math.max(largestImport + 1, Number(headers.get('content-length') ?? 0) || 0)
  return fileFaults([{ path: wholeFile, kind: 'too-large', bytes, limit: largestImport }])
}
