import { householdName } from '../../../../lib/words/labels.ts'
import { beforeYouSign, intentSentence } from '../../../../lib/words/signingWords.ts'
import { Caution } from '../../../ui/Caution.tsx'
import { Panel } from '../../../ui/Panel.tsx'
import { SignatureForm } from '../../forms/SignatureForm.tsx'
import type { Opened } from '../opened.ts'
import { signForParty } from '../signActions.ts'
import type { FrozenRevision } from '../standingRevision.ts'
import { placeId, toSignHere } from './toSignHere.ts'

/** The forms by which this household's parties sign the revision that stands, under its text. */
export function SigningForms({ opened, frozen }: { opened: Opened; frozen: FrozenRevision }) {
  const { revision, notebook } = frozen
  const { notebookId, household } = opened
  return (
    <>
      <Caution title={beforeYouSign.title}>
        <p>{beforeYouSign.text(revision.sha256)}</p>
      </Caution>
      {toSignHere(frozen, household).map((place) => {
        const intent = intentSentence(place, householdName(notebook, household))
        const bound = { revisionId: revision.id, sha256: revision.sha256, partyIndex: place.partyIndex }
        return (
          <Panel key={place.partyIndex} heading={`${place.name} signs`} id={placeId(place)}>
            <SignatureForm
              partyName={place.name}
              text="agreement"
              intent={intent}
              save={signForParty.bind(null, notebookId, bound)}
              form={`${placeId(place)}-field`}
            />
          </Panel>
        )
      })}
    </>
  )
}
