import { wholeNotebook } from '../../../lib/core/agreement/agreedItems.ts'
import { firstAnswerSentence, nothingBindsWords } from '../../../lib/words/firstAnswerText.ts'
import { householdName } from '../../../lib/words/labels.ts'
import { householdStart } from '../../../lib/words/summary/names.ts'
import { ButtonLink } from '../../ui/ButtonLink.tsx'
import { shownAnswers } from './firstAnswerMatters.ts'
import type { Opened } from './opened.ts'

/**
 * On The line: for the invited household a calm way to what is asked of it, until it has answered; for both, what it
 * answered. In the example nobody is led there first.
 */
export function FirstAnswerPart({ opened }: { opened: Opened }) {
  const { notebook, notebookId, household, example, messages } = opened
  const answers = shownAnswers(opened)
  const home = `/notebook/${notebookId}`
  const said = messages.some(({ itemKey }) => itemKey === wholeNotebook)
  if (answers.length > 0 || said)
    return (
      <div className="first-strip">
        <p>
          {answers.length > 0
            ? answers.map((one) => firstAnswerSentence(one, householdName(notebook, 'b'))).join(' ')
            : 'There is a conversation about the fence as a whole.'}
        </p>
        <ButtonLink href={`${home}/answer`}>{answers.length > 0 ? 'What came of it' : 'Read it'}</ButtonLink>
      </div>
    )
  if (household === 'a') return null
  return (
    <div className="first-strip">
      <p>
        {example
          ? 'An invited household would first see what is asked of it, and five answers.'
          : `${householdStart(notebook, 'a')} asks what you say. ${nothingBindsWords('b')}`}
      </p>
      <ButtonLink href={`${home}/welcome`}>See what is asked</ButtonLink>
    </div>
  )
}
