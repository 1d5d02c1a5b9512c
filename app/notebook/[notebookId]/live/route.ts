import { notFound } from 'next/navigation'
import { readSessionCookie } from '../../../../lib/access/sessionCookie.ts'
import { requireHousehold } from '../../../../lib/access/whoAsks.ts'
import { liveStream } from '../../server/liveStream.ts'

const longestPlace = 300

/** What changes while a page is open, as it changes. `?at=` is the page: the end of its address within the notebook. */
export async function GET(
  request: Request,
  { params }: { params: Promise<{ notebookId: string }> },
): Promise<Response> {
  const { notebookId } = await params
  const { household } = await requireHousehold(notebookId)
  const session = (await readSessionCookie(notebookId)) ?? notFound()
  const at = (new URL(request.url).searchParams.get('at') ?? '').slice(0, longestPlace)
  return new Response(liveStream(notebookId, { household, at }, session, request), {
    headers: {
      'Content-Type': 'text/event-stream; charset=utf-8',
      // Not to be compressed either: that would hold words back until there are enough of them.
      'Cache-Control': 'private, no-store, no-transform',
      'X-Accel-Buffering': 'no',
    },
  })
}
