import { historyOf } from '../../../../lib/store/historyChain.ts'
import { historyFile } from '../../../notebook/server/historyFile.ts'
import { fileForReader } from '../../server/forReader.ts'
import { openForReader } from '../../server/opening.ts'

/** Everything that happened in the notebook, with the hashes that chain it, for a link to everything. */
export async function GET(
  _request: Request,
  { params }: { params: Promise<{ token: string }> },
): Promise<Response> {
  const opening = await openForReader((await params).token, 'history.json')
  const text = historyFile(await historyOf(opening.link.notebookId))
  return fileForReader(opening, text, '-history.json', 'application/json')
}
