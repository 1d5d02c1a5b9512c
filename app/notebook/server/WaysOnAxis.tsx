import type { ReactNode } from 'react'
import type { Minor } from '../../../lib/core/amounts/money.ts'
import type { ForBoth } from '../../../lib/core/people/household.ts'
import type { ItemSideBySide } from '../../../lib/core/shares/sideBySide.ts'
import { moneyWords } from '../../../lib/words/money.ts'
import type { ShareNames } from '../../../lib/words/shareText.ts'
import { beforeCapsWords, rangeNote, rangeSentences } from '../../../lib/words/sideBySideText.ts'
import { Panel } from '../../ui/Panel.tsx'
import { WayBars } from '../../ui/WayBars.tsx'

/** What one way asks of each household. */
export type WayRow = {
  readonly label: string
  readonly a: Minor
  readonly b: Minor
  readonly chosen: boolean
  /** What it asks before caps, where they moved it. */
  readonly before?: ForBoth<Minor> | undefined
}

/** Ways to share as bars on one axis of money, with how far they are apart. `before` stands above the bars, `children` below. */
export function WaysOnAxis({
  rows,
  names,
  range,
  total,
  label,
  before,
  children,
}: {
  rows: readonly WayRow[]
  names: ShareNames
  range: ItemSideBySide['range']
  total: Minor
  label: string
  before?: ReactNode
  children?: ReactNode
}) {
  const money = (minor: Minor) => moneyWords(minor, names.currency)
  return (
    <Panel heading="On one axis" aside={<span className="figure">{money(total)}</span>}>
      {before}
      {total === 0n ? <p>There is nothing to share yet: no line has a price.</p> : null}
      <WayBars
        bars={rows.map((row) => ({
          label: row.label,
          a: Number(row.a),
          b: Number(row.b),
          aText: money(row.a),
          bText: money(row.b),
          chosen: row.chosen,
          before: row.before && {
            a: Number(row.before.a),
            text: beforeCapsWords(money(row.before.a), money(row.before.b), names),
          },
        }))}
        middle={range ? Number(range.middle.a) : undefined}
        nameA={names.a}
        nameB={names.b}
        label={label}
        zeroText={money(0n)}
        totalText={money(total)}
      />
      {range ? [...rangeSentences(range, names), rangeNote].map((one) => <p key={one}>{one}</p>) : null}
      {children}
    </Panel>
  )
}
