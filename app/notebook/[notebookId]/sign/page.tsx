import { signLead } from '../../../../lib/words/signingWords.ts'
import { keyTrouble } from '../../server/lockedCopy.ts'
import { NotebookShell } from '../../server/NotebookShell.tsx'
import { openNotebook } from '../../server/opened.ts'
import { ProposalsWait } from '../../server/ProposalsWait.tsx'
import { PlanFallsShort } from '../../server/sign/PlanFallsShort.tsx'
import { SignHead } from '../../server/sign/SignHead.tsx'
import { SignPartView } from '../../server/sign/SignPartView.tsx'
import { signingOf } from '../../server/sign/signingOf.ts'

export const metadata = { title: 'Sign' }

/** With `?whole=yes` all chapters of the agreement are unfolded. */
export default async function SignPage({
  params,
  searchParams,
}: {
  params: Promise<{ notebookId: string }>
  searchParams: Promise<{ whole?: string | string[] }>
}) {
  const { notebookId } = await params
  const { whole } = (await searchParams) ?? {}
  const opened = await openNotebook(notebookId)
  const signing = signingOf(opened)
  const { newest, differs, parts } = signing
  const trouble = newest ? await keyTrouble(newest) : undefined
  const waits = differs || newest === undefined || newest.stillToSign.length > 0
  return (
    <NotebookShell
      opened={opened}
      page="sign"
      title="Sign"
      lead={signLead(newest?.revision.number, newest?.stillToSign.length === 0)}
    >
      <SignHead signing={signing} />
      {waits ? <PlanFallsShort signing={signing} /> : null}
      {waits ? await ProposalsWait({ opened }) : null}
      {parts.map((part) => (
        <SignPartView
          key={part}
          part={part}
          signing={signing}
          whole={whole !== undefined}
          trouble={trouble}
        />
      ))}
    </NotebookShell>
  )
}
