import { notFound } from 'next/navigation'
import { itemKey } from '../../../../../lib/core/agreement/agreedItems.ts'
import { takeOff } from '../../../../../lib/core/takeoff/takeOff.ts'
import { kindOf, readPart } from '../../../../../lib/forms/parts.ts'
import { fingerprintOf } from '../../../../../lib/store/fingerprint.ts'
import { itemTitle } from '../../../../../lib/words/itemWords.ts'
import { FigureTable } from '../../../../ui/FigureTable.tsx'
import { Panel } from '../../../../ui/Panel.tsx'
import { MeasuredForm } from '../../../forms/MeasuredForm.tsx'
import { saveNotebookPart } from '../../../server/actions.ts'
import { FoundPanel } from '../../../server/FindingList.tsx'
import { findingsHere } from '../../../server/findingField.ts'
import { itemIdOf } from '../../../server/itemIdOf.ts'
import { NotebookShell } from '../../../server/NotebookShell.tsx'
import { openNotebook } from '../../../server/opened.ts'
import { plannedPosts } from '../../../server/plannedPosts.ts'
import { standingOf } from '../../../server/standingOf.ts'

export const metadata = { title: 'Posts as measured' }

export default async function MeasuredPage({
  params,
}: {
  params: Promise<{ notebookId: string; itemId: string }>
}) {
  const { notebookId, itemId } = await params
  const opened = await openNotebook(notebookId)
  const { document, notebook } = opened
  const id = itemIdOf(itemId) ?? notFound()
  if (kindOf(document, id) !== 'section') notFound()
  const part = { part: 'item', id } as const
  const draft = readPart(document, part) ?? notFound()
  const { item } = standingOf(opened, itemKey(id))
  const here = `/notebook/${notebookId}/measured/${encodeURIComponent(id)}`
  const found = takeOff(notebook)
  const findings = findingsHere(here, notebookId, notebook, found.findings)
  const posts = plannedPosts(
    notebook,
    found,
    notebook.sections.findIndex((section) => section.id === id),
  )
  return (
    <NotebookShell
      opened={opened}
      page={`measured/${itemId}`}
      title={`Posts of ${itemTitle(item)} as measured`}
      lead="Rock and roots move holes. Write down where a post stands and how deep its hole is; that then counts, and no longer the plan."
      back={{
        href: `/notebook/${notebookId}/item/${encodeURIComponent(id)}`,
        label: itemTitle(item),
      }}
    >
      <Panel heading="Where the posts are">
        {posts.length === 0 ? (
          <p>No post is planned yet: give the section its two ends and a build-up first.</p>
        ) : (
          <FigureTable
            caption="From its beginning"
            columns={[
              { label: 'Post' },
              { label: 'Planned at', figures: true },
              { label: 'Stands at', figures: true },
              { label: 'Off by' },
              { label: 'Hole deep', figures: true },
              { label: 'Why' },
            ]}
            rows={posts.map((post, index) => [
              `${index + 1}: ${post.kind}`,
              post.planned,
              post.stands,
              post.off,
              post.depth || 'no hole',
              post.why,
            ])}
          />
        )}
      </Panel>
      <FoundPanel notebookId={notebookId} notebook={notebook} findings={findings.findings} here={here} />
      <MeasuredForm
        initial={draft}
        base={fingerprintOf(draft)}
        save={saveNotebookPart.bind(null, notebookId, part)}
        planned={posts.map(({ kind, planned, plannedDepth }) => ({
          about: `This is a ${kind}, planned at ${planned}${plannedDepth === '' ? '' : `; its hole is planned ${plannedDepth} deep`}.`,
        }))}
        findings={findings.atFields}
      />
    </NotebookShell>
  )
}
