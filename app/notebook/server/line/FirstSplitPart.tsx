import type { ReactNode } from 'react'
import { firstSplitWords } from '../../../../lib/words/firstSplitText.ts'
import { ButtonLink } from '../../../ui/ButtonLink.tsx'
import { Panel } from '../../../ui/Panel.tsx'
import type { Opened } from '../opened.ts'
import { nothingLaidOut } from './nothingLaidOut.ts'

/** Where nothing is laid out yet: the short way to a first figure. `children` stand below, as another way. */
export function FirstSplitPart({ opened, children }: { opened: Opened; children?: ReactNode }) {
  if (!nothingLaidOut(opened)) return null
  return (
    <Panel heading={firstSplitWords.begin}>
      <p>{firstSplitWords.invitation}</p>
      <div className="button-row">
        <ButtonLink href={`/notebook/${opened.notebookId}/first-split`} weight="main">
          {firstSplitWords.open}
        </ButtonLink>
      </div>
      {children}
    </Panel>
  )
}
