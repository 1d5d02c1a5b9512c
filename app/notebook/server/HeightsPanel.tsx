import type { ReactNode } from 'react'
import type { Notebook } from '../../../lib/core/agreement/notebook.ts'
import type { TakeOff } from '../../../lib/core/takeoff/takeOff.ts'
import { heightRows, heightTitles, limitSentences } from '../../../lib/words/takeoff/heightText.ts'
import { FigureTable } from '../../ui/FigureTable.tsx'
import { Panel } from '../../ui/Panel.tsx'

/** The fence's height as each household sees it, held against the limits that somebody named. */
export function HeightsPanel({
  notebook,
  found,
  children,
}: {
  notebook: Notebook
  found: TakeOff
  children: ReactNode
}) {
  const limits = limitSentences(notebook, found)
  const rows = heightRows(notebook, found)
  const titles = heightTitles(notebook)
  return (
    <Panel heading="Heights">
      {limits.length > 0 ? (
        <ul>
          {limits.map((sentence) => (
            <li key={sentence}>{sentence}</li>
          ))}
        </ul>
      ) : (
        <p>
          {notebook.line.limits.length === 0
            ? 'Nobody has named a limit yet. This program knows no rules: ask the local permit office.'
            : 'Nothing stands yet where the limits hold.'}
        </p>
      )}
      {rows.length === 0 ? (
        <p>No height is known yet: give the sections their ends and a height.</p>
      ) : (
        <FigureTable
          caption="Top of the fence over each household’s own ground"
          columns={[
            { label: titles.place },
            { label: titles.at, figures: true },
            { label: titles.a, figures: true },
            { label: titles.b, figures: true },
          ]}
          rows={rows.map((row) => [row.place, row.at, row.a, row.b])}
        />
      )}
      {children}
    </Panel>
  )
}
