import type { Amendment } from '../../../lib/words/summary/summaryInput.ts'
import { Panel } from '../../ui/Panel.tsx'

/** What differs from the newest revision that all have signed, item by item, in words. */
export function AmendmentView({ amends, heading, id }: { amends: Amendment; heading: string; id: string }) {
  return (
    <Panel heading={heading} id={id}>
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
