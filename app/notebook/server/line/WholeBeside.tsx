import { hoursText } from '../../../../lib/core/amounts/hours.ts'
import { households } from '../../../../lib/core/people/household.ts'
import { meansLabel, meansWords, minusWords } from '../../../../lib/words/lookText.ts'
import { moneyWords } from '../../../../lib/words/money.ts'
import { capSentence, shareNames } from '../../../../lib/words/shareText.ts'
import { HouseholdTag } from '../../../ui/HouseholdTag.tsx'
import type { Opened } from '../opened.ts'
import { WholeBar } from '../WholeBar.tsx'
import { wholeHours } from '../wholeHours.ts'

/** Beside the drawing: what the whole fence asks of each household, in all, in money and in hours. */
export function WholeBeside({ opened }: { opened: Opened }) {
  const { notebook, statement } = opened
  const names = shareNames(notebook)
  if (!statement.ok) return <WholeBar opened={opened} moved="" />
  const { asked, inMoney } = statement.value
  const money = (minor: bigint) => moneyWords(minor, notebook.currency)
  const hours = wholeHours(statement.value)
  return (
    <WholeBar opened={opened} moved={capSentence(asked, names) ?? ''}>
      <p className="whole-means-label">{meansLabel}</p>
      <ul className="whole-means">
        {households.map((household) => (
          <li key={household}>
            <HouseholdTag household={household} name={names[household]} short />{' '}
            {meansWords(money(inMoney[household]), hoursText(hours[household]))}
          </li>
        ))}
      </ul>
      {inMoney.a < 0n || inMoney.b < 0n ? <p>{minusWords}</p> : null}
    </WholeBar>
  )
}
