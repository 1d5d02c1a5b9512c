import { notFound } from 'next/navigation'
import { fileForReader } from '../../server/forReader.ts'
import { openForReader } from '../../server/opening.ts'

/** The canonical bytes of the newest revision that all have signed, for a link to everything. */
export async function GET(
  _request: Request,
  { params }: { params: Promise<{ token: string }> },
): Promise<Response> {
  const opening = await openForReader((await params).token, 'agreement.json')
  const { revision } = opening.signed ?? notFound()
  return fileForReader(
    opening,
    revision.canonicalText,
    `-revision-${revision.number}.json`,
    'application/json',
  )
}
