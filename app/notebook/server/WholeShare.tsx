import { hoursText } from '../../../lib/core/amounts/hours.ts'
import { moneyWords } from '../../../lib/words/money.ts'
import { capSentence, shareNames } from '../../../lib/words/shareText.ts'
import type { Opened } from './opened.ts'
import { WholeBar } from './WholeBar.tsx'
import { wholeHours } from './wholeHours.ts'

/** What the whole fence asks of each household; or why that can't be worked out yet. */
export function WholeShare({ opened }: { opened: Opened }) {
  const { notebook, statement } = opened
  const names = shareNames(notebook)
  if (!statement.ok) return <WholeBar opened={opened} moved="" />
  const { asked, beforeCaps, inMoney } = statement.value
  const money = (minor: bigint) => moneyWords(minor, notebook.currency)
  const hours = wholeHours(statement.value)
  const moved = capSentence(asked, names)
  const before = `Before caps it is ${money(beforeCaps.a)} for ${names.a} and ${money(beforeCaps.b)} for ${names.b}.`
  return (
    <WholeBar opened={opened} moved={moved ? `${moved} ${before}` : ''}>
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
    </WholeBar>
  )
}
