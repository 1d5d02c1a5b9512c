import { wholeNotebook } from '../../../lib/core/agreement/agreedItems.ts'
import { longestPutOff } from '../../../lib/core/agreement/askAgainDay.ts'
import { daysLater } from '../../../lib/core/amounts/daysLater.ts'
import { type FirstAnswerKind, firstAnswerKinds } from '../../../lib/store/firstAnswers.ts'
import { firstAnswerMeaning, firstAnswerWords } from '../../../lib/words/firstAnswerText.ts'
import { itemTitle } from '../../../lib/words/itemWords.ts'
import { householdName } from '../../../lib/words/labels.ts'
import { longestMessage } from '../../../lib/words/messageText.ts'
import { PressForm } from '../../ui/draft/PressForm.tsx'
import { giveFirstAnswer } from './firstAnswerActions.ts'
import type { Opened } from './opened.ts'

/** The five answers of the invited household, each a press of its own with what goes with it. */
export function FiveAnswers({ opened }: { opened: Opened }) {
  const { notebookId, notebook } = opened
  return (
    <ol className="five-answers">
      {firstAnswerKinds.map((answer, index) => (
        <li key={answer} className="five-answers-one">
          <h3>{firstAnswerWords[answer]}</h3>
          <p>{firstAnswerMeaning(answer, householdName(notebook, 'a'))}</p>
          <PressForm
            action={giveFirstAnswer.bind(null, notebookId)}
            label={`Answer: ${firstAnswerWords[answer].toLowerCase()}`}
          >
            <input type="hidden" name="answer" value={answer} />
            <AnswerFields answer={answer} id={`answer-${index}`} opened={opened} />
          </PressForm>
        </li>
      ))}
    </ol>
  )
}

type FieldsProps = { answer: FirstAnswerKind; id: string; opened: Opened }

/** What goes with one answer: words, needed for a question alone; a day for "not now". */
function AnswerFields({ answer, id, opened }: FieldsProps) {
  if (answer === 'a question')
    return (
      <>
        <div className="field">
          <label className="field-label" htmlFor={`${id}-about`}>
            What it is about
          </label>
          <select id={`${id}-about`} name="about" defaultValue={wholeNotebook}>
            <option value={wholeNotebook}>The whole fence</option>
            {opened.standings.map(({ item }) => (
              <option key={item.key} value={item.key}>
                {itemTitle(item)}
              </option>
            ))}
          </select>
        </div>
        <Words id={id} label="Your question" />
      </>
    )
  const today = new Date().toISOString().slice(0, 10)
  return (
    <>
      {answer === 'not now' ? (
        <div className="field field-short">
          <label className="field-label" htmlFor={`${id}-until`}>
            Ask again on
          </label>
          <input
            id={`${id}-until`}
            name="until"
            type="date"
            className="figure"
            min={today}
            max={daysLater(today, longestPutOff)}
          />
        </div>
      ) : null}
      <details className="answer-words">
        <summary>Add words, if you like</summary>
        <Words id={id} label="Your words" />
      </details>
    </>
  )
}

function Words({ id, label }: { id: string; label: string }) {
  return (
    <div className="field">
      <label className="field-label" htmlFor={`${id}-text`}>
        {label}
      </label>
      <textarea id={`${id}-text`} name="text" rows={3} maxLength={longestMessage} />
    </div>
  )
}
