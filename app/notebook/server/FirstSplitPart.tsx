import { firstSplitWords } from '../../../lib/words/firstSplitText.ts'
import { ButtonLink } from '../../ui/ButtonLink.tsx'
import { Panel } from '../../ui/Panel.tsx'
import type { Opened } from './opened.ts'

/** Where nothing is laid out yet: the short way to a first figure. */
export function FirstSplitPart({ opened }: { opened: Opened }) {
  const { notebook, notebookId } = opened
  if (notebook.sections.length + notebook.gates.length > 0) return null
  return (
    <Panel heading={firstSplitWords.title}>
      <p>{firstSplitWords.invitation}</p>
      <div className="button-row">
        <ButtonLink href={`/notebook/${notebookId}/first-split`} weight="main">
          {firstSplitWords.open}
        </ButtonLink>
      </div>
    </Panel>
  )
}
