import { notFound } from 'next/navigation'
import { proposalsOf } from '../../../../../lib/store/proposals.ts'
import { proposalWords } from '../../../../../lib/words/proposalText.ts'
import { shareNames } from '../../../../../lib/words/shareText.ts'
import { ProposalForm } from '../../../forms/ProposalForm.tsx'
import type { AddressFields } from '../../../server/historyAsked.ts'
import { middleShares } from '../../../server/middleShares.ts'
import { NotebookShell } from '../../../server/NotebookShell.tsx'
import { openNotebook } from '../../../server/opened.ts'
import { proposableItems } from '../../../server/proposableItems.ts'
import { previewProposal, sendProposal } from '../../../server/proposalActions.ts'
import { itemsBase, startingDraft } from '../../../server/proposalDraft.ts'
import { askedWay, wayShares } from '../../../server/wayShares.ts'

export const metadata = { title: 'Make a proposal' }

export default async function NewProposalPage({
  params,
  searchParams,
}: {
  params: Promise<{ notebookId: string }>
  searchParams?: Promise<AddressFields>
}) {
  const { notebookId } = await params
  const opened = await openNotebook(notebookId)
  const { document, notebook, household } = opened
  const { answers, item, middle, way: asked } = (await searchParams) ?? {}
  const way = askedWay(asked)
  const all = await proposalsOf(notebookId)
  const answered =
    answers === undefined
      ? undefined
      : (all.find(
          (one) => String(one.id) === answers && one.household !== household && one.reply === undefined,
        ) ?? notFound())
  const picked = typeof item === 'string' ? [item] : []
  const ofWay = way && wayShares(notebook, way, picked[0])
  const shares = middle === undefined ? ofWay : middleShares(opened, all)
  const title = answered === undefined ? 'Make a proposal' : `Answer proposal ${answered.number} with another`
  const items = proposableItems(opened, answered)
  return (
    <NotebookShell
      opened={opened}
      page="proposals/new"
      title={title}
      lead={answered === undefined ? proposalWords.takesPlace : proposalWords.answersTheirs}
      back={{ href: `/notebook/${notebookId}/proposals`, label: 'Proposals' }}
    >
      {items.length === 0 ? (
        <p>{proposalWords.noItems}</p>
      ) : (
        <ProposalForm
          initial={startingDraft(document, picked, answered, shares)}
          base={itemsBase(document)}
          items={items}
          names={shareNames(notebook)}
          send={sendProposal.bind(null, notebookId, answered?.id ?? 0)}
          preview={previewProposal.bind(null, notebookId, answered?.id ?? 0)}
        />
      )}
    </NotebookShell>
  )
}
