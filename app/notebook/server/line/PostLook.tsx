import type { TakeOff } from '../../../../lib/core/takeoff/takeOff.ts'
import { postKindWords } from '../../../../lib/words/labels.ts'
import { postRows, postTitle } from '../../../../lib/words/lookText.ts'
import { ButtonLink } from '../../../ui/ButtonLink.tsx'
import { DefinitionList } from '../../../ui/DefinitionList.tsx'
import { Look } from '../../../ui/look/LookAround.tsx'
import type { Opened } from '../opened.ts'
import { lookId } from './lookAddress.ts'

/** One post: where it stands, its hole, its length, and who bears it. Its size is typed in the build-up. */
export function PostLook({ opened, found, place }: { opened: Opened; found: TakeOff; place: number }) {
  const { notebook, notebookId } = opened
  const post = found.posts[place]?.post
  const item = post && notebook[post.item.list][post.item.index]
  if (post === undefined || item === undefined) return null
  return (
    <Look id={lookId('post', place)} title={postTitle(notebook, found, place, postKindWords[post.kind])}>
      <DefinitionList items={postRows(notebook, found, place)} />
      <div className="button-row">
        <ButtonLink href={`/notebook/${notebookId}/build-up/${encodeURIComponent(item.id)}`}>
          Open the build-up
        </ButtonLink>
      </div>
    </Look>
  )
}
