import { notFound } from 'next/navigation'
import { fileForReader } from '../../server/forReader.ts'
import { openForReader } from '../../server/opening.ts'
import { paperForReader } from '../../server/summaryForReader.ts'

/** The summary as the reader's link holds it: without costs, no file is attached. */
export async function GET(
  _request: Request,
  { params }: { params: Promise<{ token: string }> },
): Promise<Response> {
  const opening = await openForReader((await params).token, 'summary.pdf')
  const { pdf, ending } = (await paperForReader(opening)) ?? notFound()
  return fileForReader(opening, pdf, ending, 'application/pdf')
}
