import { proposalsOf } from '../../../../lib/store/proposals.ts'
import { proposalWords } from '../../../../lib/words/proposalText.ts'
import { ButtonLink } from '../../../ui/ButtonLink.tsx'
import { Panel } from '../../../ui/Panel.tsx'
import { EndedProposals } from '../../server/EndedProposals.tsx'
import { NotebookShell } from '../../server/NotebookShell.tsx'
import { openNotebook } from '../../server/opened.ts'
import { PositionsView } from '../../server/PositionsView.tsx'
import { ProposalCard } from '../../server/ProposalCard.tsx'
import { endedBy, positionsOf } from '../../server/positions.ts'
import { shownProposal } from '../../server/shownProposal.ts'

export const metadata = { title: 'Proposals' }

export default async function ProposalsPage({ params }: { params: Promise<{ notebookId: string }> }) {
  const { notebookId } = await params
  const opened = await openNotebook(notebookId)
  const all = await proposalsOf(notebookId)
  const home = `/notebook/${notebookId}`
  const positions = positionsOf(opened, all)
  const held = [...positions.a.holds, ...positions.b.holds]
  const shown = held.map((proposal) => shownProposal(opened, proposal))
  const ended = all.filter((one) => one.reply !== undefined && !held.includes(one))
  const numbers = new Map(all.map(({ id, number }) => [id, number]))
  return (
    <NotebookShell
      opened={opened}
      page="proposals"
      title="Proposals"
      lead={proposalWords.lead}
      back={{ href: `${home}/shares`, label: 'Shares' }}
    >
      <PositionsView opened={opened} positions={positions} />
      {shown.map((one) => (
        <ProposalCard
          key={one.proposal.id}
          opened={opened}
          shown={one}
          numbers={numbers}
          endedBy={endedBy(all, one.proposal.id)}
        />
      ))}
      <Panel heading="Propose something">
        {all.length === 0 ? <p>{proposalWords.none}</p> : null}
        <p>{proposalWords.takesPlace}</p>
        <div className="button-row">
          <ButtonLink href={`${home}/proposals/new`}>Make a proposal</ButtonLink>
        </div>
      </Panel>
      <EndedProposals opened={opened} ended={ended} all={all} />
    </NotebookShell>
  )
}
