import { accountBlocks } from '../../../../lib/words/account/accountBlocks.ts'
import { accountWords } from '../../../../lib/words/account/accountText.ts'
import { ButtonLink } from '../../../ui/ButtonLink.tsx'
import { Panel } from '../../../ui/Panel.tsx'
import { AccountNotice } from '../../server/account/AccountNotice.tsx'
import { AccountSigningPart } from '../../server/account/AccountSigningPart.tsx'
import { accountStanding } from '../../server/account/accountNow.ts'
import { OpenPart } from '../../server/account/OpenPart.tsx'
import { NotebookShell } from '../../server/NotebookShell.tsx'
import { openNotebook } from '../../server/opened.ts'
import { ProposalsWait } from '../../server/ProposalsWait.tsx'
import { SummaryView } from '../../server/SummaryView.tsx'

export const metadata = { title: accountWords.title }

export default async function FinalAccountPage({ params }: { params: Promise<{ notebookId: string }> }) {
  const { notebookId } = await params
  const opened = await openNotebook(notebookId)
  const { now, newest, stands, closed } = accountStanding(opened)
  const home = `/notebook/${notebookId}`
  const earlier = opened.accounts.slice(1)
  return (
    <NotebookShell
      opened={opened}
      page="final-account"
      title={accountWords.title}
      lead={accountWords.lead}
      back={{ href: `${home}/money`, label: 'Money and hours' }}
    >
      <AccountNotice opened={opened} />
      {closed ? null : await ProposalsWait({ opened, noBar: accountWords.proposalsWait })}
      {stands ? null : <OpenPart opened={opened} open={now.open} />}
      {newest ? <AccountSigningPart opened={opened} frozen={newest} stands={stands} /> : null}
      {newest ? (
        <Panel heading={`What final account ${newest.stored.number} says`}>
          <SummaryView blocks={accountBlocks(newest.account)} notebook={opened.notebook} short />
        </Panel>
      ) : null}
      {now.account && !stands ? (
        <Panel heading={accountWords.asOfNow}>
          <SummaryView blocks={accountBlocks(now.account)} notebook={opened.notebook} short />
        </Panel>
      ) : null}
      {earlier.length === 0 ? null : (
        <Panel heading="Earlier final accounts">
          <div className="button-row">
            {earlier.map(({ stored }) => (
              <ButtonLink key={stored.id} href={`${home}/final-account.pdf?number=${stored.number}`} download>
                Final account {stored.number} (PDF)
              </ButtonLink>
            ))}
          </div>
        </Panel>
      )}
    </NotebookShell>
  )
}
