import { type Asker, requireHousehold } from '../../../../../lib/access/whoAsks.ts'
import { fileLimits } from '../../../../../lib/core/agreement/attachedFile.ts'
import type { FileRefusal } from '../../../../../lib/core/agreement/fileRefusal.ts'
import { boundedBody } from '../../../../../lib/files/boundedBody.ts'
import { shownName } from '../../../../../lib/files/fileNames.ts'
import { fileRefusalText } from '../../../../../lib/words/fileText.ts'
import { pressRefusals } from '../../../../../lib/words/pressText.ts'
import { isFromOwnPage } from '../../../server/sameSite.ts'
import { stopSending, whileSending } from '../../../server/sendings.ts'
import { addFile, type SentAbout } from '../../../server/storedFileAdding.ts'

type Asked = { readonly params: Promise<{ notebookId: string }> }

const longestSending = 100

/**
 * Takes one file as the body, so that the page can tell how far it is. What is about it stands in the header
 * `X-Mearing-File`: JSON with name, kind, caption and item, percent-encoded; `sending` in it is what the browser calls this
 * sending, to stop it by. Answers JSON: `added` with its name, `refused` with the reason, or `stopped`.
 */
export async function POST(request: Request, { params }: Asked): Promise<Response> {
  const asker = await requireHousehold((await params).notebookId)
  if (!isFromOwnPage(request.headers)) return answer(403, { refused: pressRefusals.foreign })
  const about = readAbout(request.headers.get('x-mearing-file'))
  const name = shownName(typeof about?.name === 'string' ? about.name : '')
  if (about === undefined) return refusal(name, { kind: 'unreadable-form' })
  const announced = Number(request.headers.get('content-length') ?? 0)
  if (announced > fileLimits.bytes)
    return refusal(name, { kind: 'too-large', limit: fileLimits.bytes, bytes: announced })
  const body = await boundedBody(request.body, fileLimits.bytes)
  if ('refused' in body) return refusal(name, body.refused)
  const sending = typeof about.sending === 'string' ? about.sending.slice(0, longestSending) : undefined
  const added = await whileSending(ownerOf(asker), sending, request.signal, (stop) =>
    addFile(asker, about, body.bytes, stop),
  )
  if (added.refused?.kind === 'stopped') return answer(409, { stopped: true })
  return added.refused ? refusal(added.name, added.refused) : answer(201, { added: added.name })
}

/**
 * Stops the household's own sending that is named by `?sending=`, as long as nothing of it is kept. Whether it came in time
 * is what that sending answers.
 */
export async function DELETE(request: Request, { params }: Asked): Promise<Response> {
  const asker = await requireHousehold((await params).notebookId)
  if (!isFromOwnPage(request.headers)) return new Response(null, { status: 403 })
  const sending = new URL(request.url).searchParams.get('sending') ?? ''
  stopSending(ownerOf(asker), sending.slice(0, longestSending))
  return new Response(null, { status: 204 })
}

function ownerOf({ notebookId, household }: Asker): string {
  return `${notebookId} ${household}`
}

type Sent = SentAbout & { readonly sending?: unknown }

function readAbout(header: string | null): Sent | undefined {
  try {
    const read: unknown = JSON.parse(decodeURIComponent(header ?? ''))
    return read !== null && typeof read === 'object' && !Array.isArray(read) ? (read as Sent) : undefined
  } catch {
    return undefined
  }
}

/** 413, 507 and 422: RFC 9110 sections 15.5.14 and 15.5.21, RFC 4918 section 11.5. */
function refusal(name: string, refused: FileRefusal): Response {
  const full = refused.kind === 'disk-full' || refused.kind === 'not-written'
  const status = refused.kind === 'too-large' ? 413 : full ? 507 : 422
  return answer(status, { refused: fileRefusalText(name, refused) })
}

type Answer = { readonly added: string } | { readonly refused: string } | { readonly stopped: true }

function answer(status: number, said: Answer): Response {
  return Response.json(said, { status, headers: { 'Cache-Control': 'private, no-store' } })
}
