import type { Notebook } from '../../../lib/core/agreement/notebook.ts'
import type { Way } from '../../../lib/core/shares/shareUnder.ts'
import type { WholeSideBySide } from '../../../lib/core/shares/sideBySide.ts'
import { moneyWords } from '../../../lib/words/money.ts'
import type { ShareNames } from '../../../lib/words/shareText.ts'
import { followWords, wayWords } from '../../../lib/words/sideBySideText.ts'
import { FigureTable } from '../../ui/FigureTable.tsx'
import { ProposeWay } from './ProposeWay.tsx'
import { WaysOnAxis } from './WaysOnAxis.tsx'
import { proposeWayHref, wayShares } from './wayShares.ts'

/** What the whole fence asks for when its items follow one way each, after caps, beside what is chosen. */
export function WholeWays({
  found,
  names,
  notebookId,
  notebook,
}: {
  found: WholeSideBySide
  names: ShareNames
  notebookId: string
  notebook: Notebook
}) {
  const money = (minor: bigint) => moneyWords(minor, names.currency)
  const { ways, chosen, range, total, unusable, items } = found
  const rows = ways.map((one) => ({
    way: one.way as Way | undefined,
    label: wayWords(one.way, names),
    ...one.asked,
    before: one.beforeCaps,
    chosen: one.chosen,
    follow: followWords(one.follow, items),
  }))
  const { a, b } = chosen.asked
  const all = ways.some((one) => one.chosen)
    ? rows
    : [
        {
          way: undefined,
          label: 'As it is now',
          a,
          b,
          before: chosen.beforeCaps,
          chosen: true,
          follow: 'each as chosen',
        },
        ...rows,
      ]
  const capped = all.some((row) => row.before.a !== row.a)
  return (
    <WaysOnAxis
      rows={all.map((row) => ({ ...row, before: row.before.a === row.a ? undefined : row.before }))}
      names={names}
      range={range}
      total={total}
      label="What each way asks of the two households, after caps"
    >
      <FigureTable
        caption="The same in figures, after caps"
        columns={[
          { label: 'Way' },
          { label: names.a, figures: true },
          { label: names.b, figures: true },
          ...(capped ? [{ label: 'Before caps', figures: true }] : []),
          { label: 'Items that follow it' },
          { label: 'Propose' },
        ]}
        rows={all.map((row) => [
          row.label,
          money(row.a),
          money(row.b),
          ...(capped ? [`${money(row.before.a)} to ${money(row.before.b)}`] : []),
          row.follow,
          row.chosen || row.way === undefined ? (
            'Chosen now'
          ) : wayShares(notebook, row.way, undefined).size === 0 ? (
            'They follow it already'
          ) : (
            <ProposeWay key="propose" href={proposeWayHref(notebookId, row.way)} what={row.label} />
          ),
        ])}
        foot={
          range
            ? [['The middle', money(range.middle.a), money(range.middle.b), ...(capped ? [''] : []), '', '']]
            : []
        }
      />
      <p>
        Items that can’t follow a way stay as they are chosen now. Proposing one changes nothing until the
        other household accepts. Choose for each item on its own page.
      </p>
      {unusable.length === 0 ? null : (
        <p>No item has what it takes for: {unusable.map((way) => wayWords(way, names)).join(', ')}.</p>
      )}
    </WaysOnAxis>
  )
}
