import type { ReactNode } from 'react'
import type { Notebook } from '../../../lib/core/agreement/notebook.ts'
import type { TakeOff } from '../../../lib/core/takeoff/takeOff.ts'
import type { WindCheck } from '../../../lib/core/takeoff/windCheck.ts'
import { itemTitle } from '../../../lib/words/itemWords.ts'
import {
  depthRows,
  depthRulesCaution,
  depthRuleTitles,
  windCatching,
  windCaution,
  windOutcome,
  windWorkings,
} from '../../../lib/words/takeoff/windText.ts'
import { Caution } from '../../ui/Caution.tsx'
import { FigureTable } from '../../ui/FigureTable.tsx'
import { Panel } from '../../ui/Panel.tsx'
import { Workings } from '../../ui/Workings.tsx'

/** A look at wind and posts, section by section: an orientation, never shown without its caution. */
export function WindPanel({
  notebook,
  found,
  children,
}: {
  notebook: Notebook
  found: TakeOff
  children: ReactNode
}) {
  return (
    <Panel heading="A look at wind and posts">
      <Caution title="No design and no approval">
        <p>{windCaution}</p>
      </Caution>
      {found.wind.length === 0 ? (
        <p>No section has a build-up yet, so there are no posts to look at.</p>
      ) : null}
      {found.wind.map((check) => (
        <SectionInWind key={check.item.index} notebook={notebook} check={check} />
      ))}
      {children}
    </Panel>
  )
}

function SectionInWind({ notebook, check }: { notebook: Notebook; check: WindCheck }) {
  const section = notebook.sections[check.item.index]
  if (section === undefined) return null
  const title = itemTitle({ kind: 'section', name: section.name, key: `item:${section.id}` })
  const rules = depthRows(notebook, check)
  return (
    <Panel heading={title} level={3} tone="quiet">
      {[windOutcome(notebook, check), ...windCatching(check)].map((sentence) => (
        <p key={sentence}>{sentence}</p>
      ))}
      <Workings steps={windWorkings(notebook, check)} />
      {rules.length === 0 ? null : (
        <>
          <FigureTable
            caption={`Usual depths to compare with: ${title}`}
            columns={[
              { label: depthRuleTitles.rule },
              { label: depthRuleTitles.depth, figures: true },
              { label: depthRuleTitles.reached },
            ]}
            rows={rules.map((row) => [row.rule, row.depth, row.reached])}
          />
          <p>{depthRulesCaution}</p>
        </>
      )}
    </Panel>
  )
}
