import { documentText } from '../../../../lib/forms/parts.ts'
import { fileForReader } from '../../server/forReader.ts'
import { openForReader } from '../../server/opening.ts'

/** The notebook file as it stands, books included, for a link to everything. */
export async function GET(
  _request: Request,
  { params }: { params: Promise<{ token: string }> },
): Promise<Response> {
  const opening = await openForReader((await params).token, 'notebook.json')
  return fileForReader(opening, documentText(opening.document), '.json', 'application/json')
}
