import { readBytes } from '../../../../../lib/files/storedBytes.ts'
import { askedFile } from '../../../server/askedFile.ts'
import { filesFolder } from '../../../server/filesFolder.ts'
import { damageAnswer, fileAnswer, stillStands, tagOf } from '../../../server/storedFileAnswer.ts'

/** One file of the notebook, as it was kept; with `?save` always to be saved. */
export async function GET(
  request: Request,
  { params }: { params: Promise<{ notebookId: string; fileId: string }> },
): Promise<Response> {
  const file = await askedFile(await params)
  const tag = tagOf(file, 'whole')
  const held = stillStands(request, tag)
  if (held) return held
  const read = await readBytes(await filesFolder(), file.sha256)
  if ('damage' in read) return damageAnswer(read.damage)
  const save = new URL(request.url).searchParams.has('save')
  return fileAnswer(file, read.bytes, { tag, mimeType: file.mediaType, save })
}
