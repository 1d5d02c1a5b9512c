import { hoursText } from '../../../../lib/core/amounts/hours.ts'
import { households } from '../../../../lib/core/people/household.ts'
import { faultText } from '../../../../lib/words/faultText.ts'
import { meansLabel, meansWords, minusWords } from '../../../../lib/words/lookText.ts'
import { moneyWords } from '../../../../lib/words/money.ts'
import { capSentence, shareNames, waitingCapSentence } from '../../../../lib/words/shareText.ts'
import { HouseholdTag } from '../../../ui/HouseholdTag.tsx'
import { Panel } from '../../../ui/Panel.tsx'
import { ShareBar } from '../../../ui/ShareBar.tsx'
import type { Opened } from '../opened.ts'

/** Beside the drawing: what the whole fence asks of each household, in all, in money and in hours. */
export function WholeBeside({ opened }: { opened: Opened }) {
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
  const { total, asked, items, inMoney } = statement.value
  const money = (minor: bigint) => moneyWords(minor, notebook.currency)
  const hours = (household: 'a' | 'b') => items.reduce((sum, item) => sum + item.hours[household], 0n)
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
      {moved ? <p>{moved}</p> : null}
      {waitingCaps.map((cap) => (
        <p key={cap.household}>{waitingCapSentence(cap, names)}</p>
      ))}
      <p className="whole-means-label">{meansLabel}</p>
      <ul className="whole-means">
        {households.map((household) => (
          <li key={household}>
            <HouseholdTag household={household} name={names[household]} short />{' '}
            {meansWords(money(inMoney[household]), hoursText(hours(household)))}
          </li>
        ))}
      </ul>
      {inMoney.a < 0n || inMoney.b < 0n ? <p>{minusWords}</p> : null}
    </Panel>
  )
}
