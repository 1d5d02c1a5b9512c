import { hoursText } from '../../../lib/core/amounts/hours.ts'
import { hoursForMoney } from '../../../lib/core/shares/hoursForMoney.ts'
import type { FirstAnswer } from '../../../lib/store/firstAnswers.ts'
import { dayWords } from '../../../lib/words/day.ts'
import { noMeans, withoutMoneyWords } from '../../../lib/words/firstAnswerText.ts'
import { householdName } from '../../../lib/words/labels.ts'
import { moneyWords } from '../../../lib/words/money.ts'
import { ButtonLink } from '../../ui/ButtonLink.tsx'
import { Panel } from '../../ui/Panel.tsx'
import { conversationPage } from './firstAnswerMatters.ts'
import type { Opened } from './opened.ts'
import { proposeWayHref } from './wayShares.ts'

/** Where the invited household's answer leads. */
export function AnswerLeadsTo({ opened, answer }: { opened: Opened; answer: FirstAnswer }) {
  const { notebookId, notebook } = opened
  const home = `/notebook/${notebookId}`
  const a = householdName(notebook, 'a')
  switch (answer.answer) {
    case 'fine':
      return (
        <Panel heading="Item by item">
          <p>What both agree to is marked item by item, by each household for itself.</p>
          <ButtonLink href={`${home}/sign`} weight="main">
            Items to look at and mark
          </ButtonLink>
        </Panel>
      )
    case 'fine without money':
      return <WithoutMoney opened={opened} />
    case 'a question': {
      const page = conversationPage(opened, answer)
      return (
        <Panel heading="The question">
          <p className="message-text">{answer.text}</p>
          <ButtonLink href={page ?? '#conversation'}>
            {page === undefined ? 'To the conversation below' : 'To the conversation about this item'}
          </ButtonLink>
        </Panel>
      )
    }
    case 'not now':
      return (
        <Panel heading="Later">
          <p>
            {a} asks again on {dayWords(answer.until ?? '')}. The day stands among the dates, for both
            households. Until then nothing is asked.
          </p>
          <ButtonLink href={`${home}/dates`}>Dates</ButtonLink>
        </Panel>
      )
    case 'no':
      return (
        <Panel heading="What that means">
          {noMeans(a).map((sentence) => (
            <p key={sentence}>{sentence}</p>
          ))}
        </Panel>
      )
  }
}

/** What can stand in the place of money, with the pages on which to say so. */
function WithoutMoney({ opened }: { opened: Opened }) {
  const { notebookId, notebook, household } = opened
  const home = `/notebook/${notebookId}`
  const words = withoutMoneyWords
  return (
    <Panel heading="What can stand in the place of money">
      <ul className="five-answers">
        <li className="five-answers-one">
          <h3>Hours</h3>
          <p>{hoursWords(opened)}</p>
          <ButtonLink href={`${home}/work`}>Work</ButtonLink>
        </li>
        <li className="five-answers-one">
          <h3>Things that you have</h3>
          <p>{words.stock}</p>
          <ButtonLink href={`${home}/materials`}>Materials</ButtonLink>
        </li>
        <li className="five-answers-one">
          <h3>One household</h3>
          <p>{words.one}</p>
          <div className="button-row">
            <ButtonLink href={`${home}/side-by-side`}>Side by side</ButtonLink>
            <ButtonLink href={proposeWayHref(notebookId, 'one-a')}>
              {withoutMoneyWords.proposeOne(householdName(notebook, 'a'))}
            </ButtonLink>
          </div>
        </li>
        <li className="five-answers-one">
          <h3>A limit of nothing</h3>
          <p>{words.limit(householdName(notebook, 'a'))}</p>
          <ButtonLink href={household === 'b' ? `${home}/shares?limit=nothing#caps` : `${home}/shares#caps`}>
            {household === 'b' ? 'Caps, with nothing filled in for you' : 'Caps'}
          </ButtonLink>
        </li>
      </ul>
    </Panel>
  )
}

function hoursWords({ notebook, statement }: Opened): string {
  if (!statement.ok || statement.value.inMoney.b <= 0n) return withoutMoneyWords.nothingLeft
  const { inMoney, digits } = statement.value
  const rate = notebook.arrangements?.rates.plain?.rate ?? ''
  const hours = rate === '' ? undefined : hoursForMoney(inMoney.b, rate, digits)
  const money = (minor: bigint) => moneyWords(minor, notebook.currency)
  return withoutMoneyWords.hours(
    money(inMoney.b),
    hours === undefined ? undefined : hoursText(hours),
    rate === '' ? '' : `${rate} ${notebook.currency}`,
  )
}
