import { notFound } from 'next/navigation'
import { lookAtToken, type OpenedKey } from '../../../lib/access/openKey.ts'
import { assert } from '../../../lib/core/assert.ts'
import { readNotebook } from '../../../lib/forms/readNotebook.ts'
import { findNotebook } from '../../../lib/store/notebooks.ts'
import { shownMoment } from '../../../lib/words/day.ts'
import { householdName, notebookTitle } from '../../../lib/words/labels.ts'
import { whatThisIs } from '../../../lib/words/standingTexts.ts'
import { BareFrame } from '../../ui/BareFrame.tsx'
import { PressForm } from '../../ui/draft/PressForm.tsx'
import { HouseholdTag } from '../../ui/HouseholdTag.tsx'
import { Page } from '../../ui/Page.tsx'
import { Panel } from '../../ui/Panel.tsx'
import { claim, openByLink } from './actions.ts'

export const metadata = { title: 'A private link' }

/** Says whom a link lets in. Looking lets nobody in: only the button does, so a preview of the link has no effect. */
export default async function OpenPage({ params }: { params: Promise<{ token: string }> }) {
  const { token } = await params
  const key = (await lookAtToken(token)) ?? notFound()
  const stored = (await findNotebook(key.notebookId)) ?? notFound()
  const read = readNotebook(stored.document)
  assert(read.ok, 'only notebooks that hold are stored')
  const { notebook } = read.value
  return (
    <BareFrame footer={whatThisIs}>
      {key.kind === 'used-invitation' ? (
        <UsedInvitation usedAt={key.usedAt} starter={householdName(notebook, 'a')} />
      ) : (
        <Welcome
          keyKind={key.kind}
          token={token}
          title={notebookTitle(notebook)}
          household={key.household}
          name={householdName(notebook, key.household)}
        />
      )}
    </BareFrame>
  )
}

type WelcomeProps = {
  keyKind: 'link' | 'invitation'
  token: string
  title: string
  household: Extract<OpenedKey, { kind: 'link' }>['household']
  name: string
}

function Welcome({ keyKind, token, title, household, name }: WelcomeProps) {
  const invited = keyKind === 'invitation'
  return (
    <Page
      title={title}
      lead={
        invited
          ? 'You are invited to keep this notebook with your neighbours.'
          : 'This is a private link to a notebook about a boundary fence.'
      }
    >
      <Panel heading="Whom this lets in">
        <p>
          <HouseholdTag household={household} name={name} />
        </p>
        {invited ? (
          <>
            <p>
              The invitation works once. Press only if you are this household: you are then given a private
              link of your own, which your neighbours never see and only you can replace. Nothing binds you
              until you sign.
            </p>
            <PressForm action={claim.bind(null, token)} label={`Come in as ${name}`} weight="main" />
          </>
        ) : (
          <>
            <p>Press only if you are this household. This browser then stays in until you leave.</p>
            <PressForm action={openByLink.bind(null, token)} label={`Come in as ${name}`} weight="main" />
          </>
        )}
      </Panel>
    </Page>
  )
}

function UsedInvitation({ usedAt, starter }: { usedAt: Date; starter: string }) {
  return (
    <Page
      title="This invitation has been used"
      lead={`It was claimed on ${shownMoment(usedAt)}, and works only once.`}
    >
      <Panel heading="What to do">
        <p>If that was you, come in by the private link that you were given then.</p>
        <p>
          If it was not you, tell {starter} at once: somebody else is in the notebook in your place. Do not
          sign anything there; start a new notebook together.
        </p>
      </Panel>
    </Page>
  )
}
