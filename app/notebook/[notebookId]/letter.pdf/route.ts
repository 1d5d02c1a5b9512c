import { notFound } from 'next/navigation'
import { openingAddress } from '../../../../lib/access/address.ts'
import { requireHousehold } from '../../../../lib/access/whoAsks.ts'
import { boundedBody } from '../../../../lib/files/boundedBody.ts'
import { letterPdf } from '../../../../lib/pdf/letterPdf.ts'
import { findEntryKey, hasLink } from '../../../../lib/store/entryKeys.ts'
import { letterRefusals } from '../../../../lib/words/letter/letterFaultText.ts'
import type { LetterInvitation } from '../../../../lib/words/letter/letterText.ts'
import { pressRefusals } from '../../../../lib/words/pressText.ts'
import { download, fileName } from '../../server/download.ts'
import { letterPaper } from '../../server/letterOf.ts'
import { type Opened, openNotebook } from '../../server/opened.ts'
import { isFromOwnPage } from '../../server/sameSite.ts'

type Params = { params: Promise<{ notebookId: string }> }

/** The first letter with a line for the address; without one once the second household is in. */
export async function GET(_request: Request, { params }: Params): Promise<Response> {
  const opened = await openNotebook((await params).notebookId)
  const bothIn = await hasLink(opened.notebookId, 'b')
  return paper(opened, { kind: bothIn ? 'none' : 'to be written in' })
}

/**
 * The first letter with an invitation on it. The token comes in the body (a form with `token`), since it is stored
 * nowhere: it has to be an invitation to this notebook that still waits.
 */
export async function POST(request: Request, { params }: Params): Promise<Response> {
  const { notebookId } = await requireHousehold((await params).notebookId)
  if (!isFromOwnPage(request.headers)) return plain(403, pressRefusals.foreign)
  const body = await boundedBody(request.body, 4096)
  const token = 'refused' in body ? '' : tokenIn(body.bytes)
  const key = await findEntryKey(token)
  if (key?.notebookId !== notebookId || key.kind !== 'invitation') notFound()
  if (key.usedAt !== undefined || key.revokedAt !== undefined)
    return plain(410, letterRefusals.invitationPastUse)
  return paper(await openNotebook(notebookId), { kind: 'address', address: openingAddress(token) })
}

function tokenIn(bytes: Uint8Array): string {
  return new URLSearchParams(new TextDecoder().decode(bytes)).get('token') ?? ''
}

async function paper(opened: Opened, invitation: LetterInvitation): Promise<Response> {
  const made = await letterPdf(letterPaper(opened, invitation))
  if ('lines' in made) return plain(422, letterRefusals.tooLong(made))
  return download(made.bytes, fileName(opened.notebook.title, '-first-letter.pdf'), 'application/pdf')
}

function plain(status: number, text: string): Response {
  return new Response(`${text}\n`, {
    status,
    headers: { 'Content-Type': 'text/plain; charset=utf-8', 'Cache-Control': 'private, no-store' },
  })
}
