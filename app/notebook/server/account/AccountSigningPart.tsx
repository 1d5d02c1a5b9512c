import { accountSignatureBlocks } from '../../../../lib/words/account/accountBlocks.ts'
import { accountIntent, accountNames, accountWords } from '../../../../lib/words/account/accountText.ts'
import { checkedMoment } from '../../../../lib/words/day.ts'
import { ButtonLink } from '../../../ui/ButtonLink.tsx'
import { Caution } from '../../../ui/Caution.tsx'
import { CheckNumber } from '../../../ui/CheckNumber.tsx'
import { Panel } from '../../../ui/Panel.tsx'
import { SignatureForm } from '../../forms/SignatureForm.tsx'
import type { Opened } from '../opened.ts'
import { SignatureView } from '../SignatureView.tsx'
import { signAccount } from './accountActions.ts'
import type { FrozenAccount } from './frozenAccounts.ts'

/** The final account that stands: its hash, who has signed, the forms of this household's parties, and the copies to take. */
export function AccountSigningPart({
  opened,
  frozen,
  stands,
}: {
  opened: Opened
  frozen: FrozenAccount
  /** Whether the books still say what it says: else nobody can sign it. */
  stands: boolean
}) {
  const { stored, account, signatures, stillToSign } = frozen
  const { notebookId, household } = opened
  const names = accountNames(account)
  const mine = stands ? stillToSign.filter((place) => place.household === household) : []
  const file = `/notebook/${notebookId}/final-account`
  return (
    <>
      <Panel
        heading={
          stillToSign.length === 0
            ? `Final account ${stored.number} is signed by all`
            : `Final account ${stored.number} is up for signing`
        }
      >
        {stands ? null : <p>{accountWords.changedSince}</p>}
        <p>
          Drawn up by {names[stored.frozenBy]}, {checkedMoment(stored.frozenAt)}.
        </p>
        <p className="hash">
          <CheckNumber value={stored.sha256} />
        </p>
        {accountSignatureBlocks(account, stored.sha256, signatures).map((block) => (
          <SignatureView key={`${block.household} ${block.party}`} block={block} />
        ))}
        <div className="button-row">
          <ButtonLink
            href={`${file}.pdf?number=${stored.number}`}
            weight={mine.length === 0 ? 'main' : 'plain'}
            download
          >
            Final account {stored.number} (PDF)
          </ButtonLink>
          <ButtonLink href={`${file}.json?number=${stored.number}`} download>
            Account text (JSON)
          </ButtonLink>
        </div>
      </Panel>
      {mine.map((place) => (
        <Panel key={place.partyIndex} heading={`${place.name} signs`} id={`party-${place.partyIndex}`}>
          <Caution title="Before you sign">
            <p>{accountWords.beforeSigning}</p>
          </Caution>
          <SignatureForm
            partyName={place.name}
            text="account"
            intent={accountIntent(place, names[household])}
            save={signAccount.bind(null, notebookId, {
              accountId: stored.id,
              sha256: stored.sha256,
              partyIndex: place.partyIndex,
            })}
            form={`party-${place.partyIndex}-field`}
          />
        </Panel>
      ))}
    </>
  )
}
