import { notFound } from 'next/navigation'
import { smallPicture } from '../../../../../../lib/files/smallPictures.ts'
import { askedFile } from '../../../../server/askedFile.ts'
import { filesFolder } from '../../../../server/filesFolder.ts'
import { damageAnswer, fileAnswer, stillStands, tagOf } from '../../../../server/storedFileAnswer.ts'

/** The small picture of a photo, for lists. */
export async function GET(
  request: Request,
  { params }: { params: Promise<{ notebookId: string; fileId: string }> },
): Promise<Response> {
  const file = await askedFile(await params)
  if (file.mediaType === 'application/pdf') notFound()
  const tag = tagOf(file, 'small')
  const held = stillStands(request, tag)
  if (held) return held
  const read = await smallPicture(await filesFolder(), file)
  if ('damage' in read) return damageAnswer(read.damage)
  return fileAnswer({ ...file, mediaType: 'image/webp' }, read.bytes, {
    tag,
    mimeType: 'image/webp',
    save: false,
  })
}
