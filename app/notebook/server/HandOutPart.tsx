import { letterOverflow } from '../../../lib/pdf/letterPdf.ts'
import { shownMoment } from '../../../lib/words/day.ts'
import { letterRefusals } from '../../../lib/words/letter/letterFaultText.ts'
import { letterText } from '../../../lib/words/letter/letterText.ts'
import { householdStart } from '../../../lib/words/summary/names.ts'
import { ButtonLink } from '../../ui/ButtonLink.tsx'
import { CopyText } from '../../ui/draft/CopyText.tsx'
import { FoldedPart } from '../../ui/FoldedPart.tsx'
import { Panel } from '../../ui/Panel.tsx'
import { HandOutLetter } from '../forms/HandOutLetter.tsx'
import { LetterView } from './LetterView.tsx'
import { inviteByLetter } from './letterActions.ts'
import { letterOpenPoints, letterPaper } from './letterOf.ts'
import type { Opened } from './opened.ts'

/** The letter as it stands, what it lacks, and how it is handed out: with an invitation, by hand, or for the record. */
export function HandOutPart({
  opened,
  bothIn,
  waiting,
}: {
  opened: Opened
  /** Whether the second household has come in. */
  bothIn: boolean
  /** An invitation that waits to be claimed. */
  waiting: { readonly createdAt: Date } | undefined
}) {
  const { notebookId, household, notebook } = opened
  const paper = `/notebook/${notebookId}/letter.pdf`
  const set = letterPaper(opened, { kind: bothIn ? 'none' : 'to be written in' })
  const over = letterOverflow(set)
  const open = letterOpenPoints(opened, new Date().toISOString().slice(0, 10))
  return (
    <>
      <Panel heading="The letter as it stands">
        {over === undefined ? null : <p className="field-error">{letterRefusals.tooLong(over)}</p>}
        {open.length === 0 ? null : (
          <>
            <p>Look at this before you hand it over:</p>
            <ul>
              {open.map((point) => (
                <li key={point}>{point}</li>
              ))}
            </ul>
          </>
        )}
        <LetterView letter={set.letter} />
        <FoldedPart summary="The same as text, to copy">
          <CopyText label="Letter as text" value={letterText(set.letter)} copyLabel="Copy the text" />
        </FoldedPart>
      </Panel>
      <Panel heading="Hand it over" id="hand-over">
        {bothIn ? (
          <p>
            {householdStart(notebook, 'b')} has come in, so the letter has done its work. For the record you
            can have it without an invitation.
          </p>
        ) : null}
        {!bothIn && household === 'a' ? (
          <>
            <p>
              The letter comes with an invitation that works once, as text and as a square code for a phone’s
              camera. Only this page has it, and only now: take the PDF or the text before you leave.
            </p>
            {waiting ? <p>{waitingWords(waiting.createdAt)}</p> : null}
            <HandOutLetter
              make={inviteByLetter.bind(null, notebookId)}
              paper={paper}
              confirm={waiting ? 'Make a new invitation? The one that waits ends by it.' : undefined}
            />
          </>
        ) : null}
        {over === undefined ? (
          <div className="button-row">
            <ButtonLink href={paper} download>
              {bothIn ? 'Letter without invitation (PDF)' : 'Letter with a line for the address (PDF)'}
            </ButtonLink>
          </div>
        ) : null}
      </Panel>
    </>
  )
}

function waitingWords(createdAt: Date): string {
  return `An invitation made on ${shownMoment(createdAt)} waits to be claimed.`
}
