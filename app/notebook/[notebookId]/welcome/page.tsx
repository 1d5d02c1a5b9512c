import {
  answersOfOtherWords,
  firstAnswerSentence,
  firstScreenLead,
  firstScreenNothing,
} from '../../../../lib/words/firstAnswerText.ts'
import { householdName } from '../../../../lib/words/labels.ts'
import { moneyWords } from '../../../../lib/words/money.ts'
import { capitalised } from '../../../../lib/words/summary/names.ts'
import { ButtonLink } from '../../../ui/ButtonLink.tsx'
import { Panel } from '../../../ui/Panel.tsx'
import { AskedOfInvited, mostAskedOfInvited } from '../../server/AskedOfInvited.tsx'
import { FiveAnswers } from '../../server/FiveAnswers.tsx'
import { shownAnswers } from '../../server/firstAnswerMatters.ts'
import { LineDrawing } from '../../server/LineDrawing.tsx'
import { NotebookShell } from '../../server/NotebookShell.tsx'
import { newestPhotoBefore, OldFencePhoto } from '../../server/OldFencePhoto.tsx'
import { openNotebook } from '../../server/opened.ts'

export const metadata = { title: 'What is asked' }

/** The first thing that the invited household sees; the other may look at it, and answers nothing. */
export default async function WelcomePage({ params }: { params: Promise<{ notebookId: string }> }) {
  const { notebookId } = await params
  const opened = await openNotebook(notebookId)
  const { notebook, household } = opened
  const { sections, gates, line } = notebook
  const answers = shownAnswers(opened)
  const home = `/notebook/${notebookId}`
  const asked = mostAskedOfInvited(opened)
  const figure = asked && { money: moneyWords(asked.amount, notebook.currency), by: asked.by }
  const [a, b] = [householdName(notebook, 'a'), householdName(notebook, 'b')]
  return (
    <NotebookShell
      opened={opened}
      page="welcome"
      title={household === 'b' ? `${capitalised(a)} asks about the fence` : `What ${b} sees first`}
      lead={firstScreenLead(household, b, figure)}
      aside={
        <ButtonLink href="#answers">
          {household === 'b' ? 'To the five answers' : 'To the answers'}
        </ButtonLink>
      }
      back={{ href: home, label: 'The line' }}
    >
      <Panel heading="The old fence">
        {notebook.letter?.wrong ? <p>{notebook.letter.wrong}</p> : null}
        <OldFencePhoto opened={opened} photo={await newestPhotoBefore(notebookId)} />
      </Panel>
      <Panel heading="What is planned">
        {notebook.letter?.proposed ? <p>{notebook.letter.proposed}</p> : null}
        {line.stations.length + sections.length + gates.length > 0 ? (
          <LineDrawing notebook={notebook} home={home} />
        ) : (
          <p>{firstScreenNothing}</p>
        )}
      </Panel>
      <AskedOfInvited opened={opened} />
      <Panel heading={household === 'b' ? 'What do you say?' : `What ${b} can say`} id="answers">
        {answers.length > 0 ? (
          <>
            <p>{answers.map((one) => firstAnswerSentence(one, b)).join(' ')}</p>
            <ButtonLink href={`${home}/answer`}>What came of it</ButtonLink>
          </>
        ) : null}
        {household === 'b' ? (
          <>
            {answers.length > 0 ? <p>You can answer anew; the newest answer stands.</p> : null}
            <FiveAnswers opened={opened} />
          </>
        ) : (
          <p>{answersOfOtherWords(b)}</p>
        )}
      </Panel>
    </NotebookShell>
  )
}
