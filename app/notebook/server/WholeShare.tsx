import { hoursText } from '../../../lib/core/amounts/hours.ts'
import { faultText } from '../../../lib/words/faultText.ts'
import { moneyWords } from '../../../lib/words/money.ts'
import { capSentence, shareNames, waitingCapSentence } from '../../../lib/words/shareText.ts'
import { Panel } from '../../ui/Panel.tsx'
import { ShareBar } from '../../ui/ShareBar.tsx'
import type { Opened } from './opened.ts'

/** What the whole fence asks of each household; or why that can't be worked out yet. */
export function WholeShare({ opened }: { opened: Opened }) {
  const { notebook, statement, waitingCaps } = opened
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
  const { total, asked, beforeCaps, items, inMoney } = statement.value
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
      {waitingCaps.map((cap) => (
        <p key={cap.household}>{waitingCapSentence(cap, names)}</p>
      ))}
      <p>
        Goods and hours are part of it. If all goes as planned, {names.a} brings {money(inMoney.a)} of it in
        money and {names.b} {money(inMoney.b)}
        {inMoney.a < 0n || inMoney.b < 0n ? '; a minus is money that comes back' : ''}.
      </p>
      {hours.a + hours.b > 0n ? (
        <p>
          By the same shares, {hoursText(hours.a)} of the planned hours fall to {names.a} and{' '}
          {hoursText(hours.b)} to {names.b}.
        </p>
      ) : null}
    </Panel>
  )
}
