import type { Notebook } from '../../../../lib/core/agreement/notebook.ts'
import type { TakeOff } from '../../../../lib/core/takeoff/takeOff.ts'
import { FigureTable } from '../../../ui/FigureTable.tsx'
import { FoldedPart } from '../../../ui/FoldedPart.tsx'
import { plannedPosts } from '../plannedPosts.ts'

/** The posts of a section as a table, where the fence has too many to look at one by one. */
export function PostsOfSection({
  notebook,
  found,
  index,
}: {
  notebook: Notebook
  found: TakeOff
  index: number
}) {
  const posts = plannedPosts(notebook, found, index)
  if (posts.length === 0) return null
  return (
    <FoldedPart summary={`Its ${posts.length} posts`}>
      <FigureTable
        caption="Posts from the start"
        columns={[
          { label: 'Post' },
          { label: 'Kind' },
          { label: 'Stands at', figures: true },
          { label: 'Hole, deep', figures: true },
        ]}
        rows={posts.map(({ kind, stands, depth }, at) => [String(at + 1), kind, stands, depth || 'none'])}
      />
    </FoldedPart>
  )
}
