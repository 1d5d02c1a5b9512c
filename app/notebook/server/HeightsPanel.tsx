import type { ReactNode } from 'react'
import type { Notebook } from '../../../lib/core/agreement/notebook.ts'
import type { TakeOff } from '../../../lib/core/takeoff/takeOff.ts'
import { groundSentences } from '../../../lib/words/takeoff/groundText.ts'
import {
  type HeightRow,
  heightRows,
  heightTitles,
  limitSentences,
} from '../../../lib/words/takeoff/heightText.ts'
import { FigureTable } from '../../ui/FigureTable.tsx'
import { Panel } from '../../ui/Panel.tsx'

/** Rows of one place with the same heights, such as a station with a post, as one row that names both. */
function together(rows: readonly HeightRow[]): readonly HeightRow[] {
  const joined: HeightRow[] = []
  for (const row of rows) {
    const last = joined.at(-1)
    if (last && last.at === row.at && last.a === row.a && last.b === row.b)
      joined[joined.length - 1] = { ...last, place: `${last.place}, ${row.place}` }
    else joined.push(row)
  }
  return joined
}

/** On a phone the column lies past the edge, where broken lines would only make the rows taller. */
function Unbroken({ text }: { text: string }) {
  return <span className="unbroken">{text}</span>
}

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
  const rows = together(heightRows(notebook, found))
  const titles = heightTitles(notebook)
  return (
    <Panel heading="Heights">
      {groundSentences(notebook, found).map((sentence) => (
        <p key={sentence}>{sentence}</p>
      ))}
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
            { label: titles.at },
            { label: titles.a, figures: true },
            { label: titles.b, figures: true },
            { label: titles.place },
          ]}
          rows={rows.map((row) => [row.at, row.a, row.b, <Unbroken key="place" text={row.place} />])}
        />
      )}
      {children}
    </Panel>
  )
}
