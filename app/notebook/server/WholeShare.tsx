import { hoursText } from '../../../lib/core/amounts/hours.ts'
import { faultText } from '../../../lib/words/faultText.ts'
import { moneyWords } from '../../../lib/words/money.ts'
import { capSentence, shareNames } from '../../../lib/words/shareText.ts'
import { Panel } from '../../ui/Panel.tsx'
import { ShareBar } from '../../ui/ShareBar.tsx'
import type { Opened } from './opened.ts'

/** What the whole fence asks of each household; or why that can't be worked out yet. */
export function WholeShare({ opened }: { opened: Opened }) {
  const { notebook, statement } = opened
  const names = shareNames(notebook)
  if (!statement.ok) {
    return (
      <Panel heading="The whole fence">
        {statement.faults.map((fault) => (
          <p key={fault.path}>{faultText(fault)}</p>
        ))}
      </Panel>
    )
  }
  const { total, asked, beforeCaps, items } = statement.value
  const money = (minor: bigint) => moneyWords(minor, notebook.currency)
  const hours = items.reduce((sum, item) => ({ a: sum.a + item.hours.a, b: sum.b + item.hours.b }), {
    a: 0n,
    b: 0n,
  })
  const moved = capSentence(asked, names)
  return (
    <Panel heading="The whole fence" aside={<span className="figure">{money(total)}</span>}>
      <ShareBar
        a={Number(asked.a)}
        b={Number(asked.b)}
        aText={money(asked.a)}
        bText={money(asked.b)}
        nameA={names.a}
        nameB={names.b}
        label="Asked for, materials and labour"
      />
      {moved ? (
        <p>
          {moved} Before caps it is {money(beforeCaps.a)} for {names.a} and {money(beforeCaps.b)} for{' '}
          {names.b}.
        </p>
      ) : null}
      {hours.a + hours.b > 0n ? (
        <p>
          Hours asked: {hoursText(hours.a)} of {names.a}, {hoursText(hours.b)} of {names.b}.
        </p>
      ) : null}
    </Panel>
  )
}
