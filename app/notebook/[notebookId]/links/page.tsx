import { openingAddress } from '../../../../lib/access/address.ts'
import { readNewLinkCookie } from '../../../../lib/access/sessionCookie.ts'
import { hasLink, openInvitation } from '../../../../lib/store/entryKeys.ts'
import { shownMoment } from '../../../../lib/words/day.ts'
import { householdName } from '../../../../lib/words/labels.ts'
import { capitalised } from '../../../../lib/words/summary/names.ts'
import { ButtonLink } from '../../../ui/ButtonLink.tsx'
import { CopyField } from '../../../ui/draft/CopyField.tsx'
import { PressForm } from '../../../ui/draft/PressForm.tsx'
import { Panel } from '../../../ui/Panel.tsx'
import { InvitationForm } from '../../forms/InvitationForm.tsx'
import { forgetNewLink, invite, leave, replaceOwnLink, seeAsOther } from '../../server/linkActions.ts'
import { NotebookShell } from '../../server/NotebookShell.tsx'
import { openNotebook } from '../../server/opened.ts'
import { ReadersLink } from '../../server/ReadersLink.tsx'

export const metadata = { title: 'Links' }

export default async function LinksPage({ params }: { params: Promise<{ notebookId: string }> }) {
  const { notebookId } = await params
  const opened = await openNotebook(notebookId)
  const { notebook, household, example } = opened
  const fresh = await readNewLinkCookie(notebookId)
  const [bothIn, invitation] = [await hasLink(notebookId, 'b'), await openInvitation(notebookId)]
  const other = householdName(notebook, household === 'a' ? 'b' : 'a')
  return (
    <NotebookShell
      opened={opened}
      page="links"
      title="Links"
      lead="Each household has a private link of its own. Whoever has the link can act for the household."
      back={{ href: `/notebook/${notebookId}`, label: 'The line' }}
    >
      {fresh ? (
        <Panel heading="Your private link: keep it now">
          <p>
            This is the only time it is shown. Without it you can’t come in from another device, and nobody
            can give it to you again.
          </p>
          <CopyField label="Private link" value={openingAddress(fresh)} />
          <PressForm action={forgetNewLink.bind(null, notebookId)} label="I have kept it" weight="main" />
        </Panel>
      ) : null}
      <Panel heading={household === 'b' ? 'How you came in' : 'The second household'}>
        {household === 'b' ? <p>You are the second household, and hold a link of your own.</p> : null}
        {household === 'a' && bothIn ? (
          <p>{capitalised(other)} has come in and holds a link of its own, which only it can replace.</p>
        ) : null}
        {household === 'a' && !bothIn ? (
          <>
            <p>
              Hand {other} an invitation. It works once. Claiming it gives {other} a link of its own that you
              never see, so that neither of you can act for the other.
            </p>
            {invitation ? (
              <p>
                An invitation made on {shownMoment(invitation.createdAt)} waits to be claimed. Making a new
                one ends it.
              </p>
            ) : null}
            <InvitationForm invite={invite.bind(null, notebookId)} waiting={invitation !== undefined} />
            <p>Or begin with a letter of one page that asks for the fence and carries the invitation.</p>
          </>
        ) : null}
        <div className="button-row">
          <ButtonLink href={`/notebook/${notebookId}/letter`}>The first letter</ButtonLink>
        </div>
      </Panel>
      <Panel heading="Your own link">
        <p>
          If your link was lost or seen by somebody else, replace it. The old one stops working at once, and
          every other browser that came in by it is out.
        </p>
        <PressForm
          action={replaceOwnLink.bind(null, notebookId)}
          label="Replace my link"
          weight="grave"
          confirm="Replace your link? The old one and every browser that came in by it are out at once."
        />
        <PressForm
          action={leave.bind(null, notebookId)}
          label="Go out in this browser"
          confirm="Go out? Only your private link lets you back in, so have it at hand."
        />
      </Panel>
      <Panel heading="Somebody who only reads">
        <p>
          A permit office, a lender or a buyer gets a link of its own. It shows what you choose, for as long
          as you choose, and changes nothing.
        </p>
        <ReadersLink notebookId={notebookId} />
      </Panel>
      {example ? (
        <Panel heading="This is the example">
          <p>In the example you may change sides, to see what the other household sees.</p>
          <PressForm action={seeAsOther.bind(null, notebookId)} label={`See it as ${other}`} />
        </Panel>
      ) : null}
    </NotebookShell>
  )
}
