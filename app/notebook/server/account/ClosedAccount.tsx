import { accountWords } from '../../../../lib/words/account/accountText.ts'
import { ButtonLink } from '../../../ui/ButtonLink.tsx'
import { Panel } from '../../../ui/Panel.tsx'
import type { Opened } from '../opened.ts'
import { accountStanding } from './accountNow.ts'

/** Says that nothing is owed, once all have signed the final account and the books still say the same; else nothing. */
export async function ClosedAccount({ opened, link = false }: { opened: Opened; link?: boolean }) {
  const [newest] = opened.accounts
  if (newest === undefined || newest.stillToSign.length > 0) return null
  const { closed } = await accountStanding(opened)
  if (!closed) return null
  return (
    <Panel heading={accountWords.closed}>
      <p>All parties of both households have signed final account {newest.stored.number}.</p>
      {link ? (
        <ButtonLink href={`/notebook/${opened.notebookId}/final-account`}>See the final account</ButtonLink>
      ) : null}
    </Panel>
  )
}
