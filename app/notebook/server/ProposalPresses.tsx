import type { Proposal } from '../../../lib/store/proposals.ts'
import { householdName } from '../../../lib/words/labels.ts'
import {
  acceptQuestion,
  longestReason,
  ownMarkOnlyWords,
  proposalWords,
} from '../../../lib/words/proposalText.ts'
import { ButtonLink } from '../../ui/ButtonLink.tsx'
import { PressForm } from '../../ui/draft/PressForm.tsx'
import type { Opened } from './opened.ts'
import { acceptTheirs, declineTheirs, proposeAnew, withdrawOwn } from './proposalReplyActions.ts'

type Props = {
  opened: Opened
  proposal: Proposal
  /** Its items as this page shows them. */
  print: string
  fits: boolean
  movedOn: boolean
  ownMarkOnly: readonly string[]
}

/**
 * What a household can do with a standing proposal: its own, or the other's. `fits`: it can be taken over; `movedOn`: an
 * item was changed since; `ownMarkOnly`: titles of items that only the accepting household's mark would be set on.
 */
export function ProposalPresses({ opened, proposal, print, fits, movedOn, ownMarkOnly }: Props) {
  const { notebookId, household } = opened
  const { id, number } = proposal
  const own = proposal.household === household
  const field = <input type="hidden" name="id" value={id} />
  const asShown = <input type="hidden" name="shown" value={print} />
  const which = `proposal ${number}`
  const proposer = householdName(opened.notebook, proposal.household)
  return (
    <>
      {fits && !(own && (movedOn || ownMarkOnly.length > 0)) ? null : (
        <>
          <p>{proposalWords.anewMeaning}</p>
          <PressForm action={proposeAnew.bind(null, notebookId)} label="Propose it anew" labelFor={which}>
            {field}
            {asShown}
          </PressForm>
        </>
      )}
      {own || ownMarkOnly.length === 0 ? null : <p>{ownMarkOnlyWords(proposer, ownMarkOnly)}</p>}
      {own || !fits ? null : (
        <PressForm
          action={acceptTheirs.bind(null, notebookId)}
          label={`Accept ${which}`}
          confirm={acceptQuestion(proposer, ownMarkOnly)}
          weight="main"
        >
          {field}
          {asShown}
        </PressForm>
      )}
      {own ? (
        <PressForm action={withdrawOwn.bind(null, notebookId)} label={`Withdraw ${which}`}>
          {field}
        </PressForm>
      ) : (
        <>
          <div className="button-row">
            <ButtonLink href={`/notebook/${notebookId}/proposals/new?answers=${id}`}>
              Answer with another
            </ButtonLink>
          </div>
          <details className="entry-tools">
            <summary>Say why not</summary>
            <PressForm action={declineTheirs.bind(null, notebookId)} label={`Do not accept ${which}`}>
              {field}
              <div className="field">
                <label className="field-label" htmlFor={`why-not-${id}`}>
                  {proposalWords.whyNot}
                </label>
                <p className="field-hint" id={`why-not-${id}-hint`}>
                  {proposalWords.whyNotHint}
                </p>
                <textarea
                  id={`why-not-${id}`}
                  name="text"
                  rows={3}
                  maxLength={longestReason}
                  aria-describedby={`why-not-${id}-hint`}
                />
              </div>
            </PressForm>
          </details>
        </>
      )}
    </>
  )
}
