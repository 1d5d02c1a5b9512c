import { hoursText } from '../../../lib/core/amounts/hours.ts'
import { plannedHours } from '../../../lib/core/hours/plannedHours.ts'
import { type AskedAtMost, askedAtMost } from '../../../lib/core/shares/askedAtMost.ts'
import {
  aroundAsked,
  askedRestsOnWords,
  nothingBindsWords,
  ofItWords,
} from '../../../lib/words/firstAnswerText.ts'
import { householdName } from '../../../lib/words/labels.ts'
import { meansWords } from '../../../lib/words/meansText.ts'
import { moneyWords } from '../../../lib/words/money.ts'
import { halvesForNowWords } from '../../../lib/words/shareFaultText.ts'
import { Panel } from '../../ui/Panel.tsx'
import { agreedByBoth, type Opened } from './opened.ts'
import { askedMeanwhile, gatesByHalves, shareFaults } from './shareFaults.ts'
import { standingOf } from './standingOf.ts'

/** What is asked of the invited household, and what that rests on; undefined while there is nothing to share. */
export function mostAskedOfInvited(opened: Opened): AskedAtMost | undefined {
  const { notebook, statement } = opened
  if (!statement.ok || statement.value.total === 0n) return undefined
  const standing = standingOf(opened, 'caps')
  return askedAtMost(notebook, statement.value, 'b', {
    agreedByBoth: agreedByBoth(standing),
    own: standing.markedAt.b !== undefined || standing.lastChange?.household === 'b',
  })
}

/** What is asked of the invited household, in money and hours, and that nothing binds yet. */
export function AskedOfInvited({ opened }: { opened: Opened }) {
  const { notebook, statement, household } = opened
  const b = householdName(notebook, 'b')
  const heading = household === 'b' ? 'Asked of you' : `Asked of ${b}`
  const nothingBinds = nothingBindsWords(household)
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
  const { asked, inMoney, promised } = statement.value
  const { share, does } = plannedHours(notebook, statement.value)
  const means = { asked: asked.b, inMoney: inMoney.b, promised: promised.b }
  const hours = share.b + does.b > 0n ? { share: hoursText(share.b), does: hoursText(does.b) } : undefined
  const byHalves = gatesByHalves(opened)
  const { before, after } = aroundAsked(most.by)
  return (
    <Panel heading={heading}>
      <p className="asked-figure">
        {before} <span className="figure">{moneyWords(most.amount, notebook.currency)}</span> {after}
      </p>
      <p>{askedRestsOnWords(most.by, household, b)}</p>
      <p>{ofItWords({ means: meansWords(means, notebook.currency), hours }, household, b)}</p>
      {byHalves.length === 0 ? null : <p>{halvesForNowWords(byHalves)}</p>}
      <p className="asked-binding">{nothingBinds}</p>
    </Panel>
  )
}
