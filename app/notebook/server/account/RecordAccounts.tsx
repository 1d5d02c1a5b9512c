import { accountWords } from '../../../../lib/words/account/accountText.ts'
import { checkedMoment } from '../../../../lib/words/day.ts'
import { ButtonLink } from '../../../ui/ButtonLink.tsx'
import { CheckNumber } from '../../../ui/CheckNumber.tsx'
import { Panel } from '../../../ui/Panel.tsx'
import type { Opened } from '../opened.ts'

/** Every final account, newest first, with its paper; and the page where the next is drawn up. */
export function RecordAccounts({ opened: { accounts, notebookId } }: { opened: Opened }) {
  const home = `/notebook/${notebookId}`
  return (
    <Panel heading={accountWords.title}>
      {accounts.length === 0 ? <p>{accountWords.lead}</p> : null}
      {accounts.map(({ stored, stillToSign, signatures, outdated }) => (
        <Panel key={stored.id} heading={`Final account ${stored.number}`} level={3} tone="quiet">
          <p>
            Drawn up {checkedMoment(stored.frozenAt)}.{' '}
            {stillToSign.length === 0
              ? 'Signed by all.'
              : `${signatures.length} signed, ${stillToSign.length} not signed.`}
            {outdated ? ' A newer account stands in its place.' : ''}
          </p>
          <p className="hash">
            <CheckNumber of="the account" value={stored.sha256} />
          </p>
          <div className="button-row">
            <ButtonLink href={`${home}/final-account.pdf?number=${stored.number}`} download>
              Final account (PDF)
            </ButtonLink>
            <ButtonLink href={`${home}/final-account.json?number=${stored.number}`} download>
              Account text (JSON)
            </ButtonLink>
          </div>
        </Panel>
      ))}
      <div className="button-row">
        <ButtonLink href={`${home}/final-account`}>Open the final account</ButtonLink>
      </div>
    </Panel>
  )
}
