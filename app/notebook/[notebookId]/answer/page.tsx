import { wholeNotebook } from '../../../../lib/core/agreement/agreedItems.ts'
import { answersStandWords, firstAnswerSentence } from '../../../../lib/words/firstAnswerText.ts'
import { householdName } from '../../../../lib/words/labels.ts'
import { capitalised } from '../../../../lib/words/summary/names.ts'
import { ButtonLink } from '../../../ui/ButtonLink.tsx'
import { Panel } from '../../../ui/Panel.tsx'
import { AnswerLeadsTo } from '../../server/AnswerLeadsTo.tsx'
import { shownAnswers } from '../../server/firstAnswerMatters.ts'
import { ItemConversation } from '../../server/ItemConversation.tsx'
import { NotebookShell } from '../../server/NotebookShell.tsx'
import { openNotebook } from '../../server/opened.ts'

export const metadata = { title: 'The first answer' }

/** What the invited household answered, where it leads, and what the two say about the fence as a whole. */
export default async function AnswerPage({ params }: { params: Promise<{ notebookId: string }> }) {
  const { notebookId } = await params
  const opened = await openNotebook(notebookId)
  const { notebook, household } = opened
  const answers = shownAnswers(opened)
  const home = `/notebook/${notebookId}`
  const b = householdName(notebook, 'b')
  return (
    <NotebookShell
      opened={opened}
      page="answer"
      title="The first answer"
      lead={
        answers.length > 0
          ? answers.map((one) => firstAnswerSentence(one, b)).join(' ')
          : `${capitalised(b)} has not answered yet.`
      }
      back={{ href: home, label: 'The line' }}
    >
      {answers.map((answer) => (
        <AnswerLeadsTo key={answer.answer} opened={opened} answer={answer} />
      ))}
      <ItemConversation
        opened={opened}
        itemKey={wholeNotebook}
        heading="What you two said about the whole fence"
      />
      <Panel heading={household === 'b' ? 'Another answer' : 'What was asked'}>
        <p>{answersStandWords}</p>
        <div className="button-row">
          <ButtonLink href={`${home}/welcome`}>
            {household === 'b' ? 'See what is asked, and answer' : `See what ${b} sees`}
          </ButtonLink>
          <ButtonLink href={`${home}/needs`}>What you need of a fence</ButtonLink>
        </div>
      </Panel>
    </NotebookShell>
  )
}
