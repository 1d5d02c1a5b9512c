import type { ReactNode } from 'react'
import type { Amendment } from '../../../lib/words/summary/summaryInput.ts'
import { Panel } from '../../ui/Panel.tsx'

/** What differs from the newest revision that all have signed, item by item, in words. `children` stand before it. */
export function AmendmentView({
  amends,
  heading,
  id,
  children,
}: {
  amends: Amendment
  heading: string
  id: string
  children?: ReactNode
}) {
  return (
    <Panel heading={heading} id={id}>
      {children}
      {amends.changes.length === 0 ? <p>Nothing differs in what the two agree on.</p> : null}
      {amends.changes.map(({ title, lines }) => (
        <Panel key={`${title} ${lines.join()}`} heading={title} level={3} tone="quiet">
          <ul>
            {lines.map((line) => (
              <li key={line}>{line}</li>
            ))}
          </ul>
        </Panel>
      ))}
    </Panel>
  )
}
