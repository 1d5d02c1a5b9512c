import { notFound } from 'next/navigation'
import { sealedPaperOf } from '../../../../lib/store/sealedPapers.ts'
import { fileForReader } from '../../server/forReader.ts'
import { openForReader } from '../../server/opening.ts'

/** The locked copy of the revision that stands, byte for byte. It says what things cost; it holds no conversation. */
export async function GET(
  _request: Request,
  { params }: { params: Promise<{ token: string }> },
): Promise<Response> {
  const opening = await openForReader((await params).token, 'locked-copy.pdf')
  const { revision } = opening.signed ?? notFound()
  // A reader makes none: where the households have none yet, there is none to hand on.
  const { bytes } = (await sealedPaperOf(revision.id)) ?? notFound()
  return fileForReader(opening, bytes, `-revision-${revision.number}-locked.pdf`, 'application/pdf')
}
