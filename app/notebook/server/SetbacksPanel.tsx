import type { ReactNode } from 'react'
import type { Notebook } from '../../../lib/core/agreement/notebook.ts'
import type { TakeOff } from '../../../lib/core/takeoff/takeOff.ts'
import {
  crossingSentences,
  setbackRows,
  setbackTitles,
  stripSentences,
} from '../../../lib/words/takeoff/setbackText.ts'
import { FigureTable } from '../../ui/FigureTable.tsx'
import { FoldedPart } from '../../ui/FoldedPart.tsx'
import { Panel } from '../../ui/Panel.tsx'

/** Land of each household on the other side, and whether holes reach across the line. */
export function SetbacksPanel({
  notebook,
  found,
  children,
}: {
  notebook: Notebook
  found: TakeOff
  children: ReactNode
}) {
  const sentences = [...stripSentences(notebook, found), ...crossingSentences(notebook, found)]
  const rows = setbackRows(notebook, found)
  return (
    <Panel heading="How the fence lies to the line">
      {sentences.length === 0 ? (
        <p>Nothing can be said yet: the stations say no setback, and no post is planned.</p>
      ) : null}
      {sentences.map((sentence) => (
        <p key={sentence}>{sentence}</p>
      ))}
      {rows.length === 0 ? null : (
        <FoldedPart summary="Post by post">
          <FigureTable
            caption="Each post and the line"
            columns={[
              { label: setbackTitles.post },
              { label: setbackTitles.at, figures: true },
              { label: setbackTitles.stands },
              { label: setbackTitles.reach, figures: true },
              { label: setbackTitles.crosses },
            ]}
            rows={rows.map((row) => [row.post, row.at, row.stands, row.reach, row.crosses])}
          />
        </FoldedPart>
      )}
      {children}
    </Panel>
  )
}
