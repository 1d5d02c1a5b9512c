import { boundedBody } from '../../../lib/files/boundedBody.ts'
import { readLimits } from '../../../lib/seal/readLimits.ts'
import { isFromOwnPage } from '../../notebook/server/sameSite.ts'
import { nextTurn, workStream } from '../../notebook/server/workStream.ts'
import { checkedRecord, noRecord } from '../checkedRecord.ts'

/**
 * Checks a PDF that comes as the body, so that its page can tell how far it is; nothing of it is kept. The only line is
 * `answer`, as the page shows it. The name of the file stays in the browser.
 */
export async function POST(request: Request): Promise<Response> {
  if (!isFromOwnPage(request.headers)) return new Response(null, { status: 403 })
  const announced = Number(request.headers.get('content-length') ?? 0) || 0
  const body = await boundedBody(request.body, readLimits.file)
  return workStream(request, async (_tell, stop) => {
    if ('refused' in body) {
      const size = Math.max(announced, readLimits.file + 1)
      return { answer: await checkedRecord('', size, async () => new Uint8Array()) }
    }
    if (body.bytes.length === 0) return { answer: noRecord }
    const read = async () => {
      // It may have waited for its turn.
      await nextTurn(stop)
      return body.bytes
    }
    return { answer: await checkedRecord('', body.bytes.length, read) }
  })
}
