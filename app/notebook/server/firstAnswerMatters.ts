import { wholeNotebook } from '../../../lib/core/agreement/agreedItems.ts'
import type { FirstAnswer } from '../../../lib/store/firstAnswers.ts'
import type { Message } from '../../../lib/store/messages.ts'
import { firstAnswerLine } from '../../../lib/words/firstAnswerText.ts'
import { householdName } from '../../../lib/words/labels.ts'
import type { OpenMatter } from '../../ui/OpenMatters.tsx'
import type { Opened } from './opened.ts'
import { pageOfItem } from './pages.ts'

/** The message that a question became: what its household said at the very same time. */
export function questionMessage(answer: FirstAnswer, messages: readonly Message[]): Message | undefined {
  if (answer.answer !== 'a question') return undefined
  return messages.find(
    ({ household, at, text }) =>
      household === answer.household && text === answer.text && at.getTime() === answer.at.getTime(),
  )
}

/** The answer that stands: the newest that is no question, since asking something takes nothing back. */
export function standingAnswer(answers: readonly FirstAnswer[]): FirstAnswer | undefined {
  return answers.find(({ answer }) => answer !== 'a question')
}

/** What is shown as the answer: the one that stands, and the newest question while it is open; with neither, the newest question. */
export function shownAnswers(opened: Opened): readonly FirstAnswer[] {
  const { firstAnswers } = opened
  const standing = standingAnswer(firstAnswers)
  const asked = firstAnswers.find(
    (answer) => answer.answer === 'a question' && isOpenQuestion(opened, answer),
  )
  const shown = [standing, asked].filter((one) => one !== undefined)
  return shown.length > 0 ? shown : firstAnswers.slice(0, 1)
}

function isOpenQuestion({ messages }: Opened, answer: FirstAnswer): boolean {
  const question = questionMessage(answer, messages)
  return !messages.some(
    ({ household, answers, at }) =>
      household === 'a' && (answers === question?.id || (question === undefined && at > answer.at)),
  )
}

/** Whether an answer, were it the one that stands, still asks the first household for something, as the notebook stands on a day. */
export function stillAsks(opened: Opened, answer: FirstAnswer, today: string): boolean {
  switch (answer.answer) {
    case 'a question':
      return isOpenQuestion(opened, answer)
    case 'fine without money':
      return (
        !signedByAllAfter(opened, answer.at) && opened.statement.ok && opened.statement.value.inMoney.b > 0n
      )
    case 'not now':
      return !signedByAllAfter(opened, answer.at) && (answer.until ?? '') <= today
    default:
      return false
  }
}

/** Whether all have signed a revision since: what was answered before it is settled by it. */
function signedByAllAfter({ revisions }: Pick<Opened, 'revisions'>, answered: Date): boolean {
  return revisions.some(
    ({ stillToSign, signatures }) =>
      stillToSign.length === 0 &&
      signatures.some(({ household, signedAt }) => household === 'b' && signedAt > answered),
  )
}

/** What the invited household's answers leave open for the first: the one that stands, and each question not answered. */
export function firstAnswerMatters(opened: Opened, today: string): OpenMatter[] {
  const { firstAnswers, household, notebook, notebookId } = opened
  if (household !== 'a') return []
  const standing = standingAnswer(firstAnswers)
  return firstAnswers
    .filter((answer) => answer === standing || answer.answer === 'a question')
    .filter((answer) => stillAsks(opened, answer, today))
    .map((answer) => ({
      text: firstAnswerLine(answer, householdName(notebook, 'b')),
      href: conversationPage(opened, answer) ?? `/notebook/${notebookId}/answer`,
    }))
}

/** Where a question stands, if it is about one item. */
export function conversationPage(opened: Opened, answer: FirstAnswer): string | undefined {
  const asked = questionMessage(answer, opened.messages)
  const item = opened.standings.find((standing) => standing.item.key === asked?.itemKey)?.item
  if (asked === undefined || asked.itemKey === wholeNotebook || item === undefined) return undefined
  const page = pageOfItem(opened.notebookId, item.key, item.kind).replace(/#.*$/, '')
  return `${page}#conversation`
}
