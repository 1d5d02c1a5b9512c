import Link from 'next/link'
import type { Notebook } from '../../../lib/core/agreement/notebook.ts'
import type { Finding } from '../../../lib/core/takeoff/finding.ts'
import { findingName } from '../../../lib/words/takeoff/findingPlace.ts'
import { findingText } from '../../../lib/words/takeoff/findingText.ts'
import { Panel } from '../../ui/Panel.tsx'
import { findingField } from './findingField.ts'

/** What clashes or lacks, as sentences, each leading to the field where it is typed. `here` is the page they stand on. */
export function FindingList({
  notebookId,
  notebook,
  findings,
  here,
}: {
  notebookId: string
  notebook: Notebook
  findings: readonly Finding[]
  here?: string | undefined
}) {
  if (findings.length === 0) return null
  return (
    <ul className="finding-list">
      {findings.map((finding) => {
        const { page, href } = findingField(notebookId, notebook, finding)
        const place = findingName(notebook, finding)
        // A plain link within the page, so that the browser says when the address's end changes.
        return (
          <li key={`${finding.path} ${finding.kind}`}>
            {page === here ? (
              <a href={href.slice(page.length)}>{place}</a>
            ) : (
              <Link href={href} prefetch={false}>
                {place}
              </Link>
            )}
            : {findingText(notebook, finding)}
          </li>
        )
      })}
    </ul>
  )
}

/** The list as a panel of its own, above the form whose fields it leads to. Nothing is shown where nothing was found. */
export function FoundPanel(props: Parameters<typeof FindingList>[0]) {
  if (props.findings.length === 0) return null
  return (
    <Panel heading="To look at">
      <p>None of this stops you from saving or signing. Each line leads to its field.</p>
      <FindingList {...props} />
    </Panel>
  )
}
