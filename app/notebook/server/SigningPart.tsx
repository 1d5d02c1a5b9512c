import type { SealKeyFault } from '../../../lib/core/agreement/sealKeyFault.ts'
import { momentWords } from '../../../lib/words/day.ts'
import { householdName } from '../../../lib/words/labels.ts'
import { sealKeyText } from '../../../lib/words/sealKeyText.ts'
import { intentSentence } from '../../../lib/words/signingWords.ts'
import { ButtonLink } from '../../ui/ButtonLink.tsx'
import { Caution } from '../../ui/Caution.tsx'
import { HouseholdTag } from '../../ui/HouseholdTag.tsx'
import { Panel } from '../../ui/Panel.tsx'
import { PaperLink } from '../../ui/work/PaperLink.tsx'
import { SignatureForm } from '../forms/SignatureForm.tsx'
import type { Opened } from './opened.ts'
import { signForParty } from './signActions.ts'
import type { FrozenRevision } from './standingRevision.ts'

/** The revision that stands: its hash, who has signed, the forms for this household's parties, and the copies to take. */
export function SigningPart({
  opened,
  frozen,
  trouble,
}: {
  opened: Opened
  frozen: FrozenRevision
  /** Why the locked copy can't be made yet, where it waits for that. */
  trouble: SealKeyFault | undefined
}) {
  const { revision, notebook, signatures, stillToSign } = frozen
  const { notebookId, household } = opened
  const home = `/notebook/${notebookId}`
  const locked = stillToSign.length === 0
  const mine = stillToSign.filter((place) => place.household === household)
  return (
    <>
      <Panel
        heading={
          stillToSign.length === 0
            ? `Revision ${revision.number} is signed by all`
            : `Revision ${revision.number} is up for signing`
        }
      >
        <p>
          Put up by {householdName(notebook, revision.frozenBy)} on {momentWords(revision.frozenAt)}. It does
          not change any more; the notebook goes on beside it.
        </p>
        <p className="hash">
          SHA-256 <code>{revision.sha256}</code>
        </p>
        <ul className="mark-list">
          {signatures.map((one) => (
            <li key={one.id}>
              <HouseholdTag household={one.household} name={one.partyName} /> signed,{' '}
              {momentWords(one.signedAt)}
            </li>
          ))}
          {stillToSign.map((place) => (
            <li key={`${place.household} ${place.partyIndex}`}>
              <HouseholdTag household={place.household} name={place.name} /> has not signed yet
            </li>
          ))}
        </ul>
      </Panel>
      {mine.map((place) => {
        const intent = intentSentence(place, householdName(notebook, household))
        const bound = { revisionId: revision.id, sha256: revision.sha256, partyIndex: place.partyIndex }
        return (
          <Panel key={place.partyIndex} heading={`${place.name} signs`} id={`party-${place.partyIndex}`}>
            <Caution title="Before you sign">
              <p>
                Read the whole agreement below. All parties of your household sign through your one link; sign
                only for yourself. A typed name is a simple electronic signature: for rights in land the law
                may ask for more.
              </p>
            </Caution>
            <SignatureForm
              partyName={place.name}
              intent={intent}
              save={signForParty.bind(null, notebookId, bound)}
              form={`party-${place.partyIndex}-field`}
            />
          </Panel>
        )
      })}
      <Panel heading="Take your copy">
        <ButtonLink href={`${home}/paper?revision=${revision.number}`}>Look at it page by page</ButtonLink>
        <p>
          {locked
            ? 'Keep the locked copy and the notebook file yourself, each household its own. The seal on the copy shows later that nothing in it was changed; it does not show who signed.'
            : 'Keep the summary and the notebook file yourself. The hash in them shows later that nothing was changed; it does not show who signed. The copy is locked once all have signed.'}
        </p>
        {trouble ? (
          <Caution title="The locked copy can’t be made yet">
            <p>All signatures are kept. {sealKeyText(trouble)}</p>
          </Caution>
        ) : null}
        <div className="button-row">
          <PaperLink
            href={`${home}/summary.pdf?revision=${revision.number}`}
            weight={mine.length === 0 ? 'main' : 'plain'}
          >
            {`${locked ? 'Locked copy' : 'Summary'}, revision ${revision.number} (PDF)`}
          </PaperLink>
          <ButtonLink href={`${home}/agreement.json?revision=${revision.number}`} download>
            Agreement text (JSON)
          </ButtonLink>
          <ButtonLink href={`${home}/notebook.json`} download>
            Notebook file (JSON)
          </ButtonLink>
          <ButtonLink href={`${home}/ink.pdf?revision=${revision.number}`} download>
            Page for signing in ink (PDF)
          </ButtonLink>
        </div>
      </Panel>
    </>
  )
}
