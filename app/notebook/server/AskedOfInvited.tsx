import { hoursText } from '../../../lib/core/amounts/hours.ts'
import { type AskedAtMost, askedAtMost } from '../../../lib/core/shares/askedAtMost.ts'
import { askedAtMostWords, nothingBinds, ofItWords } from '../../../lib/words/firstAnswerText.ts'
import { householdName } from '../../../lib/words/labels.ts'
import { moneyWords } from '../../../lib/words/money.ts'
import { halvesForNowWords } from '../../../lib/words/shareFaultText.ts'
import { Panel } from '../../ui/Panel.tsx'
import { agreedByBoth, type Opened } from './opened.ts'
import { askedMeanwhile, gatesByHalves, shareFaults } from './shareFaults.ts'
import { standingOf } from './standingOf.ts'
import { wholeHours } from './wholeHours.ts'

/** What is most asked of the invited household, and what that rests on; undefined while there is nothing to share. */
export function mostAskedOfInvited(opened: Opened): AskedAtMost | undefined {
  const { notebook, statement } = opened
  if (!statement.ok || statement.value.total === 0n) return undefined
  const standing = standingOf(opened, 'caps')
  return askedAtMost(notebook, statement.value, 'b', {
    agreedByBoth: agreedByBoth(standing),
    own: standing.markedAt.b !== undefined || standing.lastChange?.household === 'b',
  })
}

/** What is most asked of the invited household, in money and hours, and that nothing binds yet. */
export function AskedOfInvited({ opened }: { opened: Opened }) {
  const { notebook, statement, household } = opened
  const heading = household === 'b' ? 'Asked of you' : `Asked of ${householdName(notebook, 'b')}`
  const most = mostAskedOfInvited(opened)
  const faults = shareFaults(opened)
  if (faults.length > 0)
    return (
      <Panel heading={heading}>
        <p className="asked-figure">Not worked out yet</p>
        {faults.map(({ text }) => (
          <p key={text}>{text}</p>
        ))}
        <p>{askedMeanwhile(opened)}</p>
        <p className="asked-binding">{nothingBinds}</p>
      </Panel>
    )
  if (most === undefined || !statement.ok)
    return (
      <Panel heading={heading}>
        <p className="asked-figure">Nothing yet</p>
        <p>The plan has no costs that can be shared so far, so nothing is asked.</p>
        <p className="asked-binding">{nothingBinds}</p>
      </Panel>
    )
  const money = (minor: bigint) => moneyWords(minor, notebook.currency)
  const hours = wholeHours(statement.value).b
  const byHalves = gatesByHalves(opened)
  return (
    <Panel heading={heading}>
      <p className="asked-figure">
        at most <span className="figure">{money(most.amount)}</span>
      </p>
      <p>{askedAtMostWords(most.by)}</p>
      <p>
        {ofItWords({
          asked: money(statement.value.asked.b),
          inMoney: money(statement.value.inMoney.b),
          hours: hours > 0n ? hoursText(hours) : undefined,
          whole: most.by === 'plan',
        })}
      </p>
      {byHalves.length === 0 ? null : <p>{halvesForNowWords(byHalves)}</p>}
      <p className="asked-binding">{nothingBinds}</p>
    </Panel>
  )
}
